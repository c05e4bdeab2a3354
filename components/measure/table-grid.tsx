'use client';

import { type KeyboardEvent, useRef } from 'react';
import { fieldId } from '@/components/form/field-id';
import { useIssueAt, useIssues } from '@/components/form/use-field-issues';
import { ScrollBox } from '@/components/results/scroll-box';
import { t, tCode } from '@/components/words/words';
import type { FormTable, Port } from './table-draft';

/** Which field of the table has the cursor, or had it last. */
export type Spot = { readonly row: number | undefined; readonly column: number | undefined };

/** Outdoor temperatures down, indoor ones across, one pressure in the cells; a wide table scrolls by itself. */
export function TableGrid(props: {
  readonly path: string;
  readonly table: FormTable;
  readonly port: Port;
  readonly indoor: string;
  readonly put: (keys: readonly (string | number)[], typed: string) => void;
  readonly at: (spot: Spot) => void;
}) {
  const { path, table, port, put } = props;
  const box = useRef<HTMLTableElement>(null);
  const goOn = (event: KeyboardEvent<HTMLInputElement>) => {
    if (event.key !== 'Enter') return;
    event.preventDefault();
    const boxes = [...(box.current?.querySelectorAll('input') ?? [])];
    boxes[boxes.indexOf(event.currentTarget) + 1]?.focus();
  };
  const outdoorWords = (i: number) =>
    table.outdoorF[i]?.trim()
      ? t('measure.table.atF', { at: table.outdoorF[i] })
      : t('measure.table.row', { n: i + 1 });
  const indoorWords = (j: number) =>
    table.indoorF[j]?.trim()
      ? t('measure.table.atF', { at: table.indoorF[j] })
      : t('measure.table.column', { n: j + 1 });
  const cell = (keys: readonly (string | number)[], text: string, label: string, spot: Spot) => (
    <Cell
      path={`${path}.${keys.join('.')}`}
      text={text}
      label={label}
      put={(typed) => put(keys, typed)}
      onFocus={() => props.at(spot)}
      onKeyDown={goOn}
    />
  );
  return (
    <ScrollBox title={tCode(`measure.table.port.${port}`)} className="mt-2 pb-2">
      <table ref={box}>
        <thead>
          <tr>
            <td className="sticky left-0 bg-paper pr-1 text-sm">
              {t('measure.table.outdoor')}
              <span className="block">{props.indoor}</span>
            </td>
            {table.indoorF.map((text, j) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: a column of the table is its place
              <th key={j} scope="col" className="p-0.5">
                {cell(['indoorF', j], text, t('measure.table.indoorLabel', { n: j + 1 }), {
                  row: undefined,
                  column: j,
                })}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {table.outdoorF.map((text, i) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: a row of the table is its place
            <tr key={i}>
              <th scope="row" className="sticky left-0 bg-paper py-0.5 pr-1">
                {cell(['outdoorF', i], text, t('measure.table.outdoorLabel', { n: i + 1 }), {
                  row: i,
                  column: undefined,
                })}
              </th>
              {table.indoorF.map((_, j) => (
                // biome-ignore lint/suspicious/noArrayIndexKey: a cell of the table is its place
                <td key={j} className="p-0.5">
                  {cell(
                    [port, i, j],
                    table[port][i]?.[j] ?? '',
                    t('measure.table.cellLabel', {
                      what: tCode(`measure.table.port.${port}`),
                      outdoor: outdoorWords(i),
                      indoor: indoorWords(j),
                    }),
                    { row: i, column: j },
                  )}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </ScrollBox>
  );
}

function Cell(props: {
  readonly path: string;
  readonly text: string;
  readonly label: string;
  readonly put: (typed: string) => void;
  readonly onFocus: () => void;
  readonly onKeyDown: (event: KeyboardEvent<HTMLInputElement>) => void;
}) {
  const { path } = props;
  const { typingIn } = useIssues();
  const issue = useIssueAt(path);
  const header = path.includes('.outdoorF.') || path.includes('.indoorF.');
  return (
    <input
      id={fieldId(path)}
      className={`box w-16 px-1 text-center text-lg ${header ? 'bg-plum-wash font-semibold' : ''}`}
      type="text"
      inputMode="decimal"
      enterKeyHint="next"
      autoComplete="off"
      aria-label={props.label}
      aria-invalid={issue !== undefined}
      value={props.text}
      onChange={(event) => {
        typingIn(path);
        props.put(event.target.value);
      }}
      onFocus={props.onFocus}
      onBlur={() => setTimeout(() => typingIn(undefined), 250)}
      onKeyDown={props.onKeyDown}
    />
  );
}
