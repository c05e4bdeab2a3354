import type { LaterView } from '@/components/appraisal/decide-view';
import { Titled } from '@/components/results/titled';
import { td } from '@/components/words/decide-words';

/** The total for every year in which it could be replaced, the lowest marked in words. */
export function LaterPanel(props: { readonly view: LaterView }) {
  const { sentences, rows } = props.view;
  return (
    <Titled title={td('later.title')} level={2} className="panel min-w-0">
      {sentences.map((sentence, i) => (
        <p key={sentence} className={i === 0 ? 'mt-1 text-lg font-semibold' : 'mt-1'}>
          {sentence}
        </p>
      ))}
      <p className="text-soft">{td('later.note')}</p>
      <table className="mt-2 w-full">
        <caption className="sr-only">{td('later.title')}</caption>
        <thead>
          <tr className="border-b-2 border-ink">
            <th scope="col" className="w-40 p-1 text-left">
              {td('later.when')}
            </th>
            <th scope="col" className="p-1 text-left">
              {td('later.total')}
            </th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={row.when} className="border-b border-hair">
              <th scope="row" className="p-1 text-left align-top font-normal">
                {row.when}
              </th>
              <td className="p-1">
                <span className="flex flex-wrap items-baseline gap-x-3">
                  <span className="font-semibold">{row.total}</span>
                  {row.mark === undefined ? null : <span>{row.mark}</span>}
                </span>
                <span
                  aria-hidden="true"
                  className="print-ink block h-1.5 bg-replace"
                  style={{ width: `${100 * row.frac}%` }}
                />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </Titled>
  );
}
