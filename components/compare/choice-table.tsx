'use client';

import type { CompareCell, CompareRow, CompareTable } from '@/components/appraisal/compare-view';
import { ScrollBox } from '@/components/results/scroll-box';
import type { ChoiceColumn } from '@/lib/sheet/sheet';
import { useJustChanged } from './use-just-changed';

/** Mark of a kind of choice: a shape besides the colour, the same in tables, bars and lines. */
export function KindMark(props: { readonly kind: ChoiceColumn['kind'] }) {
  const shape = { leave: '○', repair: '◆', repairThenReplace: '◈', replace: '■' }[props.kind];
  const colour = {
    leave: 'text-leave',
    repair: 'text-repair',
    repairThenReplace: 'text-repair',
    replace: 'text-replace',
  }[props.kind];
  return (
    <span aria-hidden="true" className={colour}>
      {shape}
    </span>
  );
}

/** Choices side by side, the same rows for all; on narrow screens the cards stand in. */
export function ChoiceTable(props: { readonly table: CompareTable; readonly caption: string }) {
  const { columns, rows } = props.table;
  return (
    <ScrollBox title={props.caption} className="mt-2 hidden md:block">
      <table className="w-full table-fixed" style={{ minWidth: `${9 + 8 * columns.length}rem` }}>
        <thead>
          <tr className="border-b-2 border-ink">
            <td className="w-36" />
            {columns.map((column) => (
              <th key={column.id} scope="col" className={`p-2 text-left align-bottom ${marked(column)}`}>
                {column.mark === undefined ? null : (
                  <span className="mb-1 block bg-plum px-2 py-1 text-on-plum">{column.mark}</span>
                )}
                <span className="block font-normal text-soft">
                  <KindMark kind={column.kind} /> {column.kindWords}
                </span>
                <span className="block">{column.name}</span>
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={row.id} className={`border-b border-hair ${row.id === 'total' ? 'bg-plum-wash' : ''}`}>
              <th scope="row" className="p-2 text-left align-top font-semibold">
                {row.label}
              </th>
              {row.cells.map((cell, i) => (
                <td
                  key={columns[i]?.id}
                  className={`p-2 align-top ${columns[i] === undefined ? '' : marked(columns[i])}`}
                >
                  <Cell cell={cell} row={row} />
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </ScrollBox>
  );
}

/** The same choices and rows, one below the other. */
export function ChoiceCards(props: { readonly table: CompareTable }) {
  const { columns, rows } = props.table;
  return (
    <ul className="mt-2 grid gap-6 md:hidden">
      {columns.map((column, i) => (
        <li
          key={column.id}
          className={`border-2 p-3 ${column.mark === undefined ? 'border-hair' : 'border-plum'}`}
        >
          {column.mark === undefined ? null : (
            <p className="mb-2 bg-plum px-2 py-1 font-semibold text-on-plum">{column.mark}</p>
          )}
          <p className="text-soft">
            <KindMark kind={column.kind} /> {column.kindWords}
          </p>
          <h3 className="text-xl">{column.name}</h3>
          <dl className="rows mt-2">
            {rows.map((row) => {
              const cell = row.cells[i];
              return (
                <div key={row.id} className="grid grid-cols-2 gap-3 py-2">
                  <dt>{row.label}</dt>
                  <dd>{cell === undefined ? null : <Cell cell={cell} row={row} />}</dd>
                </div>
              );
            })}
          </dl>
        </li>
      ))}
    </ul>
  );
}

function marked(column: ChoiceColumn): string {
  return column.mark === undefined ? '' : 'border-x-2 border-plum';
}

function faceOf(row: CompareRow): string {
  if (row.quoted) return 'font-mono';
  return row.id === 'total'
    ? 'text-lg font-bold'
    : row.id === 'notFixed' || row.id === 'saving'
      ? ''
      : 'font-semibold';
}

/** Quoted money is set upright and plain, estimates in the heavier face; a chance also as equal signs. */
function Cell(props: { readonly cell: CompareCell; readonly row: CompareRow }) {
  const { main, details, signs } = props.cell;
  const isNew = useJustChanged(`${main} ${details.join(' ')}`);
  return (
    <div className={isNew ? 'just-changed' : ''}>
      <span className={`block ${faceOf(props.row)}`}>{main}</span>
      {signs === undefined ? null : (
        <span aria-hidden="true" className="block tracking-widest">
          {'●'.repeat(signs.count)}
          {'○'.repeat(signs.of - signs.count)}
        </span>
      )}
      {details.map((detail) => (
        <span key={detail} className="block text-soft">
          {detail}
        </span>
      ))}
    </div>
  );
}
