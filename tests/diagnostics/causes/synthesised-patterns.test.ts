import { describe, expect, it } from 'vitest';
import type { CauseId } from '@/lib/visit/cause';
import '../support/matchers';
import { confusionTable, shareWithin } from './confusion';
import { DRAWS, judgedPatterns } from './drawn-patterns';

const judged = judgedPatterns(1);

/** Two names for one picture: no reading of a visit separates them, only the test their entry names. */
const TWINS: readonly (readonly CauseId[])[] = [
  ['nonCondensables', 'outdoorCoilFouled'],
  ['compressorValvesLeaking', 'reversingValveLeaking'],
];

describe('readings drawn from the published patterns', () => {
  it('outside: the true cause is first in at least 90 % and among the first two in at least 95 %', () => {
    const message = confusionTable(judged);
    expect(judged).toHaveLength(50 * DRAWS);
    expect(shareWithin(judged, 1), message).toBeGreaterThanOrEqual(0.9);
    expect(shareWithin(judged, 2), message).toBeGreaterThanOrEqual(0.95);
  });

  it('outside: counting twins that only a test of their own separates as one, at least 94 % first', () => {
    const merged = judged.map(({ truth, order }) => ({ truth: truth.map(twin), order: order.map(twin) }));
    expect(shareWithin(merged, 1), confusionTable(merged)).toBeGreaterThanOrEqual(0.94);
  });
});

function twin(cause: CauseId): CauseId {
  return TWINS.find((pair) => pair.includes(cause))?.[0] ?? cause;
}
