import { describe, expect, it } from 'vitest';
import confirmation from '@/lib/diagnostics/causes/data/confirmation.json';
import discriminators from '@/lib/diagnostics/causes/data/discriminators.json';
import { healthyCondensing, healthyEvaporating } from '@/lib/diagnostics/targets/healthy-pressures';
import { healthyAt } from '@/lib/diagnostics/targets/healthy-state';
import { targetSuperheatFd } from '@/lib/diagnostics/targets/target-superheat';
import wording from '@/lib/diagnostics/wording/en.json';
import { CauseId } from '@/lib/visit/cause';
import type { Unit } from '@/lib/visit/unit';
import type { Visit } from '@/lib/visit/visit';
import '../support/matchers';
import { contextOfRun, type RunPart, visitOf } from '../support/visit-of';
import { causesFrom } from './diagnosed';

const rated: Partial<Unit> = { ratings: { seerBtuPerWh: 14, hspfBtuPerWh: 8.2 }, electricHeatKw: 10 };

/** A run whose every reading sits at its target. */
function atTarget(mode: 'cooling' | 'heating', unit: Partial<Unit> = rated): RunPart {
  const fixed = unit.metering === 'fixedOrifice';
  const conditions: RunPart =
    mode === 'cooling'
      ? { mode, outdoorAirF: 85, returnAirF: 76, returnWetBulbF: 65 }
      : { mode, outdoorAirF: 40, returnAirF: 70 };
  const context = contextOfRun(conditions, unit);
  const p = context.properties;
  const evaporatingF = healthyEvaporating(context)?.temperatureF ?? Number.NaN;
  const condensingF = healthyCondensing(context)?.temperatureF ?? Number.NaN;
  const table = targetSuperheatFd(85, 65);
  const superheat = fixed && table.kind === 'value' ? table.value : 10;
  return {
    ...conditions,
    runningMinutes: 20,
    suctionPsig: round(Number(p?.dewPsia(evaporatingF)) - 14.696),
    dischargePsig: round(Number(p?.bubblePsia(condensingF)) - 14.696),
    suctionLineF: round(evaporatingF + superheat),
    liquidLineF: round(condensingF - (mode === 'cooling' ? 10 : 11)),
    outdoorUnitW: Math.round(healthyAt(context)?.outdoorUnitW ?? 0),
    airflowCfm: 1_200,
  };
}

function round(value: number): number {
  return Math.round(10 * value) / 10;
}

function found(runs: readonly RunPart[], unit: Partial<Unit> = rated, rest: Partial<Visit> = {}) {
  return causesFrom(visitOf(runs, unit, rest)).found;
}

const starved: RunPart = { ...atTarget('cooling'), suctionPsig: 95, suctionLineF: 62 };

describe('verdicts', () => {
  it.each([
    ['cooling', 'txv'],
    ['heating', 'txv'],
    ['cooling', 'fixedOrifice'],
  ] as const)('identity: all readings of a %s run at target (%s): no fault found', (mode, metering) => {
    const unit = { ...rated, metering };
    const answer = found([atTarget(mode, unit)], unit);
    expect(answer.verdict).toBe('noFaultFound');
    expect(answer.noFaultProbability).toBeGreaterThan(0.5);
    expect(answer.causes.filter(({ probability }) => probability >= 0.3)).toEqual([]);
  });

  it('identity: too few readings is an answer of its own, with what to read next', () => {
    const answer = found([{ mode: 'cooling', suctionPsig: 118, returnAirF: 75 }]);
    expect(answer).toMatchObject({ verdict: 'tooFewReadings', causes: [] });
    expect(answer.nextReadings.length).toBeGreaterThan(0);
    expect(answer.notes).toContainEqual({ code: 'tooFewReadings' });
    expect(found([]).verdict).toBe('tooFewReadings');
  });

  it('identity: one telling part is enough: a capacitor far below its label', () => {
    const answer = found([{ mode: 'cooling', compressorCapUf: 32, compressorCapRatedUf: 45, lineV: 240 }]);
    expect(answer.verdict).toBe('found');
    expect(answer.causes[0]).toMatchObject({ cause: 'runCapacitorWeak', standing: 'confirmed' });
  });

  it('identity: chances fall along the list and stay within 0..1', () => {
    const chances = found([starved]).causes.map(({ probability }) => probability);
    expect(chances.length).toBeGreaterThan(2);
    expect(chances).toEqual([...chances].sort((a, b) => b - a));
    expect(chances.filter((chance) => chance < 0 || chance > 1)).toEqual([]);
  });
});

