import { describe, expect, it } from 'vitest';
import { atOriginalPlace, leaveGap, withoutGaps } from '@/lib/visit/gaps';
import { readDraft } from '@/lib/visit/read-visit';
import { bareVisit } from './visit-fixture';

describe('identity: gaps', () => {
  it('close up, and what follows keeps its place', () => {
    const tree = leaveGap(leaveGap({ runs: ['a', 'b', 'c', 'd'] }, ['runs', '0']), ['runs', '2']);
    expect(withoutGaps(tree)).toEqual({ runs: ['b', 'd'] });
    const issue = { code: 'conflict' as const, path: 'runs.1', label: 'Run 2', fix: 'x' };
    expect(atOriginalPlace(issue, tree)).toMatchObject({ path: 'runs.3', label: 'Run 4' });
  });

  it('change nothing where nothing stands', () => {
    const tree = { site: { town: 'x' } };
    expect(leaveGap(tree, ['site', 'street'])).toBe(tree);
    expect(leaveGap(tree, [''])).toBe(tree);
    expect(withoutGaps(leaveGap(tree, ['site', 'town']))).toEqual({ site: {} });
  });
});

describe('wiring: several slips in one list', () => {
  const repair = (id: string, unitPriceUsd: unknown) => ({
    kind: 'repair',
    id,
    name: id,
    actions: ['blowerService'],
    priceLines: [{ kind: 'part', label: 'x', amount: 1, unitPriceUsd }],
  });

  it('leave out only the broken choices', () => {
    const choices = [repair('a', -1), repair('b', 10), repair('c', 'ten'), repair('d', 20)];
    const { visit, issues } = readDraft({ ...bareVisit(), choices });
    expect(visit?.choices.map((c) => c.id)).toEqual(['b', 'd']);
    expect(issues.map((i) => i.path)).toEqual([
      'choices.0.priceLines.0.unitPriceUsd',
      'choices.2.priceLines.0.unitPriceUsd',
    ]);
  });

  it('a slip found in a later round is told at its own place', () => {
    const choices = [repair('a', -1), repair('b', 10), repair('b', 20)];
    const { visit, issues } = readDraft({ ...bareVisit(), choices });
    expect(visit?.choices.map((c) => c.id)).toEqual(['b']);
    expect(issues.map((i) => [i.path, i.label])).toEqual([
      ['choices.0.priceLines.0.unitPriceUsd', 'Price each'],
      ['choices.2', 'Choice 3'],
    ]);
  });
});
