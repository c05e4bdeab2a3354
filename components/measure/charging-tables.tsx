'use client';

import { useState } from 'react';
import { useDraftState, useDraftStore, useDraftValue, useFieldBook } from '@/components/draft/draft-context';
import { textAt } from '@/components/draft/draft-tree';
import { issueSentence } from '@/components/form/issue-words';
import { useIssues } from '@/components/form/use-field-issues';
import { Fold } from '@/components/visit/fold';
import { t, tCode } from '@/components/words/words';
import { tableEntry, tableGaps } from '@/lib/visit/charging-table-entry';
import {
  blankTable,
  type FormTable,
  formTable,
  isFull,
  MOST_LINES,
  type Port,
  TABLES,
  tablePlace,
  withCell,
  withColumn,
  withoutColumn,
  withoutRow,
  withoutTable,
  withRow,
  withTable,
} from './table-draft';
import { type Spot, TableGrid } from './table-grid';

const FIRST_ROWS = 3;
const FIRST_COLUMNS = 2;

/** The unit's own charging table, for each mode it runs in. */
export function ChargingTables() {
  const store = useDraftStore();
  const heats = useDraftState((s) => textAt(s.draft, 'unit.kind') !== 'airConditioner');
  const cooling = useDraftState((s) => tablePlace(s.draft, 'cooling'));
  const heating = useDraftState((s) => tablePlace(s.draft, 'heating'));
  const places = [
    { mode: 'cooling', at: cooling },
    ...(heats || heating >= 0 ? [{ mode: 'heating', at: heating }] : []),
  ];
  const there = places.filter(({ at }) => at >= 0).length;
  return (
    <Fold
      title={t('measure.table.title')}
      aside={there === 0 ? t('house.optional') : t('measure.table.there', { n: there })}
    >
      <p className="text-soft">{t('measure.table.why')}</p>
      {places.map(({ mode, at }) =>
        at >= 0 ? (
          <TableEditor key={mode} mode={mode} at={at} />
        ) : (
          <button
            key={mode}
            type="button"
            className="press mt-3 w-full sm:w-auto"
            onClick={() =>
              store.change(tCode(`measure.table.added.${mode}`), (draft) =>
                withTable(draft, -1, mode, blankTable(FIRST_ROWS, FIRST_COLUMNS)),
              )
            }
          >
            {tCode(`measure.table.add.${mode}`)}
          </button>
        ),
      )}
    </Fold>
  );
}

function TableEditor(props: { readonly mode: string; readonly at: number }) {
  const { mode, at } = props;
  const path = `${TABLES}.${at}`;
  const store = useDraftStore();
  const stored = useDraftValue(path);
  const [port, setPort] = useState<Port>('suctionPsig');
  const [spot, setSpot] = useState<Spot>({ row: undefined, column: undefined });
  const table = formTable(stored);
  const name = tCode(`measure.table.name.${mode}`);

  const change = (what: string, next: (table: FormTable) => FormTable) =>
    store.change(what, (draft) => withTable(draft, at, mode, next(table)));
  const put = (keys: readonly (string | number)[], typed: string) => {
    if (isFull(stored)) store.set(`${path}.${keys.join('.')}`, typed, name);
    else change(name, (now) => withCell(now, keys, typed));
  };
  const { row, column } = spot;
  const outdoor = row === undefined ? undefined : table.outdoorF[row];
  return (
    <fieldset className="mt-4 min-w-0">
      <legend className="mb-2 w-full border-b-2 border-ink pb-1 font-serif text-lg font-bold">{name}</legend>
      <div className="flex flex-wrap gap-2">
        {(['suctionPsig', 'dischargePsig'] as const).map((choice) => (
          <button
            key={choice}
            type="button"
            aria-pressed={port === choice}
            className={`press flex-1 px-2 ${port === choice ? 'bg-plum text-on-plum hover:bg-plum' : 'font-normal'}`}
            onClick={() => setPort(choice)}
          >
            {tCode(`measure.table.port.${choice}`)}
          </button>
        ))}
      </div>
      <TableGrid
        path={path}
        table={table}
        port={port}
        indoor={tCode(`measure.table.indoor.${mode}`)}
        put={put}
        at={setSpot}
      />
      <div className="flex flex-wrap gap-2">
        <button
          type="button"
          className="press"
          disabled={table.outdoorF.length >= MOST_LINES}
          onClick={() => change(t('measure.table.rowAdded'), withRow)}
        >
          {t('measure.table.addRow')}
        </button>
        <button
          type="button"
          className="press"
          disabled={table.indoorF.length >= MOST_LINES}
          onClick={() => change(t('measure.table.columnAdded'), withColumn)}
        >
          {t('measure.table.addColumn')}
        </button>
        {row === undefined || outdoor === undefined ? null : (
          <>
            {column === undefined ? (
              <button
                type="button"
                className="press border-edge"
                onClick={() =>
                  put(['outdoorF', row], outdoor.startsWith('-') ? outdoor.slice(1) : `-${outdoor}`)
                }
              >
                {t('measure.table.sign', { n: row + 1 })}
              </button>
            ) : null}
            <button
              type="button"
              className="press press-plain"
              onClick={() => {
                change(t('measure.table.rowRemoved'), (now) => withoutRow(now, row));
                setSpot({ row: undefined, column: undefined });
              }}
            >
              {t('measure.table.removeRow', { n: row + 1 })}
            </button>
          </>
        )}
        {column === undefined || table.indoorF[column] === undefined ? null : (
          <button
            type="button"
            className="press press-plain"
            onClick={() => {
              change(t('measure.table.columnRemoved'), (now) => withoutColumn(now, column));
              setSpot({ row: undefined, column: undefined });
            }}
          >
            {t('measure.table.removeColumn', { n: column + 1 })}
          </button>
        )}
      </div>
      <TableState path={path} table={table} />
      <button
        type="button"
        className="press press-plain px-0"
        onClick={() =>
          store.change(tCode(`measure.table.removed.${mode}`), (draft) => withoutTable(draft, at))
        }
      >
        {tCode(`measure.table.remove.${mode}`)}
      </button>
    </fieldset>
  );
}

/** Whether the table is in use, else what it still lacks, said at once and not only on asking. */
function TableState(props: { readonly path: string; readonly table: FormTable }) {
  const { all } = useIssues();
  const book = useFieldBook();
  const gaps = tableGaps(tableEntry(props.table));
  const own = all.filter(({ path }) => path === props.path || path.startsWith(`${props.path}.`));
  const begun = gaps.rowCount + gaps.columnCount > 0;
  return (
    <div role="status" className="mt-2">
      {own.map((issue) => (
        <p key={`${issue.path} ${issue.code}`} className="note-doubt mt-1">
          {issueSentence(issue, book)}
        </p>
      ))}
      {own.length > 0 ? null : (
        <p className={begun && !gaps.noPressures ? 'font-semibold' : 'text-soft'}>
          {!begun || gaps.noPressures
            ? t('measure.table.empty')
            : t('measure.table.inUse', { rows: gaps.rowCount, columns: gaps.columnCount })}
        </p>
      )}
    </div>
  );
}
