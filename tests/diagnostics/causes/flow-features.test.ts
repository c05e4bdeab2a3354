import { describe, expect, it } from 'vitest';
import table from '@/lib/diagnostics/causes/data/features.json';
import { flowAgainstPower, flowAgainstSize, wetEfficiency } from '@/lib/diagnostics/causes/flow-features';
import { deriveRun } from '@/lib/diagnostics/derived/derive-run';
import { refrigerantProperties } from '@/lib/diagnostics/refrigerant/properties';
import { expectedEfficiency } from '@/lib/diagnostics/targets/expected-efficiency';
import '../support/matchers';
import { contextOfRun, type RunPart } from '../support/visit-of';

const p = refrigerantProperties('R-410A');
const ATMOSPHERE = 14.696;
const SHELL_LOSS = 0.07;
const BTUH_PER_W = 3.412;
const unit = { ratings: { seerBtuPerWh: 14, hspfBtuPerWh: 8.2 }, nominalTons: 3 } as const;
const assumptions = [
  { key: 'shellLossFrac', low: SHELL_LOSS, likely: SHELL_LOSS, high: SHELL_LOSS },
] as const;

const suctionPsia = 130 + ATMOSPHERE;
const dischargePsia = 365 + ATMOSPHERE;
const dewF = Number(p.dewF(suctionPsia));
const ratio = dischargePsia / suctionPsia;
const efficiency = expectedEfficiency('R-410A', ratio, SHELL_LOSS).value;

/**
 * Readings of a heating run by hand: `pumped` lb/h compressed with the usual efficiency from a suction with
 * `superheatFd`, of which a share leaks back inside the compressor or across the reversing valve.
 */
function run(pumped: number, superheatFd: number, leak: { inside?: number; across?: number } = {}): RunPart {
  const suctionF = dewF + superheatFd;
  const suction = Number(p.vapourEnthalpyBtuLb(suctionPsia, suctionF));
  const lossless = p.isentropicDischarge(suctionPsia, suctionF, dischargePsia);
  const rise = ('enthalpyBtuLb' in lossless ? lossless.enthalpyBtuLb - suction : Number.NaN) / efficiency;
  const { inside = 0, across = 0 } = leak;
  const discharge = suction + rise / (1 - inside);
  const delivered = pumped * (1 - inside) * (1 - across);
  const liquidF = 100;
  const heat = delivered * (discharge - Number(p.liquidEnthalpyBtuLb(dischargePsia, liquidF)));
  const cfm = 1_150;
  const compressorW = (pumped * rise) / (1 - SHELL_LOSS) / BTUH_PER_W;
  return {
    mode: 'heating',
    outdoorAirF: 47,
    returnAirF: 70,
    supplyAirF: 70 + (heat + BTUH_PER_W * 400) / (1.08 * cfm),
    airflowCfm: cfm,
    blowerW: 400,
    suctionPsig: 130,
    dischargePsig: 365,
    suctionLineF: suctionF,
    dischargeLineF: Number(p.vapourFAtEnthalpy(dischargePsia, discharge)),
    liquidLineF: liquidF,
    outdoorUnitW: compressorW + 150,
    outdoorFanA: 150 / (240 * 0.9),
    lineV: 240,
  };
}

function features(part: RunPart) {
  const context = contextOfRun(part, unit, { assumptions: [...assumptions] as never });
  const derived = deriveRun(context);
  return {
    power: flowAgainstPower(context, derived)?.residual ?? Number.NaN,
    coil: flowAgainstSize(context, derived, true)?.residual ?? Number.NaN,
    pumped: flowAgainstSize(context, derived, false)?.residual ?? Number.NaN,
    efficiency: wetEfficiency(context)?.residual ?? Number.NaN,
  };
}

describe('flow as evidence', () => {
  it('identity: a leak of a quarter shows as ln 0.75 in the flow for the power, wherever it is', () => {
    const sound = features(run(480, 8));
    expect(sound.power).toBeCloseToWithin(0, 0.04);
    for (const leak of [{ inside: 0.25 }, { across: 0.25 }]) {
      expect(features(run(480, 8, leak)).power - sound.power).toBeCloseToWithin(Math.log(0.75), 0.03);
    }
  });

  it('identity: the compressor counts what it delivers, so only a leak inside lowers what it pumps for its size', () => {
    const sound = features(run(480, 8));
    expect(features(run(480, 8, { inside: 0.25 })).pumped - sound.pumped).toBeCloseToWithin(
      Math.log(0.75),
      0.02,
    );
    expect(features(run(480, 8, { across: 0.25 })).pumped - sound.pumped).toBeCloseToWithin(0, 0.02);
    expect(features(run(480, 8, { across: 0.25 })).coil - sound.coil).toBeCloseToWithin(Math.log(0.75), 0.03);
  });

  // 3 tons at 95 F, 45 F evaporating, 10 F superheat, 112.5 F condensing, 10 F subcooling: 36,000 Btu/h over some
  // 69 Btu/lb is 520 lb/h at 2.05 lb/ft3; computed by hand from the equation of state.
  it('outside: a 3-ton compressor draws in what its rating says', () => {
    const psia = Number(p.dewPsia(45));
    const vapour = p.vapour(psia, 55);
    const at95 = 'enthalpyBtuLb' in vapour ? vapour : { enthalpyBtuLb: Number.NaN, densityLbFt3: Number.NaN };
    const liquid = Number(p.liquidEnthalpyBtuLb(Number(p.bubblePsia(112.5)), 102.5));
    const ft3Hr = 37_400 / (at95.enthalpyBtuLb - liquid) / at95.densityLbFt3;
    const here = p.vapour(suctionPsia, dewF + 8);
    const flow = ft3Hr * ('densityLbFt3' in here ? here.densityLbFt3 : Number.NaN);
    expect(features(run(flow, 8)).pumped).toBeCloseToWithin(0, 0.12);
  });

  it('identity: with no superheat a sound efficiency sits a little below its allowance for liquid, a leak far below', () => {
    const { wetness } = table.expectations;
    const sound = features(run(480, 0)).efficiency;
    expect(sound).toBeLessThan(0.005);
    expect(sound).toBeGreaterThan(-0.12);
    expect(features(run(480, 0, { inside: 0.25 })).efficiency - sound).toBeCloseToWithin(
      -0.25 * efficiency,
      0.02,
    );
    expect(wetness.value).toBeLessThan(0.04);
  });
});
