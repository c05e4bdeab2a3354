import { t } from '@/components/words/words';
import type { Assumption } from '@/lib/visit/assumption';
import type { Draft } from './draft-tree';

/** Version of the stored shape; `tests/screens/blank-visit.test.ts` holds it to the schema's, which no page loads. */
const SHAPE = 1;

/** Calendar date of an instant where this program runs ("2026-11-25"). */
export function localDate(at: Date): string {
  const two = (n: number) => String(n).padStart(2, '0');
  return `${at.getFullYear()}-${two(at.getMonth() + 1)}-${two(at.getDate())}`;
}

/** Name of a new visit; it can be made without the office, so it must not meet another. */
export function newVisitId(at: Date): string {
  const bytes = crypto.getRandomValues(new Uint8Array(6));
  return `visit-${localDate(at)}-${[...bytes].map((b) => b.toString(16).padStart(2, '0')).join('')}`;
}

/**
 * An empty visit of a date.
 *
 * @param assumptions what the shop assumes instead of Keepworth's own defaults
 * Check: tests/screens/blank-visit.test.ts
 */
export function blankVisit(id: string, visitDate: string, assumptions: readonly Assumption[] = []): Draft {
  return {
    schemaVersion: SHAPE,
    id,
    visitDate,
    site: {},
    unit: {},
    runs: [],
    observations: [],
    assumptions: assumptions.map(({ setBy, ...values }) => ({
      ...values,
      ...(setBy === undefined ? {} : { setBy }),
    })),
    choices: [{ kind: 'leave', id: 'leave', name: t('option.choiceKind.leave'), priceLines: [] }],
  };
}
