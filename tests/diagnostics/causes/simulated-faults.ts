import type { CauseId } from '@/lib/visit/cause';
import type { Visit } from '@/lib/visit/visit';
import { calibrateUnit } from '@/scripts/synthesis/calibrate';
import type { SimulatedUnit } from '@/scripts/synthesis/circuit';
import { synthesise } from '@/scripts/synthesis/synthesise';
import type { Conditions, ImposedFault, UnitSpec } from '@/scripts/synthesis/unit-spec';
import { visitOf } from '../support/visit-of';

/**
 * Units and weather none of which was looked at while sizes and priors were chosen (those were R-22 10 SEER and R-410A
 * 13 SEER with fixed metering, R-410A 14 SEER and R-454B 15 SEER with a valve; 85 and 95 F, 30 and 45 F).
 */
export const heldOutUnits: readonly UnitSpec[] = [
  unit('R-22', 'fixedOrifice', 2.5, 11, 'reciprocating'),
  unit('R-410A', 'fixedOrifice', 3.5, 14, 'scroll'),
  unit('R-407C', 'txv', 3, 13, 'scroll'),
  unit('R-32', 'txv', 2, 15, 'scroll'),
];

export const heldOutConditions: readonly Conditions[] = [
  { mode: 'cooling', outdoorF: 82, returnF: 74, returnWetBulbF: 62 },
  { mode: 'cooling', outdoorF: 98, returnF: 77, returnWetBulbF: 65 },
  { mode: 'heating', outdoorF: 25, returnF: 68 },
  { mode: 'heating', outdoorF: 50, returnF: 71 },
];

/** Each cause as the simulator imposes it, moderate and severe. */
export const singleFaults: readonly (readonly [CauseId, readonly ImposedFault[]])[] = [
  ['lowCharge', levels('lowCharge', 0.2, 0.28)],
  ['overcharge', levels('overcharge', 0.22, 0.3)],
  ['liquidLineRestriction', levels('liquidLineRestriction', 0.55, 0.7)],
  ['meteringRestriction', levels('meteringRestriction', 0.4, 0.5)],
  [
    'lowIndoorAirflow',
    [
      { fault: 'closedRegisters', level: 0.3 },
      { fault: 'dirtyFilter', level: 0.35 },
      { fault: 'weakBlower', level: 0.35 },
    ],
  ],
  ['outdoorCoilFouled', levels('outdoorCoilFouled', 0.4, 0.5)],
  ['nonCondensables', levels('nonCondensables', 0.14, 0.2)],
  ['compressorValvesLeaking', levels('compressorValvesLeaking', 0.28, 0.4)],
  ['reversingValveLeaking', levels('reversingValveLeaking', 0.28, 0.4)],
  ['runCapacitorWeak', levels('runCapacitorWeak', 0.18, 0.3)],
  ['supplementaryHeatFault', levels('supplementaryHeatFault', 0.5)],
];

/** Two faults at once. */
export const faultPairs: readonly (readonly [readonly CauseId[], readonly ImposedFault[]])[] = [
  [['lowCharge', 'lowIndoorAirflow'], pair('lowCharge', 0.24, 'closedRegisters', 0.3)],
  [['lowCharge', 'outdoorCoilFouled'], pair('lowCharge', 0.24, 'outdoorCoilFouled', 0.4)],
  [['overcharge', 'lowIndoorAirflow'], pair('overcharge', 0.25, 'dirtyFilter', 0.35)],
  [['outdoorCoilFouled', 'runCapacitorWeak'], pair('outdoorCoilFouled', 0.45, 'runCapacitorWeak', 0.25)],
  [['meteringRestriction', 'lowIndoorAirflow'], pair('meteringRestriction', 0.42, 'weakBlower', 0.3)],
  [['lowCharge', 'runCapacitorWeak'], pair('lowCharge', 0.24, 'runCapacitorWeak', 0.25)],
  [
    ['compressorValvesLeaking', 'lowIndoorAirflow'],
    pair('compressorValvesLeaking', 0.32, 'dirtyFilter', 0.35),
  ],
];

export type Simulated = {
  readonly name: string;
  /** Metering device and mode. */
  readonly group: string;
  readonly truth: readonly CauseId[];
  readonly visit: Visit;
  /** The fault does something: see `LEAST_EFFECT_FRAC`. */
  readonly felt: boolean;
};

/**
 * A fault counts as a case when it moves capacity or power by at least this share; below, neither gauge nor owner feels
 * it (an accumulator swallows extra charge, a valve opens against a restriction). Parts measured by themselves, the run
 * capacitor and the electric heat, count always.
 */
