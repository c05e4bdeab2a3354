'use client';

import dynamic from 'next/dynamic';
import type { YearTableRow, YearView } from '@/components/appraisal/year-view';
import { NumberTable } from '@/components/charts/number-table';
import { UseSwatch } from '@/components/charts/use-looks';
import { WhenNear } from '@/components/compare/when-near';
import { fieldId } from '@/components/form/field-id';
import { PressRow } from '@/components/form/pick-field';
import { useField } from '@/components/form/use-field';
import { ScrollBox } from '@/components/results/scroll-box';
import { Titled } from '@/components/results/titled';
import { t, tCode } from '@/components/words/words';

const YearMonths = dynamic(() => import('@/components/charts/year-months').then((m) => m.YearMonths), {
  ssr: false,
  loading: () => <p>{t('chart.loading')}</p>,
});

/** Where the money of a year goes: by month as a picture, by use as a table, and what stands behind it. */
export function YearOfMoney(props: { readonly view: YearView }) {
  const { view } = props;
  return (
    <Titled title={t('year.title')} level={2} className="panel min-w-0">
      {view.sentences.map((sentence, i) => (
        <p key={sentence} className={i === 0 ? 'mt-1 text-lg font-semibold' : ''}>
          {sentence}
        </p>
      ))}
      <WhenNear>
        <YearMonths view={view} />
      </WhenNear>
      <NumberTable caption={t('year.monthTable')} {...view.monthTable} />
      <UseTable view={view} />
      <ul className="mt-2 list-disc pl-6">
        {view.notes.map((note) => (
          <li key={note}>{note}</li>
        ))}
      </ul>
      <FactorPick used={view.co2Used} />
    </Titled>
  );
}

/** Which grid factor counts; without an answer the marginal one does. */
function FactorPick(props: { readonly used: string }) {
  const { store, label, entry } = useField(FACTOR, undefined);
  return (
    <fieldset className="no-print mt-2 min-w-0">
      <legend className="font-medium">{label}</legend>
      <PressRow
        name={fieldId(FACTOR)}
        options={(entry.options ?? []).map((value) => ({ value, words: tCode(`option.co2Factor.${value}`) }))}
        current={props.used}
        onPick={(value) => store.set(FACTOR, value, label)}
      />
    </fieldset>
  );
}

const FACTOR = 'site.co2Factor';

function UseTable(props: { readonly view: YearView }) {
  const { panels, rows } = props.view;
  return (
    <ScrollBox title={t('year.useTable')} className="mt-4">
      <table className="w-full" style={{ minWidth: `${8 + 7 * panels.length}rem` }}>
        <caption className="text-left font-semibold">{t('year.useTable')}</caption>
        <thead>
          <tr className="border-b-2 border-ink">
            <td />
            {panels.map((panel) => (
              <th key={panel.id} scope="col" className="p-2 text-right align-bottom">
                {panel.name}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <UseRow key={row.name} row={row} ids={panels.map((panel) => panel.id)} />
          ))}
        </tbody>
      </table>
    </ScrollBox>
  );
}

function UseRow(props: { readonly row: YearTableRow; readonly ids: readonly string[] }) {
  const { use, name, cells } = props.row;
  return (
    <tr className="border-b border-hair">
      <th scope="row" className="p-2 text-left">
        {use === undefined ? null : <UseSwatch id={`table-${use}`} use={use} />} {name}
      </th>
      {cells.map((cell, i) => (
        <td key={props.ids[i]} className="p-2 text-right align-top whitespace-nowrap">
          <span className="block font-semibold">{cell.main}</span>
          {cell.small === undefined ? null : <span className="block text-soft">{cell.small}</span>}
        </td>
      ))}
    </tr>
  );
}