describe('standing and confusion', () => {
  it('identity: never confirmed from pressures alone when another cause has the same pattern', () => {
    const liquidLineF = (atTarget('cooling').liquidLineF ?? 0) - 4;
    const { causes } = found([{ ...starved, liquidLineF, dischargeLineF: 205 }]);
    const restrictions = causes.filter(
      ({ cause }) => cause === 'meteringRestriction' || cause === 'liquidLineRestriction',
    );
    expect(restrictions).toHaveLength(2);
    expect(causes.filter(({ standing }) => standing === 'confirmed')).toEqual([]);
    const named = restrictions[0]?.confusedWith.map(({ separate }) => separate.code);
    expect(named).toContain('restriction-vs-undercharge');
  });

  it('identity: however sure, a high head stays "likely": only a test of its own confirms coil, air or charge', () => {
    const base = atTarget('cooling');
    const high: RunPart = {
      ...base,
      dischargePsig: (base.dischargePsig ?? 0) + 130,
      liquidLineF: (base.liquidLineF ?? 0) + 27,
      dischargeLineF: 195,
      fanCapUf: 4.9,
      fanCapRatedUf: 5,
      outdoorUnitW: Math.round(1.35 * (base.outdoorUnitW ?? 0)),
    };
    const top = found([high]).causes[0];
    expect(top?.cause).toBe('outdoorCoilFouled');
    expect(top?.probability).toBeGreaterThan(0.6);
    expect(top?.standing).toBe('likely');
    // no air by the standing pressure: coil or charge, which only a look or the scale tells apart
    const airFree = { ...high, standingPsig: 286, standingCoilAirF: 92 };
    const [sure] = found([airFree]).causes;
    expect(sure?.cause).toBe('outdoorCoilFouled');
    expect(sure?.probability).toBeGreaterThan(0.9);
    expect(sure?.standing).toBe('likely');
  });

  // Trade training note on non-condensables; U.S. Army TM 55-1930-209-14P-15, read: pressure above saturation at rest.
  it('outside: a standing pressure above saturation turns the same picture into air in the circuit, and confirms it', () => {
    const base = atTarget('cooling');
    const high: RunPart = {
      ...base,
      dischargePsig: (base.dischargePsig ?? 0) + 90,
      liquidLineF: (base.liquidLineF ?? 0) + 6,
      dischargeLineF: 185,
      outdoorUnitW: Math.round(1.25 * (base.outdoorUnitW ?? 0)),
    };
    const top = found([{ ...high, standingPsig: 320, standingCoilAirF: 92 }]).causes[0];
    expect(top).toMatchObject({ cause: 'nonCondensables', standing: 'confirmed' });
    expect(found([high]).causes.map(({ standing }) => standing)).not.toContain('confirmed');
  });

  // Trade article on telling reversing-valve from compressor faults, read: rise over the valve, alarm 3-5 F.
  it('outside: a warming in the reversing valve points to it, none to the compressor', () => {
    const base = atTarget('cooling');
    const weak: RunPart = {
      ...base,
      suctionPsig: (base.suctionPsig ?? 0) + 18,
      suctionLineF: (base.suctionLineF ?? 0) + 18,
      dischargePsig: (base.dischargePsig ?? 0) - 45,
      liquidLineF: (base.liquidLineF ?? 0) - 6,
      outdoorUnitW: Math.round(0.88 * (base.outdoorUnitW ?? 0)),
    };
    const at = (riseFd: number) =>
      found([{ ...weak, suctionBeforeValveF: (weak.suctionLineF ?? 0) - riseFd }]);
    const chance = (riseFd: number, cause: CauseId): number =>
      at(riseFd).causes.find((c) => c.cause === cause)?.probability ?? 0;
    expect(chance(14, 'reversingValveLeaking')).toBeGreaterThan(0.8);
    expect(chance(1, 'reversingValveLeaking')).toBeLessThan(0.1);
    expect(chance(1, 'compressorValvesLeaking')).toBeGreaterThan(2 * chance(14, 'compressorValvesLeaking'));
  });

  it('identity: the drier drop splits the two restrictions', () => {
    const liquidLineF = (atTarget('cooling').liquidLineF ?? 0) - 3;
    const at = (liquidBeforeMeteringF: number) =>
      found([{ ...starved, liquidLineF, liquidBeforeMeteringF }]).causes[0]?.cause;
    expect(at(liquidLineF - 8)).toBe('liquidLineRestriction');
    expect(at(liquidLineF - 0.5)).toBe('meteringRestriction');
  });

  // Fan-law reasoning of the trade, memory: low airflow with high static is a blockage, with low static the blower.
  it('outside: static pressure tells a blockage from a weak blower', () => {
    const at = (supplyStaticInWc: number, returnStaticInWc: number) =>
      found([{ ...atTarget('cooling'), airflowCfm: 750, supplyStaticInWc, returnStaticInWc }]).causes[0];
    expect(at(0.5, -0.45)).toMatchObject({ cause: 'lowIndoorAirflow', hints: [{ code: 'blockage' }] });
    expect(at(0.1, -0.1)).toMatchObject({ cause: 'lowIndoorAirflow', hints: [{ code: 'weakBlower' }] });
  });

  it('identity: severity grows with the reading', () => {
    const at = (airflowCfm: number) =>
      found([{ ...atTarget('cooling'), airflowCfm }]).causes[0]?.severity.level ?? 0;
    expect(at(600)).toBeGreaterThan(at(850));
  });

  it('wiring: every cause, verdict, standing, hint and test has its words; each cause says what confirms it', () => {
    const words: Record<string, string> = wording;
    const keys = [
      ...CauseId.options.flatMap((cause) => [`cause.${cause}`, `causePlain.${cause}`]),
      ...['found', 'noFaultFound', 'unclear', 'tooFewReadings'].map((code) => `verdict.${code}`),
      ...['confirmed', 'likely', 'suspected', 'possible', 'unlikely'].map((code) => `standing.${code}`),
      ...discriminators.rows.map(({ id }) => `separate.${id}`),
      'hint.blockage',
      'hint.weakBlower',
    ];
    expect(keys.filter((key) => words[key] === undefined)).toEqual([]);
    const causes = CauseId.options.filter((cause) => cause !== 'none');
    expect(Object.keys(confirmation.causes).sort()).toEqual([...causes].sort());
  });
});

