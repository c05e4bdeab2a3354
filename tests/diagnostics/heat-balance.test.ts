import { describe, expect, it } from 'vitest';
import { derivedById, deriveRun } from '@/lib/diagnostics/derived/derive-run';
import { isentropicEfficiency, massFlowLbH, refrigerantCapacityBtuh } from '@/lib/diagnostics/heat-balance';
import { refrigerantProperties } from '@/lib/diagnostics/refrigerant/properties';
import { RefrigerantName } from '@/lib/visit/refrigerant-names';
import checks from '../reference/refrigerants-cycle-checks.json';
import './support/matchers';
import { contextOfRun } from './support/visit-of';

// Outside values: cycle points computed with an open property library and an independent evaluator of the published
// equations (tests/reference/refrigerants-cycle-checks.json). Tolerances are the file's own: superheats and
// subcooling 0.15 F, flow, capacities and COP 0.5 %, isentropic efficiency 0.005.
const FD = 0.15;
const FRAC = 0.005;

const points = checks.points.map((point) => ({ ...point, title: `${point.id} ${point.input.description}` }));
const possible = points.filter((point) => point.possible);

function nameOf(point: (typeof points)[number]): RefrigerantName {
  return RefrigerantName.parse(point.input.refrigerant);
}

function stateOf(point: (typeof points)[number]) {
  const { input } = point;
  const atmosphere = input.atmosphere_psia;
  return {
    suctionPsia: input.suction_psig + atmosphere,
    suctionLineF: input.suctionLine_F,
    dischargePsia: input.discharge_psig + atmosphere,
    dischargeLineF: input.dischargeLine_F,
    liquidPsia: input.discharge_psig + atmosphere,
    liquidLineF: input.liquidLine_F,
    compressorW: input.compressor_W,
    shellLossFrac: input.shellLossFraction,
  };
}

/** The same point as a run of a visit, through the whole derivation. */
function derivedOf(point: (typeof points)[number]) {
  const { input } = point;
  const context = contextOfRun(
    {
      mode: input.mode === 'cooling' ? 'cooling' : 'heating',
      suctionPsig: input.suction_psig,
      suctionLineF: input.suctionLine_F,
      dischargePsig: input.discharge_psig,
      dischargeLineF: input.dischargeLine_F,
      liquidLineF: input.liquidLine_F,
      outdoorUnitW: input.compressor_W,
    },
    { refrigerant: nameOf(point) },
    {
      site: { altitudeFt: input.elevation_ft },
      assumptions: [exactly('shellLossFrac', input.shellLossFraction), exactly('outdoorFanShareFrac', 0)],
    },
  );
  return deriveRun(context);
}

function exactly(key: 'shellLossFrac' | 'outdoorFanShareFrac', value: number) {
  return { key, low: value, likely: value, high: value, source: 'check point' };
}

