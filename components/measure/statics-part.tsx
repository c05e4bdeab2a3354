'use client';

import { NumberField } from '@/components/form/number-field';
import { PickField } from '@/components/form/pick-field';
import { t } from '@/components/words/words';
import { Verdict } from './measure-result';
import { useMeasure } from './use-measure';
import type { StaticRow, StaticsView } from './view';

/** Who uses how much of the static pressure the blower can give. */
export function StaticsPart(props: { readonly path: string; readonly runId: string }) {
  const { path } = props;
  const view = useMeasure(props.runId);
  return (
    <>
      <p className="text-soft">{t('measure.statics.why')}</p>
      <div className="rows">
        <NumberField path={`${path}.returnStaticInWc`} hint={t('measure.statics.returnHint')} />
        <NumberField path={`${path}.filterDropInWc`} />
        <NumberField path={`${path}.coilDropInWc`} />
        <NumberField path={`${path}.supplyStaticInWc`} />
        <PickField path="unit.coilCountedIn" words="coilCountedIn" unknown />
        <NumberField path="unit.ratedStaticInWc" hint={t('measure.statics.ratedHint')} />
      </div>
      <div role="status">
        {view?.statics === undefined ? (
          <p className="text-soft">
            {t(view === undefined ? 'measure.needsUnit' : 'measure.statics.missing')}
          </p>
        ) : (
          <Budget view={view.statics} />
        )}
      </div>
    </>
  );
}

function Budget(props: { readonly view: StaticsView }) {
  const { view } = props;
  const rows = view.total === undefined ? view.rows : [...view.rows, view.total];
  return (
    <div className="mt-2 border-t-2 border-ink pt-2">
      <table className="w-full">
        <caption className="pb-1 text-left font-semibold">{t('measure.statics.caption')}</caption>
        <thead className="sr-only">
          <tr>
            <th scope="col">{t('measure.statics.columnPart')}</th>
            <th scope="col">{t('measure.statics.columnDrop')}</th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <Row
              key={row.id}
              row={row}
              {...(row === view.total ? { limitFrac: view.total.limitFrac } : {})}
            />
          ))}
        </tbody>
      </table>
      <p className="mt-1 text-soft">{view.limit}</p>
      {view.says.map((sentence, i) => (
        <Verdict key={sentence} words={sentence} off={i === 0 && view.off} />
      ))}
      {view.sources.length === 0 ? null : (
        <details>
          <summary className="flex min-h-12 items-center underline">{t('measure.statics.sources')}</summary>
          <ul className="list-disc pl-6 text-soft">
            {view.sources.map((source) => (
              <li key={source}>{source}</li>
            ))}
          </ul>
        </details>
      )}
    </div>
  );
}

/** One user of the pressure: its words, and below them a bar on the common scale. */
function Row(props: { readonly row: StaticRow; readonly limitFrac?: number }) {
  const { row } = props;
  const total = props.limitFrac !== undefined;
  return (
    <tr className={`border-t border-hair align-top ${total ? 'font-semibold' : ''}`}>
      <th scope="row" className="w-full py-2 text-left font-medium">
        {row.name}
        {row.usual === undefined ? null : <span className="block font-normal text-soft">{row.usual}</span>}
        <span aria-hidden="true" className="relative mt-1 block h-4 w-full">
          <span
            className={`print-ink block h-4 border-2 border-ink ${row.off && !total ? 'bg-plum' : 'bg-plum-wash'}`}
            style={{ width: `${Math.max(0.5, row.lengthFrac * 100)}%` }}
          />
          {props.limitFrac === undefined ? null : (
            <span
              className="absolute -top-1 h-6 border-l-4 border-dashed border-ink"
              style={{ left: `calc(${props.limitFrac * 100}% - 2px)` }}
            />
          )}
        </span>
      </th>
      <td className="py-2 pl-3 text-right whitespace-nowrap">
        {row.value}
        {row.share === undefined ? null : <span className="block text-soft">{row.share}</span>}
        {row.off ? <span className="block font-semibold text-doubt">{t('measure.statics.over')}</span> : null}
      </td>
    </tr>
  );
}
