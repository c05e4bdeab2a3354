import { expect, test } from 'vitest';
import { asProposed, changedSince, proposalOf } from '@/components/compare/proposal';
import { type Draft, withValue } from '@/components/draft/draft-tree';

const draft: Draft = {
  id: 'a',
  note: 'kept',
  site: { customer: 'Someone', stayYears: 9 },
  assumptions: [],
  choices: [{ id: 'new', priceLines: [{ kind: 'equipment', unitPriceUsd: 9_000 }] }],
};

test('wiring: what was tried is counted field by field and taken back in one step; the rest of the draft stays', () => {
  const proposal = proposalOf(draft);
  expect(changedSince(proposal, draft)).toBe(0);
  const tried = withValue(
    withValue(withValue(draft, 'site.stayYears', '12'), 'choices.0.priceLines.0.unitPriceUsd', '9500'),
    'note',
    'written meanwhile',
  );
  const withTariff = withValue(tried, 'tariff', { kind: 'flat', energyUsdPerKwh: '0.2' });
  expect(changedSince(proposal, withTariff)).toBe(4);
  expect(asProposed(withTariff, proposal)).toEqual({ ...draft, note: 'written meanwhile' });
});

test('wiring: a number that is typed as it stood is no change', () => {
  expect(changedSince(proposalOf(draft), withValue(draft, 'site.stayYears', '9'))).toBe(0);
});
