import { describe, expect, it } from 'vitest';
import { evidenceOfCause } from '@/lib/diagnostics/causes/evidence-of-cause';
import type { EvidenceRun } from '@/lib/diagnostics/causes/likelihood';
import { visitOf } from '../support/visit-of';

const run: EvidenceRun = {
  runId: 'r',
  mode: 'cooling',
  metering: 'fixedOrifice',
  features: [
    { id: 'superheat', readingId: 'suctionSuperheatFd', residual: 20, sd: 4 },
    { id: 'subcooling', readingId: 'liquidSubcoolingFd', residual: 6, sd: 3 },
    { id: 'airflow', readingId: 'airflowCfmPerTon', residual: 0, sd: 35 },
  ],
};

describe('readings for and against a cause', () => {
  it('outside: high superheat speaks for low charge, high subcooling against it [fault charts]', () => {
    const { speaksFor, speaksAgainst } = evidenceOfCause('lowCharge', 'moderate', [run], visitOf([]));
    expect(speaksFor.map(({ id }) => id)).toEqual(['suctionSuperheatFd']);
    expect(speaksAgainst[0]?.id).toBe('liquidSubcoolingFd');
    expect(speaksFor[0]).toMatchObject({ kind: 'reading', runId: 'r', sigmas: 5 });
  });

  it('identity: normal airflow speaks against low airflow; observations count; next to nothing is left out', () => {
    const visit = visitOf([], {}, { observations: [{ id: 'dirtyFilter' }, { id: 'noisyCompressor' }] });
    const { speaksFor, speaksAgainst } = evidenceOfCause('lowIndoorAirflow', 'moderate', [run], visit);
    expect(speaksFor.map(({ id }) => id)).toContain('dirtyFilter');
    expect(speaksFor.map(({ id }) => id)).not.toContain('noisyCompressor');
    expect(speaksAgainst.map(({ id }) => id)).toContain('airflowCfmPerTon');
  });

  it('identity: strongest first on both sides', () => {
    const { speaksFor, speaksAgainst } = evidenceOfCause(
      'lowIndoorAirflow',
      'severe',
      [run, run],
      visitOf([]),
    );
    const fallingOf = (weights: readonly number[]) => [...weights].sort((a, b) => b - a);
    const pro = speaksFor.map(({ weight }) => weight);
    const contra = speaksAgainst.map(({ weight }) => -weight);
    expect(contra.length).toBeGreaterThan(1);
    expect(pro).toEqual(fallingOf(pro));
    expect(contra).toEqual(fallingOf(contra));
  });
});
