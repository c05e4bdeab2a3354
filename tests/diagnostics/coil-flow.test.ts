import { describe, expect, it } from 'vitest';
import { coilFlow } from '@/lib/diagnostics/derived/coil-flow';
import { derivedById, deriveRun } from '@/lib/diagnostics/derived/derive-run';
import { refrigerantProperties } from '@/lib/diagnostics/refrigerant/properties';
import { assumption } from '@/lib/diagnostics/run-context';
import './support/matchers';
import { contextOfRun, type RunPart } from './support/visit-of';

const r410a = refrigerantProperties('R-410A');
const ATMOSPHERE = 14.696;
const BTUH_PER_W = 3.412;

const cooling = {
  mode: 'cooling',
  outdoorAirF: 92,
  returnAirF: 76,
  returnWetBulbF: 63,
  supplyAirF: 57,
  supplyWetBulbF: 55,
  airflowCfm: 1_150,
  blowerW: 450,
  suctionPsig: 130,
  dischargePsig: 365,
  suctionLineF: 55,
  dischargeLineF: 165,
  liquidLineF: 100,
  outdoorUnitW: 2_600,
} as const satisfies RunPart;

describe('flow through the indoor coil from the air side', () => {
  it('identity: cooling: all heat that goes in comes out between discharge and liquid line', () => {
    const context = contextOfRun(cooling);
    const values = deriveRun(context);
    const value = (id: string): number => derivedById(values, id)?.value ?? Number.NaN;
    const shellLoss = assumption(context, 'shellLossFrac').value;
    const into = value('totalCapacityBtuh') + BTUH_PER_W * (450 + value('compressorW') * (1 - shellLoss));
    const psia = 365 + ATMOSPHERE;
    const drop = Number(r410a.vapourEnthalpyBtuLb(psia, 165)) - Number(r410a.liquidEnthalpyBtuLb(psia, 100));
    expect(value('coilFlowLbH')).toBeCloseToWithin(into / drop, 0.01 * (into / drop));
  });

  it('identity: heating: the air takes what the refrigerant gives, less the heat of the blower', () => {
    const context = contextOfRun({ ...cooling, mode: 'heating', outdoorAirF: 45, supplyAirF: 100 });
    const values = deriveRun(context);
    const value = (id: string): number => derivedById(values, id)?.value ?? Number.NaN;
    const psia = 365 + ATMOSPHERE;
    const drop = Number(r410a.vapourEnthalpyBtuLb(psia, 165)) - Number(r410a.liquidEnthalpyBtuLb(psia, 100));
    const given = value('sensibleCapacityBtuh') - BTUH_PER_W * 450;
    expect(value('coilFlowLbH')).toBeCloseToWithin(given / drop, 0.01 * (given / drop));
  });

  it('identity: the suction line does not enter: liquid in it changes nothing', () => {
    const flow = (suctionLineF: number) =>
      derivedById(deriveRun(contextOfRun({ ...cooling, suctionLineF })), 'coilFlowLbH')?.value;
    expect(flow(44)).toBe(flow(60));
    expect(flow(60)).toBeGreaterThan(100);
  });

  it('identity: electric heat, a wet discharge or no air side: no flow', () => {
    const none = (change: Partial<RunPart>) =>
      derivedById(deriveRun(contextOfRun({ ...cooling, ...change })), 'coilFlowLbH');
    expect(none({ mode: 'heating', supplyAirF: 110, electricHeatOn: true })).toBeUndefined();
    expect(none({ dischargeLineF: 90 })).toBeUndefined();
    expect(coilFlow(contextOfRun(cooling), undefined)).toBeUndefined();
  });
});
