import limits from '../data/limits.json';
import { derivedById } from '../derived/derive-run';
import { dischargeSide } from '../derived/pressures';
import { psiaAt } from '../derived/refrigerant-side';
import type { DerivedValue, Flag } from '../findings';
import type { RunContext } from '../run-context';
import { plausibleEfficiency } from '../targets/expected-efficiency';
import { dischargeF } from '../targets/healthy-discharge';
import { conflict, round } from './conflict';

const SIGMAS = limits.conflictSigmas.value;

/**
 * Refrigerant-side readings that cannot all be true. Nothing is dropped: the flag names the readings and computing
 * goes on with what is left.
 *
 * @param context  run with its unit and site
 * @param values   derived values of the same run
 * @returns flags; a difference counts as a conflict from twice its standard uncertainty
 * Source: data/limits.json
 * Check: tests/diagnostics/plausibility.test.ts
 */
export function refrigerantConflicts(context: RunContext, values: readonly DerivedValue[]): readonly Flag[] {
  return [
    ...pressureConflicts(context),
    ...superheatFlags(context, values),
    ...subcoolingFlags(context, values),
    ...statedFlags(context, values),
    ...efficiencyFlags(context, values),
    ...airFlags(context, values),
    ...drierFlags(context, values),
  ];
}

function pressureConflicts({ run }: RunContext): readonly Flag[] {
  const flags: Flag[] = [];
  const { suctionPsig, dischargePsig, liquidPsig } = run;
  const high = dischargePsig ?? liquidPsig;
  if (suctionPsig !== undefined && high !== undefined && high <= suctionPsig) {
    const name = dischargePsig === undefined ? 'liquidPsig' : 'dischargePsig';
    flags.push(
      conflict(run.id, 'dischargeNotAboveSuction', [name, 'suctionPsig'], { high, suction: suctionPsig }),
    );
  }
  if (dischargePsig !== undefined && liquidPsig !== undefined) {
    const slack = 2 * Math.max(1, 0.014 * dischargePsig);
    if (liquidPsig > dischargePsig + slack) {
      flags.push(
        conflict(run.id, 'liquidAboveDischargePressure', ['liquidPsig', 'dischargePsig'], {
          liquid: liquidPsig,
          discharge: dischargePsig,
        }),
      );
    }
  }
  return flags;
}

function superheatFlags({ run }: RunContext, values: readonly DerivedValue[]): readonly Flag[] {
  const superheat = derivedById(values, 'suctionSuperheatFd');
  if (superheat === undefined) return [];
  const readings = ['suctionLineF', 'suctionPsig'];
  const shown = { superheat: round(superheat.value) };
  if (superheat.value < -SIGMAS * superheat.sd) {
    const line = run.suctionLineF ?? 0;
    const pair = { line, psig: run.suctionPsig ?? 0, saturation: round(line - superheat.value) };
    return [conflict(run.id, 'suctionColderThanSaturation', readings, { ...shown, ...pair })];
  }
  if (superheat.value < limits.suctionSuperheatFd.danger) {
    // in heating an accumulator is there to catch it; in cooling it reaches the compressor
    return run.mode === 'cooling'
      ? [{ code: 'liquidReturning', severity: 'danger', runId: run.id, readings, values: shown }]
      : [{ code: 'noSuperheat', severity: 'doubt', runId: run.id, readings, values: shown }];
  }
  return superheat.value < limits.suctionSuperheatFd.floor
    ? [{ code: 'superheatBelowFloor', severity: 'doubt', runId: run.id, readings, values: shown }]
    : [];
}

