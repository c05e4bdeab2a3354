import { describe, expect, test } from 'vitest';
import { baroPsiaAtAltitude, psigToPsia } from '@/lib/diagnostics/refrigerant/gauge';
import { isOutOfRange } from '@/lib/diagnostics/refrigerant/out-of-range';
import { refrigerantProperties } from '@/lib/diagnostics/refrigerant/properties';
import type { RefrigerantName } from '@/lib/visit/refrigerant-names';
import file from '../../reference/refrigerants-cycle-checks.json';
import { expectWithin, valueIn } from './within';

const BTU_PER_W_HOUR = 3.412141633;
type Point = (typeof file.points)[number];

/** The formulas of the file's `conventions`, on the product's properties. */
function cycleOf({ input }: Point) {
  const properties = refrigerantProperties(input.refrigerant as RefrigerantName);
  const baroPsia = baroPsiaAtAltitude(input.elevation_ft);
  const suctionPsia = psigToPsia(input.suction_psig, baroPsia);
  const dischargePsia = psigToPsia(input.discharge_psig, baroPsia);
  const dewSuctionF = valueIn(properties.dewF(suctionPsia));
  const dewDischargeF = valueIn(properties.dewF(dischargePsia));
  const bubbleF = valueIn(properties.bubbleF(dischargePsia));
  const suction = valueIn(properties.vapourEnthalpyBtuLb(suctionPsia, input.suctionLine_F));
  const discharge = valueIn(properties.vapourEnthalpyBtuLb(dischargePsia, input.dischargeLine_F));
  const ideal = valueIn(properties.isentropicDischarge(suctionPsia, input.suctionLine_F, dischargePsia));
  const massLbH =
    (input.compressor_W * BTU_PER_W_HOUR * (1 - input.shellLossFraction)) / (discharge - suction);
  return {
    superheatFd: input.suctionLine_F - dewSuctionF,
    subcoolingFd: bubbleF - input.liquidLine_F,
    dischargeSuperheatFd: input.dischargeLine_F - dewDischargeF,
    compressionRatio: dischargePsia / suctionPsia,
    isentropicDischargeF: ideal.dischargeF,
    isentropicEfficiency: (ideal.enthalpyBtuLb - suction) / (discharge - suction),
    massLbH,
    suction,
    discharge,
    liquid: properties.liquidEnthalpyBtuLb(dischargePsia, input.liquidLine_F),
  };
}

function expectReadings(point: Point): void {
  const found = cycleOf(point);
  const { id, expected } = point;
  // 0.15 F is suggested in the file; the altitude formula and the tables together stay within 0.02 F
  expectWithin(`${id} superheat`, found.superheatFd, expected.superheat_F, 0.02);
  expectWithin(`${id} subcooling`, found.subcoolingFd, expected.subcooling_F, 0.02);
  expectWithin(`${id} discharge superheat`, found.dischargeSuperheatFd, expected.dischargeSuperheat_F, 0.02);
  expectWithin(`${id} ratio`, found.compressionRatio / expected.compressionRatio, 1, 1e-4);
  expectWithin(`${id} isentropic F`, found.isentropicDischargeF, expected.T_dis_isentropic_F, 0.05);
  expectWithin(`${id} efficiency`, found.isentropicEfficiency, expected.isentropicEfficiency, 0.005);
  expectWithin(`${id} mass flow`, found.massLbH / expected.massFlow_lb_h, 1, 0.005);
}

describe('refrigerant cycle [tests/reference/refrigerants-cycle-checks.json]', () => {
  const possible = file.points.filter((point) => point.possible);

  test('outside: twelve operating points: readings, mass flow, capacities and COP', () => {
    for (const point of possible) {
      expectReadings(point);
      const { id, input, expected } = point;
      const { massLbH, suction, discharge, liquid } = cycleOf(point);
      const coolingBtuh = massLbH * (suction - valueIn(liquid));
      const heatingBtuh = massLbH * (discharge - valueIn(liquid));
      expectWithin(`${id} cooling`, coolingBtuh / (expected.coolingCapacity_Btu_h ?? 0), 1, 0.005);
      expectWithin(`${id} heating`, heatingBtuh / (expected.heatingCapacity_Btu_h ?? 0), 1, 0.005);
      const cop = coolingBtuh / (input.compressor_W * BTU_PER_W_HOUR);
      expectWithin(`${id} COP`, cop / (expected.COP_cooling_compressorOnly ?? 0), 1, 0.005);
    }
    expect(possible.length).toBe(12);
  });

  test('outside: a liquid line warmer than bubble gives no liquid enthalpy, the rest stands', () => {
    const point = file.points.find(({ id }) => id === 'x01');
    if (point === undefined) throw new Error('no point x01');
    expectReadings(point);
    const { liquid } = cycleOf(point);
    expect(isOutOfRange(liquid)).toBe(true);
    expect(liquid).toEqual({ kind: 'none', why: 'warmer than bubble: vapour may be present' });
  });

  test('outside: a discharge line cooler than lossless compression shows as an efficiency above 1', () => {
    const point = file.points.find(({ id }) => id === 'x02');
    if (point === undefined) throw new Error('no point x02');
    expectReadings(point);
    expect(cycleOf(point).isentropicEfficiency).toBeGreaterThan(1);
  });
});
