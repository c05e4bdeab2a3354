import { type Draft, type DraftValue, differences, valueAt, withValue } from '@/components/draft/draft-tree';

/** Parts of a draft that one tries at the table. */
const TRIED = ['site.stayYears', 'tariff', 'fuelPrices', 'convention', 'assumptions', 'choices'];

/** What was proposed, by path. */
export type Proposal = { readonly [path: string]: DraftValue };

/** Check: tests/screens/proposal.test.ts */
export function proposalOf(draft: Draft): Proposal {
  return Object.fromEntries(
    TRIED.flatMap((path) => {
      const value = valueAt(draft, path);
      return value === undefined ? [] : [[path, value]];
    }),
  );
}

/** Fields in which the draft differs from what was proposed. Check: tests/screens/proposal.test.ts */
export function changedSince(proposal: Proposal, draft: Draft): number {
  return differences({ ...proposalOf(draft) }, { ...proposal }).length;
}

/** The draft with everything tried taken back. Check: tests/screens/proposal.test.ts */
export function asProposed(draft: Draft, proposal: Proposal): Draft {
  return TRIED.reduce((next, path) => withValue(next, path, proposal[path]), draft);
}