describe('several runs', () => {
  const shut: RunPart = {
    ...atTarget('heating'),
    id: 'as-found',
    airflowCfm: 700,
    dischargePsig: 420,
    returnStaticInWc: -0.5,
    supplyStaticInWc: 0.45,
  };
  const opened: RunPart = {
    ...atTarget('heating'),
    id: 'opened',
    returnStaticInWc: -0.25,
    supplyStaticInWc: 0.25,
  };

  it('identity: the unit as found speaks; the later run shows the cause gone and what changed', () => {
    const answer = found([shut, opened]);
    expect(answer.causes[0]).toMatchObject({ cause: 'lowIndoorAirflow' });
    expect(answer.resolved).toEqual([
      { cause: 'lowIndoorAirflow', fromRunId: 'as-found', toRunId: 'opened' },
    ]);
    expect(answer.byRun.map(({ runId, verdict }) => `${runId} ${verdict}`)).toEqual([
      'as-found found',
      'opened noFaultFound',
    ]);
    const real = answer.comparisons[0]?.changes.filter((change) => change.real).map(({ id }) => id);
    expect(real).toEqual(
      expect.arrayContaining(['condensingOverReturnFd', 'airflowCfm', 'totalExternalStaticInWc']),
    );
  });

  it('property: order of runs of different modes does not matter', () => {
    const forth = found([starved, { ...shut, id: 'h' }]);
    const back = found([{ ...shut, id: 'h' }, starved]);
    expect(back.verdict).toBe(forth.verdict);
    expect(back.causes.map(({ cause }) => cause)).toEqual(forth.causes.map(({ cause }) => cause));
    const apart = forth.causes.map(({ probability }, i) =>
      Math.abs(probability - (back.causes[i]?.probability ?? 9)),
    );
    expect(Math.max(...apart)).toBeLessThan(1e-9);
    expect(back.nextReadings.map(({ saying }) => saying)).toEqual(
      forth.nextReadings.map(({ saying }) => saying),
    );
  });

  it('identity: a mode without telling readings leaves the other alone', () => {
    expect(found([starved, { mode: 'heating' }]).causes).toEqual(found([starved]).causes);
  });
});
