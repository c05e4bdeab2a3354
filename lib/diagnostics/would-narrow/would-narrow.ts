import type { Mode, ReadingName } from '../../visit/run';
import type { Ratings, Unit } from '../../visit/unit';
import type { Visit } from '../../visit/visit';
import type { Saying } from '../../visit/wording';
import { deriveForLoss } from '../derived/derive-run';
import type { Flag } from '../findings';
import { type HealthyUnit, healthyUnit } from '../healthy-unit/healthy-unit';
import { agePrior } from '../loss/age-prior';
import { lossOfRun } from '../loss/loss-of-run';
import { isUsable, type RunEvidence, runEvidence } from '../loss/run-evidence';
import { type RunContext, runContext } from '../run-context';
import { supposing } from './hypothetical-run';

/** A smaller gain is not worth a trip to the roof. */
const LEAST_GAIN_FRAC = 0.03;

const BALANCE: readonly ReadingName[] = [
  'outdoorAirF',
  'suctionPsig',
  'dischargePsig',
  'suctionLineF',
  'dischargeLineF',
  'liquidLineF',
];

const AIR_SIDE: Readonly<Record<Mode, readonly ReadingName[]>> = {
  cooling: ['outdoorAirF', 'airflowCfm', 'returnAirF', 'returnWetBulbF', 'supplyAirF', 'supplyWetBulbF'],
  heating: ['outdoorAirF', 'airflowCfm', 'returnAirF', 'supplyAirF'],
};

const INDOOR: Readonly<Record<Mode, readonly ReadingName[]>> = {
  cooling: ['returnAirF', 'returnWetBulbF'],
  heating: ['returnAirF'],
};

type Candidate = { readonly code: string; readonly mode: Mode; readonly readings: readonly ReadingName[] };

/** What `wouldNarrow` needs of one run. */
export type NarrowRun = {
  readonly context: RunContext;
  readonly flags: readonly Flag[];
  readonly evidence: RunEvidence;
};

/**
 * Readings that would narrow the range of the loss most, best first: each group of missing readings is supposed to be
 * taken and the loss worked out again.
 *
 * @param visit    visit
 * @param healthy  healthy unit of the visit
 * @param runs     runs with their flags, in order
 * @returns sayings `narrow.<group>` with the mode, the missing readings by name, and by how many percent the joint
 * standard uncertainty of ln capacity and ln power of that mode would shrink
 * A mode without any run counts as a whole set of readings. Gains below 3 % are left out.
 * Check: tests/diagnostics/would-narrow.test.ts
 */
export function wouldNarrow(
  visit: Visit,
  healthy: HealthyUnit,
  runs: readonly NarrowRun[],
): readonly Saying[] {
  const modes: readonly Mode[] = visit.unit.kind === 'heatPump' ? ['cooling', 'heating'] : ['cooling'];
  const found: { readonly gain: number; readonly saying: Saying }[] = [];
  const better = withRatings(visit.unit, healthy, visit.visitDate);
  for (const mode of modes) {
    const first = firstOf(runs, mode);
    const context = first?.context ?? emptyRun(visit, healthy, mode, runs);
    const seen = { flags: first?.flags ?? [], balanceVoid: first?.evidence.balanceVoid };
    const now = spreadOf(visit, context, seen);
    for (const candidate of candidates(mode, context, first !== undefined)) {
      const readings = candidate.readings.filter((name) => context.run[name] === undefined);
      const then = spreadOf(visit, supposing(context, readings), seen);
      push(found, candidate, readings, 1 - then / now);
    }
    if (better !== undefined && first !== undefined) {
      const gain = 1 - spreadOf(visit, { ...context, healthy: better }, seen) / now;
      push(found, { code: 'ratings', mode, readings: [] }, [], gain);
    }
  }
  return found.sort((a, b) => b.gain - a.gain).map(({ saying }) => saying);
}

function push(
  found: { readonly gain: number; readonly saying: Saying }[],
  candidate: Candidate,
  readings: readonly ReadingName[],
  gain: number,
): void {
  if (!(gain >= LEAST_GAIN_FRAC)) return;
  const values = { mode: candidate.mode, readings: readings.join(', '), percent: Math.round(100 * gain) };
  found.push({ gain, saying: { code: `narrow.${candidate.code}`, values } });
}

function candidates(mode: Mode, context: RunContext, hasRun: boolean): readonly Candidate[] {
  const { run } = context;
  const hasHighSide = run.dischargePsig !== undefined || run.liquidPsig !== undefined;
  const balance = BALANCE.filter((name) => name !== 'dischargePsig' || !hasHighSide);
  const powerKnown = run.outdoorUnitW ?? run.compressorA ?? run.outdoorUnitA;
  const power: readonly ReadingName[] = powerKnown === undefined ? ['outdoorUnitW'] : [];
  const all: readonly Candidate[] = hasRun
    ? [
        { code: 'heatBalance', mode, readings: [...balance, ...power] },
        { code: 'airSide', mode, readings: AIR_SIDE[mode] },
        { code: 'watts', mode, readings: ['outdoorUnitW'] },
        { code: 'liquidLine', mode, readings: ['liquidLineF'] },
        { code: 'indoorAir', mode, readings: INDOOR[mode] },
        { code: 'outdoorAir', mode, readings: ['outdoorAirF'] },
      ]
    : [{ code: 'otherMode', mode, readings: [...BALANCE, 'outdoorUnitW', ...INDOOR[mode]] }];
  return all.filter(({ readings }) => readings.some((name) => run[name] === undefined));
}

/** Doubts and contradictions of the run as read; they stay whatever is read besides. */
type Seen = { readonly flags: readonly Flag[]; readonly balanceVoid: RunEvidence['balanceVoid'] };

function spreadOf(visit: Visit, context: RunContext, { flags, balanceVoid }: Seen): number {
  const evidence = runEvidence(context, deriveForLoss(context), flags, balanceVoid);
  const loss = lossOfRun(context.run.mode, isUsable(evidence) ? evidence : undefined, agePrior(visit));
  return Math.hypot(loss.lnCapacity.sd, loss.lnPower.sd);
}

function firstOf(runs: readonly NarrowRun[], mode: Mode): NarrowRun | undefined {
  return runs.find(({ context }) => context.run.mode === mode);
}

function emptyRun(visit: Visit, healthy: HealthyUnit, mode: Mode, runs: readonly NarrowRun[]): RunContext {
  const properties = runs[0]?.context.properties;
  return runContext({ visit, run: { id: 'supposed', mode }, healthy, properties });
}

/** The healthy unit as if its present figures stood on a plate; undefined when they already do. */
function withRatings(unit: Unit, healthy: HealthyUnit, visitDate: string): HealthyUnit | undefined {
  const { cooling, heating } = healthy;
  const known =
    cooling.basis === 'nameplate' &&
    unit.ratings?.cooling95Btuh !== undefined &&
    heating?.basis !== 'assumed';
  if (known) return undefined;
  const ratings: Ratings = {
    cooling95Btuh: healthy.cooling95Btuh,
    ...(cooling.procedure === 'newer'
      ? { seer2BtuPerWh: cooling.seasonalBtuPerWh }
      : { seerBtuPerWh: cooling.seasonalBtuPerWh }),
    ...(heating === undefined
      ? {}
      : {
          heating47Btuh: heating.grossCapacityBtuh,
          ...(heating.procedure === 'newer'
            ? { hspf2BtuPerWh: heating.seasonalBtuPerWh }
            : { hspfBtuPerWh: heating.seasonalBtuPerWh }),
        }),
  };
  return healthyUnit({ unit: { ...unit, ratings }, visitDate });
}
