import { describe, expect, it } from 'vitest';
import { deriveRun } from '@/lib/diagnostics/derived/derive-run';
import { explainInputs } from '@/lib/diagnostics/explain/explain-inputs';
import { contextOfRun } from '../support/visit-of';

function inputsOf(altitudeFt: number | undefined) {
  const site = altitudeFt === undefined ? {} : { altitudeFt };
  const context = contextOfRun({ mode: 'cooling', suctionPsig: 118, suctionLineF: 52 }, {}, { site });
  const superheat = deriveRun(context).find(({ id }) => id === 'suctionSuperheatFd');
  return explainInputs(superheat?.inputs ?? []);
}

describe('inputs as they are told', () => {
  // Standard atmosphere: 12.228 psia at 5,000 ft, 14.696 psia at sea level (ASHRAE Fundamentals ch. 1, memory).
  it('outside: behind the altitude stands the barometric pressure it gives', () => {
    const barometric = inputsOf(5_000).find(({ name }) => name === 'barometricPsia');
    expect(barometric?.value).toBeCloseTo(12.228, 2);
    expect(barometric).toMatchObject({ unit: 'psia', basis: 'measured' });
  });

  it('identity: an altitude nobody gave makes the barometric pressure an assumption', () => {
    const barometric = inputsOf(undefined).find(({ name }) => name === 'barometricPsia');
    expect(barometric?.value).toBeCloseTo(14.696, 2);
    expect(barometric?.basis).toBe('assumed');
  });

  it('identity: each input once, nothing else added', () => {
    expect(inputsOf(0).map(({ name }) => name)).toEqual([
      'suctionLineF',
      'suctionPsig',
      'altitudeFt',
      'barometricPsia',
    ]);
    const dry = { name: 'returnAirF', value: 76, unit: 'F', basis: 'measured' } as const;
    expect(explainInputs([dry, dry])).toEqual([dry]);
  });
});
