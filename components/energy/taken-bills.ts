import type { DraftStore } from '@/components/draft/draft-store';
import { td } from '@/components/words/decide-words';
import { billsLeftOut, withBills, withOnlyBills } from './bills-draft';
import type { TableRead } from './paste-table';
import { billsFromTable } from './read-tables';

/**
 * Takes a pasted table of bills into the draft. Bills whose days are in bills already there would be left out of the
 * year: that is said instead of their being taken over, with the offer to replace those there. Where none would count
 * nothing is changed.
 *
 * Check: tests/screens/taken-bills.test.ts
 */
export function takenBills(store: DraftStore, text: string): TableRead {
  const { bills, done, notes } = billsFromTable(text);
  if (bills.length === 0) return { done, notes };
  const out = billsLeftOut(store.get().draft, bills);
  const none = out.fresh === bills.length;
  if (!none) store.change(td('bills.taken'), (draft) => withBills(draft, bills));
  if (out.fresh === 0 && out.there === 0) return { done, notes };
  return {
    done: leftOutWords(bills.length, out),
    notes,
    offer: {
      words: td('bills.replace'),
      take: () => {
        store.change(td('bills.replaced'), (draft) => withOnlyBills(draft, bills));
        return { done, notes };
      },
    },
  };
}

function leftOutWords(n: number, { fresh, there }: { fresh: number; there: number }): string {
  if (fresh === n) return td('bills.noneCounts', { n });
  if (fresh === 0) return td('bills.pushOut', { n, there });
  return there === 0 ? td('bills.someCount', { n, out: fresh }) : td('bills.clash', { n, out: fresh, there });
}
