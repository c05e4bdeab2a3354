import { dateWords } from '@/components/format/time-words';
import { t } from '@/components/words/shop-words';

export type HistoryLine = {
  readonly fromDate: string;
  readonly setBy: string;
  readonly why: string;
  readonly words: string;
};

/** What was in force from when, newest first, with who set it and why. */
export function HistoryList(props: { readonly lines: readonly HistoryLine[]; readonly today: string }) {
  const { lines, today } = props;
  const current = lines.findIndex((line) => line.fromDate <= today);
  return (
    <>
      <p className="mt-3 font-semibold">{t('shop.history')}</p>
      <ol className="rows" aria-label={t('shop.history')}>
        {lines.map((line, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a history only grows and two entries may be alike
          <li key={`${line.fromDate} ${i}`} className="py-2">
            <span className="font-semibold">{line.words}</span>{' '}
            {t('shop.since', { date: dateWords(line.fromDate) })}
            {i === current ? ` (${t('shop.inForce')})` : ''}
            {line.fromDate > today ? ` (${t('shop.later')})` : ''}
            <span className="block text-soft">{t('shop.byWhy', { who: line.setBy, why: line.why })}</span>
          </li>
        ))}
      </ol>
    </>
  );
}
