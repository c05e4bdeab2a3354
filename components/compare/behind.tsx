import { ColumnHeads } from '@/components/results/column-heads';
import { ScrollBox } from '@/components/results/scroll-box';
import { Titled } from '@/components/results/titled';
import { Fold } from '@/components/visit/fold';
import { t } from '@/components/words/words';
import type { Sheet } from '@/lib/sheet/sheet';

/** Where the numbers come from: counts, assumptions with their sources, doubts and what would settle them. */
export function Behind(props: { readonly pageTwo: Sheet['pageTwo'] }) {
  const { counts, assumptions, doubts, surer, rebates, cautions, excluded } = props.pageTwo;
  const lists = [doubts, surer, rebates, cautions, excluded].filter((list) => list.sentences.length > 0);
  return (
    <Titled title={t('compare.assumed')} level={2} className="panel min-w-0">
      <p className="mt-1">{counts.items.map((item) => item.words).join(', ')}</p>
      <Fold title={assumptions.title} aside={String(assumptions.rows.length)}>
        <ScrollBox title={assumptions.title}>
          <table className="w-full min-w-2xl">
            <ColumnHeads columns={assumptions.columns} className="p-2" />
            <tbody>
              {assumptions.rows.map((row) => (
                <tr key={row.name} className="border-b border-hair align-top">
                  <th scope="row" className="p-2 text-left">
                    {row.name}
                  </th>
                  <td className="p-2">{row.value}</td>
                  <td className="p-2">{row.range}</td>
                  <td className="p-2 text-soft">{row.source}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </ScrollBox>
      </Fold>
      {lists.map((list) => (
        <Fold key={list.title} title={list.title} aside={String(list.sentences.length)}>
          <ul className="list-disc pl-6">
            {list.sentences.map((sentence) => (
              <li key={sentence}>{sentence}</li>
            ))}
          </ul>
        </Fold>
      ))}
    </Titled>
  );
}
