import type { CauseId } from '@/lib/visit/cause';

/** One case: what is true and what was found, causes by falling chance. */
export type Judged = { readonly truth: readonly CauseId[]; readonly order: readonly CauseId[] };

/** Share of the cases in which every true cause is among the first `count`. */
export function shareWithin(cases: readonly Judged[], count: number): number {
  const hits = cases.filter(({ truth, order }) =>
    truth.every((cause) => order.slice(0, count).includes(cause)),
  );
  return hits.length / cases.length;
}

/** Confusion table as text: a row for each true cause, what was put first and how often. */
export function confusionTable(cases: readonly Judged[]): string {
  const rows = new Map<string, Map<string, number>>();
  for (const { truth, order } of cases) {
    const row = rows.get(truth.join(' + ')) ?? new Map<string, number>();
    const first = order[0] ?? 'none';
    row.set(first, (row.get(first) ?? 0) + 1);
    rows.set(truth.join(' + '), row);
  }
  return [...rows]
    .map(([truth, row]) => {
      const entries = [...row].sort((a, b) => b[1] - a[1]).map(([cause, count]) => `${cause} ${count}`);
      return `${truth.padEnd(26)} ${entries.join(', ')}`;
    })
    .join('\n');
}
