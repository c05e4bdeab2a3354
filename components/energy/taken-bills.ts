import type { DraftStore } from '@/components/draft/draft-store';
import { t } from '@/components/words/words';
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
  if (!none) store.change(t('bills.taken'), (draft) => withBills(draft, bills));
  if (out.fresh === 0 && out.there === 0) return { done, notes };
  return {
    done: leftOutWords(bills.length, out),
    notes,
    offer: {
      words: t('bills.replace'),
      take: () => {
        store.change(t('bills.replaced'), (draft) => withOnlyBills(draft, bills));
        return { done, notes };
      },
    },
  };
}

function leftOutWords(n: number, { fresh, there }: { fresh: number; there: number }): string {
  if (fresh === n) return t('bills.noneCounts', { n });
  if (fresh === 0) return t('bills.pushOut', { n, there });
  return there === 0 ? t('bills.someCount', { n, out: fresh }) : t('bills.clash', { n, out: fresh, there });
}
