'use client';

import { t, tCode } from '@/components/words/words';
import { ADVICE, type ListRow } from './digest';
import { type ListQuery, SORTS } from './list-query';

type Props = {
  readonly rows: readonly ListRow[];
  readonly query: ListQuery;
  readonly change: (part: Partial<ListQuery>) => void;
};

/** Search in sight, filters one press away; what is asked for stands in the address. */
export function ListFilters({ rows, query, change }: Props) {
  const years = [...new Set(rows.flatMap((row) => row.visitDate?.slice(0, 4) ?? []))].sort().reverse();
  const causes = [...new Set(rows.flatMap((row) => row.digest?.causes ?? []))].sort();
  const set = [query.year, query.advice, query.mode, query.cause, query.chosen].filter(
    (value) => value !== '',
  );
  return (
    <search className="grid gap-2 pb-4">
      <div className="flex flex-wrap gap-3">
        <div className="min-w-56 flex-1">
          <label htmlFor="list-search" className="block font-medium">
            {t('list.search')}
          </label>
          <input
            id="list-search"
            type="search"
            className="box mt-1 w-full"
            autoComplete="off"
            value={query.search}
            onChange={(event) => change({ search: event.target.value })}
          />
        </div>
        <Pick
          name="sort"
          label={t('list.sort')}
          value={query.sort === '' ? 'saved' : query.sort}
          options={SORTS.map((sort) => [sort, tCode(`list.sort.${sort}`)])}
          onPick={(sort) => change({ sort: sort === 'saved' ? '' : sort })}
        />
      </div>
      <details open={set.length > 0}>
        <summary className="flex min-h-12 list-none items-center gap-2 font-semibold [&::-webkit-details-marker]:hidden">
          <span aria-hidden="true" className="fold-mark">
            ▸
          </span>
          {set.length === 0 ? t('list.filters') : t('list.filtersSet', { n: set.length })}
        </summary>
        <div className="flex flex-wrap gap-3">
          <Filter
            name="year"
            any="list.anyYear"
            query={query}
            change={change}
            options={years.map((y) => [y, y])}
          />
          <Filter
            name="advice"
            any="list.anyAdvice"
            query={query}
            change={change}
            options={ADVICE.map((advice) => [advice, tCode(`list.advice.${advice}`)])}
          />
          <Filter
            name="mode"
            any="list.anyMode"
            query={query}
            change={change}
            options={['cooling', 'heating'].map((mode) => [mode, tCode(`option.mode.${mode}`)])}
          />
          <Filter
            name="cause"
            any="list.anyCause"
            query={query}
            change={change}
            options={causes.map((cause) => [cause, tCode(`option.cause.${cause}`)])}
          />
          <Filter
            name="chosen"
            any="list.anyChosen"
            query={query}
            change={change}
            options={[
              ['yes', t('list.chosen.yes')],
              ['no', t('list.chosen.no')],
            ]}
          />
        </div>
      </details>
    </search>
  );
}

type Options = readonly (readonly [value: string, words: string])[];

function Filter(props: {
  readonly name: 'year' | 'advice' | 'mode' | 'cause' | 'chosen';
  readonly any: 'list.anyYear' | 'list.anyAdvice' | 'list.anyMode' | 'list.anyCause' | 'list.anyChosen';
  readonly query: ListQuery;
  readonly change: (part: Partial<ListQuery>) => void;
  readonly options: Options;
}) {
  const { name, query } = props;
  const value = query[name];
  // An address may name what no visit here has: it stays in sight, or the empty list could not be understood.
  const known = value === '' || props.options.some(([option]) => option === value);
  return (
    <Pick
      name={name}
      label={tCode(`list.filter.${name}`)}
      value={value}
      options={[['', t(props.any)], ...props.options, ...(known ? [] : [[value, value] as const])]}
      onPick={(picked) => props.change({ [name]: picked })}
    />
  );
}

function Pick(props: {
  readonly name: string;
  readonly label: string;
  readonly value: string;
  readonly options: Options;
  readonly onPick: (value: string) => void;
}) {
  return (
    <div className="min-w-40 flex-1 sm:max-w-64">
      <label htmlFor={`list-${props.name}`} className="block font-medium">
        {props.label}
      </label>
      <select
        id={`list-${props.name}`}
        className="box mt-1 w-full"
        value={props.value}
        onChange={(event) => props.onPick(event.target.value)}
      >
        {props.options.map(([value, words]) => (
          <option key={value} value={value}>
            {words}
          </option>
        ))}
      </select>
    </div>
  );
}