describe('heat balance against published-equation cycle points', () => {
  it('outside: the file holds twelve possible and two impossible points', () => {
    expect(possible).toHaveLength(12);
    expect(points.filter((point) => !point.possible).map((point) => point.id)).toEqual(['x01', 'x02']);
  });

  it.each(possible)('outside: $title: flow, capacities, efficiency', (point) => {
    const p = refrigerantProperties(nameOf(point));
    const state = stateOf(point);
    const { expected } = point;
    expect(isentropicEfficiency(p, state)).toBeCloseToWithin(expected.isentropicEfficiency, FRAC);
    expect(massFlowLbH(p, state)).toBeWithinFrac(expected.massFlow_lb_h, FRAC);
    const cooling = refrigerantCapacityBtuh(p, 'cooling', state);
    const heating = refrigerantCapacityBtuh(p, 'heating', state);
    expect(cooling).toBeWithinFrac(expected.coolingCapacity_Btu_h, FRAC);
    expect(heating).toBeWithinFrac(expected.heatingCapacity_Btu_h, FRAC);
    expect(Number(cooling) / (3.412 * state.compressorW)).toBeWithinFrac(
      expected.COP_cooling_compressorOnly,
      FRAC,
    );
    expect(Number(heating) / (3.412 * state.compressorW)).toBeWithinFrac(
      expected.COP_heating_compressorOnly,
      FRAC,
    );
  });

  it.each(possible)('outside: $title: the same through the readings of a run', (point) => {
    const values = derivedOf(point);
    const { expected, input } = point;
    const value = (id: string) => derivedById(values, id)?.value;
    expect(value('suctionSuperheatFd')).toBeCloseToWithin(expected.superheat_F, FD);
    expect(value('liquidSubcoolingFd')).toBeCloseToWithin(expected.subcooling_F, FD);
    expect(value('dischargeSuperheatFd')).toBeCloseToWithin(expected.dischargeSuperheat_F, FD);
    expect(value('evaporatingF')).toBeCloseToWithin(expected.T_evap_dew_F, FD);
    expect(value('compressionRatio')).toBeWithinFrac(expected.compressionRatio, FRAC);
    expect(value('isentropicEfficiencyFrac')).toBeCloseToWithin(expected.isentropicEfficiency, FRAC);
    expect(value('refrigerantFlowLbH')).toBeWithinFrac(expected.massFlow_lb_h, FRAC);
    const capacity =
      input.mode === 'cooling' ? expected.coolingCapacity_Btu_h : expected.heatingCapacity_Btu_h;
    const cop =
      input.mode === 'cooling' ? expected.COP_cooling_compressorOnly : expected.COP_heating_compressorOnly;
    expect(value('refrigerantCapacityBtuh')).toBeWithinFrac(capacity, FRAC);
    expect(value('refrigerantCop')).toBeWithinFrac(cop, FRAC);
  });

  it('outside: x01, liquid line hotter than condensing: flow and efficiency stand, no capacity', () => {
    const point = points.find((p) => p.id === 'x01');
    if (point === undefined) throw new Error('x01');
    const p = refrigerantProperties(nameOf(point));
    const state = stateOf(point);
    expect(isentropicEfficiency(p, state)).toBeCloseToWithin(point.expected.isentropicEfficiency, FRAC);
    expect(massFlowLbH(p, state)).toBeWithinFrac(point.expected.massFlow_lb_h, FRAC);
    const none = { kind: 'none', why: 'vapour in the liquid line' };
    expect(refrigerantCapacityBtuh(p, 'cooling', state)).toEqual(none);
    expect(refrigerantCapacityBtuh(p, 'heating', state)).toEqual(none);
    const values = derivedOf(point);
    expect(derivedById(values, 'refrigerantCapacityBtuh')).toBeUndefined();
    expect(derivedById(values, 'refrigerantCop')).toBeUndefined();
    expect(derivedById(values, 'liquidSubcoolingFd')?.value).toBeCloseToWithin(
      point.expected.subcooling_F,
      FD,
    );
  });

  it('outside: x02, discharge line cooler than lossless: efficiency above 1, no flow, no capacity', () => {
    const point = points.find((p) => p.id === 'x02');
    if (point === undefined) throw new Error('x02');
    const p = refrigerantProperties(nameOf(point));
    const state = stateOf(point);
    expect(isentropicEfficiency(p, state)).toBeCloseToWithin(point.expected.isentropicEfficiency, 0.02);
    const none = { kind: 'none', why: 'discharge line cooler than lossless compression allows' };
    expect(massFlowLbH(p, state)).toEqual(none);
    expect(refrigerantCapacityBtuh(p, 'cooling', state)).toEqual(none);
    const values = derivedOf(point);
    expect(derivedById(values, 'refrigerantFlowLbH')).toBeUndefined();
    expect(derivedById(values, 'refrigerantCapacityBtuh')).toBeUndefined();
  });
});
