import { ScrollBox } from '@/components/results/scroll-box';
import { Titled } from '@/components/results/titled';
import type { PlainDocument, PlainTable } from '@/lib/sheet/plain-document';

/** A document's facts and sections on the screen, in the words of its paper. */
export function PlainSections(props: { readonly content: PlainDocument }) {
  const { facts, sections, footer } = props.content;
  return (
    <>
      <dl className="flex flex-wrap gap-x-6">
        {facts.map(({ label, text }) => (
          <div key={label} className="flex flex-wrap gap-x-2">
            <dt className="font-semibold">{label}:</dt>
            <dd>{text}</dd>
          </div>
        ))}
      </dl>
      {sections.map(({ id, title, sentences, tables }) => (
        <Titled key={id} title={title} level={2} className="panel mt-6 min-w-0">
          {(sentences ?? []).map((sentence) => (
            <p key={sentence}>{sentence}</p>
          ))}
          {(tables ?? []).map((table) => (
            <PlainTableView key={table.caption} table={table} />
          ))}
        </Titled>
      ))}
      <p className="mt-4 text-soft">{footer}</p>
    </>
  );
}

function PlainTableView({ table }: { readonly table: PlainTable }) {
  const { caption, columns, rows } = table;
  return (
    <ScrollBox title={caption} className="mt-3">
      <table className="w-full min-w-160">
        <caption className="sr-only">{caption}</caption>
        <thead>
          <tr className="border-b-2 border-ink">
            {columns.map(({ label, align }) => (
              <th
                key={label}
                scope="col"
                className={`p-2 align-bottom ${align === 'right' ? 'text-right' : 'text-left'}`}
              >
                {label}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map(({ cells: [first, ...cells] }) => (
            <tr key={first} className="border-b border-hair">
              <th scope="row" className="p-2 text-left">
                {first}
              </th>
              {cells.map((cell, i) => (
                <td key={columns[i + 1]?.label} className="p-2 text-right">
                  {cell}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </ScrollBox>
  );
}
