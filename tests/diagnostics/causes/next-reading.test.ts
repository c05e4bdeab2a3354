import { describe, expect, it } from 'vitest';
import table from '@/lib/diagnostics/causes/data/next-readings.json';
import type { FeatureId } from '@/lib/diagnostics/causes/feature';
import { hypothesesOf, possibleCauses } from '@/lib/diagnostics/causes/hypotheses';
import type { EvidenceRun } from '@/lib/diagnostics/causes/likelihood';
import { nextReadings } from '@/lib/diagnostics/causes/next-reading';
import { posteriorOf, runLikelihood } from '@/lib/diagnostics/causes/posterior';
import wording from '@/lib/diagnostics/wording/en.json';
import type { Unit } from '@/lib/visit/unit';
import '../support/matchers';
import { visitOf } from '../support/visit-of';

function asked(
  residuals: Partial<Record<FeatureId, number>>,
  unit: Partial<Unit> = { metering: 'fixedOrifice' },
) {
  const visit = visitOf([], unit);
  const { metering } = visit.unit;
  const run: EvidenceRun = {
    runId: 'r',
    mode: 'cooling',
    features: Object.entries(residuals).map(([id, residual]) => ({
      id: id as FeatureId,
      readingId: id,
      residual,
      sd: 3.5,
    })),
    ...(metering === undefined ? {} : { metering }),
  };
  const hypotheses = hypothesesOf(visit);
  const posterior = posteriorOf(hypotheses, [runLikelihood(hypotheses, run)]);
  const next = nextReadings({
    posterior,
    runs: [run],
    mode: 'cooling',
    metering,
    isHeatPump: visit.unit.kind === 'heatPump',
    possible: possibleCauses(visit),
    hasProperties: visit.unit.refrigerant !== undefined,
  });
  return { next, chances: posterior.chances };
}

function next(...args: Parameters<typeof asked>) {
  return asked(...args).next;
}

describe('the next reading', () => {
  // Trade articles on restrictions, read: subcooling tells low charge from a restriction, the drop over the drier
  // where the restriction is.
  it('outside: a starved coil asks for subcooling: low means low charge, high a restriction', () => {
    const asked = next({ evaporating: -12, superheat: 26, airDifference: -6, airflow: 0, drierDrop: 0 });
    const subcooling = asked.find(({ saying }) => saying.code === 'next.subcooling');
    expect(subcooling?.readings).toEqual(['dischargePsig', 'liquidLineF']);
    expect(asked[0]?.saying.code).toBe('next.subcooling');
    expect(subcooling?.outcomes.find(({ outcome }) => outcome === 'low')?.cause).toBe('lowCharge');
    expect(subcooling?.outcomes.find(({ outcome }) => outcome === 'high')?.cause).toBe('meteringRestriction');
  });

  it('outside: with subcooling read as well, the drier drop tells where the restriction is', () => {
    const asked = next({
      evaporating: -12,
      superheat: 26,
      airDifference: -6,
      airflow: 0,
      subcooling: 5,
      condensing: -2,
    });
    expect(asked[0]?.saying.code).toBe('next.drierDrop');
    expect(asked[0]?.outcomes.find(({ outcome }) => outcome === 'high')?.cause).toBe('liquidLineRestriction');
    expect(asked[0]?.outcomes.find(({ outcome }) => outcome === 'normal')?.cause).toBe('meteringRestriction');
  });

  it('identity: what was read is not asked again; chances of outcomes add up to 1; best first', () => {
    const asked = next({ evaporating: -12, superheat: 26, subcooling: 5, airDifference: -6 });
    expect(asked.map(({ saying }) => saying.code)).not.toContain('next.subcooling');
    const totals = asked.map(({ outcomes }) => outcomes.reduce((sum, { chance }) => sum + chance, 0));
    expect(totals.length).toBeGreaterThan(1);
    expect(totals.filter((total) => Math.abs(total - 1) > 1e-9)).toEqual([]);
    const gains = asked.map(({ gainFrac }) => gainFrac);
    expect(gains).toEqual([...gains].sort((a, b) => b - a));
    expect(gains.filter((gain) => gain < 0.05 || gain > 1)).toEqual([]);
  });

  it('identity: beside the cause that leads, an outcome names the fault it moves most', () => {
    const { next: found, chances } = asked({ evaporating: -12, superheat: 26, subcooling: -8, airflow: -60 });
    const outcomes = found.flatMap((one) =>
      one.outcomes.map((outcome) => ({ ...outcome, of: one.saying.code })),
    );
    const told = outcomes.map(({ cause, chance, byCause = [], moved, of, outcome }) => {
      // Bayes: chance after = chance before x chance of the outcome under the cause / chance of the outcome
      const moves = byCause
        .filter((row) => row.cause !== 'none')
        .map((row) => ({ cause: row.cause, by: (chances.get(row.cause) ?? 0) * (row.chance / chance - 1) }))
        .sort((a, b) => Math.abs(b.by) - Math.abs(a.by));
      const [most] = moves;
      const named = most !== undefined && most.cause !== cause && Math.abs(most.by) >= 0.1;
      return {
        at: `${of} ${outcome}`,
        expected: named ? most.cause : undefined,
        named: moved?.cause,
        apart: named ? (moved?.to ?? 9) - (moved?.from ?? 0) - most.by : 0,
      };
    });
    expect(told.filter(({ expected, named }) => expected !== named)).toEqual([]);
    expect(told.filter(({ apart }) => Math.abs(apart) > 0.005)).toEqual([]);
    expect(told.filter(({ named }) => named !== undefined).length).toBeGreaterThan(1);
  });

  it('identity: a high head asks for the standing-pressure test; no reversing valve, no test of it', () => {
    const codes = next({ condensing: 15, subcooling: 8, superheat: 0 }).map(({ saying }) => saying.code);
    expect(codes).toContain('next.standingPressure');
    const cooler = { kind: 'airConditioner', metering: 'txv' } as const;
    const leaking = { evaporating: 9, condensing: -8, superheat: 2 };
    expect(next(leaking, cooler).map(({ saying }) => saying.code)).not.toContain('next.reversingValveRise');
    expect(next(leaking).map(({ saying }) => saying.code)).toContain('next.reversingValveRise');
  });

  it('wiring: every reading and test has its words; tests have source and status', () => {
    const words: Record<string, string> = wording;
    const ids = [...Object.keys(table.readings), ...Object.keys(table.tests)];
    expect(ids).toHaveLength(17);
    expect(ids.filter((id) => words[`next.${id}`] === undefined)).toEqual([]);
    expect(Object.values(table.tests).filter((test) => !test.source || !test.status)).toEqual([]);
  });
});
