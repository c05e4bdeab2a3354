import { ScrollBox } from '@/components/results/scroll-box';
import { t } from '@/components/words/words';

/** The numbers of a chart as a table, for everyone who would rather read than look. */
export function NumberTable(props: {
  readonly caption: string;
  readonly header: readonly string[];
  readonly rows: readonly (readonly string[])[];
}) {
  return (
    <details className="mt-2">
      <summary className="flex min-h-12 items-center font-semibold">{t('chart.numbers')}</summary>
      <ScrollBox title={props.caption}>
        <table className="w-full">
          <caption className="text-left text-soft">{props.caption}</caption>
          <thead>
            <tr className="border-b-2 border-ink">
              {props.header.map((text, i) => (
                <th
                  key={text}
                  scope="col"
                  className={`p-2 align-bottom ${i === 0 ? 'text-left' : 'text-right'}`}
                >
                  {text}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {props.rows.map((row) => (
              <tr key={row[0]} className="border-b border-hair">
                {row.map((text, i) =>
                  i === 0 ? (
                    <th key={props.header[i]} scope="row" className="p-2 text-left">
                      {text}
                    </th>
                  ) : (
                    <td key={props.header[i]} className="p-2 text-right">
                      {text}
                    </td>
                  ),
                )}
              </tr>
            ))}
          </tbody>
        </table>
      </ScrollBox>
    </details>
  );
}