export const LEAST_EFFECT_FRAC = 0.05;
const MEASURED_ALONE: ReadonlySet<CauseId> = new Set(['runCapacitorWeak', 'supplementaryHeatFault']);

/** Readings only a test of its own brings: the unit stopped, and a second clamp at the reversing valve. */
const OWN_TESTS = ['standingPsig', 'standingCoilAirF', 'suctionBeforeValveF'] as const;

/** The same cases, with none of those tests taken. */
export function withoutOwnTests(cases: readonly Simulated[]): readonly Simulated[] {
  return cases.map((one) => ({
    ...one,
    visit: {
      ...one.visit,
      runs: one.visit.runs.map((run) => {
        const rest: Record<string, unknown> = { ...run };
        for (const name of OWN_TESTS) delete rest[name];
        return rest as typeof run;
      }),
    },
  }));
}

/** Runs of every case the simulator finds a steady state for, with instrument noise of their own seed. */
export function simulate(
  cases: readonly (readonly [CauseId | readonly CauseId[], readonly ImposedFault[], boolean])[],
  firstSeed: number,
): readonly Simulated[] {
  let seed = firstSeed;
  return heldOutUnits.flatMap((spec) => {
    const simulated = calibrateUnit(spec);
    return heldOutConditions.flatMap((conditions) =>
      cases.flatMap(([truth, faults, together]) => {
        const sets = together ? [faults] : faults.map((fault) => [fault]);
        return sets.flatMap((set) => {
          seed += 1;
          const found = visitFrom(simulated, spec, conditions, set, seed);
          const causes = typeof truth === 'string' ? [truth] : truth;
          const skip = causes.includes('supplementaryHeatFault') && conditions.mode === 'cooling';
          if (found === undefined || skip) return [];
          const what = set.map(({ fault, level }) => `${fault} ${level}`).join(' + ');
          return [
            {
              name: `${spec.refrigerant} ${spec.metering} ${conditions.mode} ${conditions.outdoorF} F: ${what}`,
              group: `${spec.metering} ${conditions.mode}`,
              truth: causes,
              visit: found.visit,
              felt:
                found.effectFrac >= LEAST_EFFECT_FRAC || causes.some((cause) => MEASURED_ALONE.has(cause)),
            },
          ];
        });
      }),
    );
  });
}

/** A visit to the unit under the faults; undefined where the simulator has no steady state. */
function visitFrom(
  simulated: SimulatedUnit,
  spec: UnitSpec,
  conditions: Conditions,
  faults: readonly ImposedFault[],
  noiseSeed: number,
): { readonly visit: Visit; readonly effectFrac: number } | undefined {
  try {
    const { run, truth } = synthesise(simulated, conditions, faults, { noiseSeed });
    const effectFrac = Math.max(
      Math.abs(truth.capacityRatioToHealthy - 1),
      Math.abs(truth.powerRatioToHealthy - 1),
    );
    return { visit: visitTo(spec, run), effectFrac };
  } catch {
    return undefined;
  }
}

/** A visit with one run to a simulated unit, its plate known. */
export function visitTo(spec: UnitSpec, run: Visit['runs'][number]): Visit {
  const { kind, refrigerant, metering, nominalTons, seer, electricHeatKw } = spec;
  return visitOf([run], {
    kind,
    refrigerant,
    metering,
    nominalTons,
    ratings: { seerBtuPerWh: seer, hspfBtuPerWh: seer < 12 ? 7.2 : seer < 14 ? 7.8 : 8.2 },
    ...(electricHeatKw === undefined ? {} : { electricHeatKw }),
  });
}

function unit(
  refrigerant: UnitSpec['refrigerant'],
  metering: UnitSpec['metering'],
  nominalTons: number,
  seer: number,
  compressor: UnitSpec['compressor'],
): UnitSpec {
  return {
    kind: 'heatPump',
    refrigerant,
    metering,
    nominalTons,
    seer,
    compressor,
    blower: seer < 14 ? 'psc' : 'ecm',
    electricHeatKw: 10,
  };
}

function levels(fault: ImposedFault['fault'], ...values: readonly number[]): ImposedFault[] {
  return values.map((level) => ({ fault, level }));
}

function pair(
  first: ImposedFault['fault'],
  firstLevel: number,
  second: ImposedFault['fault'],
  secondLevel: number,
): ImposedFault[] {
  return [
    { fault: first, level: firstLevel },
    { fault: second, level: secondLevel },
  ];
}