function subcoolingFlags(context: RunContext, values: readonly DerivedValue[]): readonly Flag[] {
  const { run } = context;
  const subcooling = derivedById(values, 'liquidSubcoolingFd');
  if (subcooling === undefined) return [];
  const readings = ['liquidLineF', run.liquidPsig === undefined ? 'dischargePsig' : 'liquidPsig'];
  const shown = { subcooling: round(subcooling.value) };
  if (subcooling.value < -SIGMAS * subcooling.sd) {
    const line = run.liquidLineF ?? 0;
    const psig = run.liquidPsig ?? run.dischargePsig ?? 0;
    const pair = { line, psig, saturation: round(line + subcooling.value) };
    return [conflict(run.id, 'liquidWarmerThanCondensing', readings, { ...shown, ...pair })];
  }
  return subcooling.value <= 0
    ? [{ code: 'noSubcooling', severity: 'doubt', runId: run.id, readings, values: shown }]
    : [];
}

/** What a gauge works out by itself is no reading of its own: it must be the difference of the two behind it. */
const STATED = [
  {
    name: 'statedSuperheatFd',
    derived: 'suctionSuperheatFd',
    code: 'statedSuperheatContradicted',
    of: ['suctionPsig', 'suctionLineF'],
  },
  {
    name: 'statedSubcoolingFd',
    derived: 'liquidSubcoolingFd',
    code: 'statedSubcoolingContradicted',
    of: ['liquidPsig', 'dischargePsig', 'liquidLineF'],
  },
] as const;

function statedFlags({ run }: RunContext, values: readonly DerivedValue[]): readonly Flag[] {
  return STATED.flatMap(({ name, derived, code, of }) => {
    const stated = run[name];
    const value = derivedById(values, derived);
    if (stated === undefined || value === undefined) return [];
    // the gauge has sensors of its own, as good as those of the readings
    if (Math.abs(stated - value.value) <= SIGMAS * Math.SQRT2 * value.sd) return [];
    const readings = [name, ...of.filter((reading) => run[reading] !== undefined)];
    return [conflict(run.id, code, readings, { stated: round(stated), derived: round(value.value) })];
  });
}

function efficiencyFlags(context: RunContext, values: readonly DerivedValue[]): readonly Flag[] {
  const { run } = context;
  const readings = ['dischargeLineF', 'suctionLineF', 'suctionPsig', dischargeName(context)];
  const pair = {
    discharge: run.dischargeLineF ?? 0,
    suction: run.suctionPsig ?? 0,
    high: dischargeSide(context)?.gauge.value ?? 0,
  };
  const efficiency = derivedById(values, 'isentropicEfficiencyFrac');
  const cool = (efficiency?.value ?? 0) > plausibleEfficiency.high || coolerThanDew(values);
  if (cool && mayBeWet(values)) {
    return [{ code: 'dischargeCooledByLiquid', severity: 'doubt', runId: run.id, readings }];
  }
  if (efficiency === undefined) {
    if (coolerThanDew(values)) return [conflict(run.id, 'dischargeCoolerThanLossless', readings, pair)];
    const hottestF = hottestPlausibleF(context, values);
    if (hottestF === undefined || pair.discharge <= hottestF) return [];
    const percent = Math.round(100 * plausibleEfficiency.low);
    const hot = { ...pair, hottest: Math.round(hottestF), percent };
    return [conflict(run.id, 'dischargeTooHotForPressures', readings, hot)];
  }
  const shown = { ...pair, efficiencyPercent: Math.round(100 * efficiency.value) };
  if (efficiency.value > 1) return [conflict(run.id, 'dischargeCoolerThanLossless', readings, shown)];
  if (efficiency.value > plausibleEfficiency.high) {
    const sure = efficiency.value - efficiency.sd > plausibleEfficiency.high;
    return [
      {
        code: 'efficiencyTooHigh',
        severity: sure ? 'conflict' : 'doubt',
        runId: run.id,
        readings,
        values: shown,
      },
    ];
  }
  return efficiency.value < plausibleEfficiency.low
    ? [{ code: 'efficiencyTooLow', severity: 'doubt', runId: run.id, readings, values: shown }]
    : [];
}

/**
 * Discharge line a barely plausible compressor would make of the suction gas as read; a discharge line beyond the
 * property tables has no efficiency of its own to judge.
 */
function hottestPlausibleF(context: RunContext, values: readonly DerivedValue[]): number | undefined {
  const { properties, altitude, run } = context;
  const high = dischargeSide(context);
  const superheat = derivedById(values, 'suctionSuperheatFd');
  const known = properties !== undefined && high !== undefined && superheat !== undefined;
  if (!known || run.suctionPsig === undefined) return undefined;
  const suctionPsia = psiaAt(run.suctionPsig, altitude.value);
  const dischargePsia = psiaAt(high.gauge.value, altitude.value, high.drop.value);
  if (dischargePsia <= suctionPsia) return undefined;
  const { low } = plausibleEfficiency;
  const hottestF = dischargeF(properties, suctionPsia, superheat.value, dischargePsia, low);
  // the table ends first: what lies beyond it is too hot all the same
  return Number.isFinite(hottestF) ? hottestF : limits.dischargeLineF.limit;
}

/** Superheat that cannot be told from none: liquid in the suction line cools the compressor, which is no conflict. */
function mayBeWet(values: readonly DerivedValue[]): boolean {
  const superheat = derivedById(values, 'suctionSuperheatFd');
  return (
    superheat !== undefined &&
    superheat.value < SIGMAS * superheat.sd &&
    superheat.value > -SIGMAS * superheat.sd
  );
}

/** A discharge line below saturation has no vapour state at all, so no efficiency either. */
function coolerThanDew(values: readonly DerivedValue[]): boolean {
  const superheat = derivedById(values, 'dischargeSuperheatFd');
  return superheat !== undefined && superheat.value < 0;
}

function airFlags(context: RunContext, values: readonly DerivedValue[]): readonly Flag[] {
  const { run } = context;
  const cooling = run.mode === 'cooling';
  const flags: Flag[] = [];
  const over = derivedById(values, cooling ? 'condensingOverOutdoorFd' : 'condensingOverReturnFd');
  const highName = run.liquidPsig === undefined ? 'dischargePsig' : 'liquidPsig';
  if (over !== undefined && over.value < -SIGMAS * over.sd) {
    const air = cooling ? 'outdoorAirF' : 'returnAirF';
    const pair = pairOf(run[highName], run[air], over.value);
    flags.push(conflict(run.id, 'condensingBelowAir', [highName, air], pair));
  }
  const below = derivedById(values, cooling ? 'evaporatingBelowReturnFd' : 'evaporatingBelowOutdoorFd');
  if (below !== undefined && below.value < -SIGMAS * below.sd) {
    const air = cooling ? 'returnAirF' : 'outdoorAirF';
    const pair = pairOf(run.suctionPsig, run[air], -below.value);
    flags.push(conflict(run.id, 'evaporatingAboveAir', ['suctionPsig', air], pair));
  }
  if (cooling && run.liquidLineF !== undefined && run.outdoorAirF !== undefined) {
    if (run.liquidLineF < run.outdoorAirF - SIGMAS * Math.SQRT2) {
      flags.push(
        conflict(run.id, 'liquidColderThanOutdoor', ['liquidLineF', 'outdoorAirF'], {
          liquid: run.liquidLineF,
          outdoor: run.outdoorAirF,
        }),
      );
    }
  }
  return flags;
}

/** A pressure with its saturation temperature, and the air it stands against. */
function pairOf(
  psig: number | undefined,
  air: number | undefined,
  overAirFd: number,
): Readonly<Record<'psig' | 'air' | 'saturation', number>> {
  return { psig: psig ?? 0, air: air ?? 0, saturation: round((air ?? 0) + overAirFd) };
}

function drierFlags({ run }: RunContext, values: readonly DerivedValue[]): readonly Flag[] {
  const drop = derivedById(values, 'drierDropFd');
  if (drop === undefined || drop.value > -SIGMAS * drop.sd) return [];
  return [
    {
      code: 'liquidWarmsOnTheWay',
      severity: 'doubt',
      runId: run.id,
      readings: ['liquidLineF', 'liquidBeforeMeteringF'],
      values: { rise: round(-drop.value) },
    },
  ];
}

function dischargeName(context: RunContext): string {
  return dischargeSide(context)?.gauge.name ?? 'dischargePsig';
}
