'use client';

import { useState } from 'react';
import { useDraftState, useDraftStore, useFieldBook } from '@/components/draft/draft-context';
import type { Conflict } from '@/components/draft/draft-store';
import { type Draft, differences, patternOf, valueAt, withValue } from '@/components/draft/draft-tree';
import type { FieldBook } from '@/components/draft/field-book';
import { t } from '@/components/words/words';

/** Two people saved the same visit: both versions, field by field, and the user chooses. */
export function ConflictNotice() {
  const conflict = useDraftState((s) => s.conflict);
  if (conflict === undefined) return null;
  return <Chooser conflict={conflict} key={conflict.theirRevision} />;
}

function Chooser(props: { readonly conflict: Conflict }) {
  const { theirs } = props.conflict;
  const store = useDraftStore();
  const book = useFieldBook();
  const mine = useDraftState((s) => s.draft);
  const [fromTheirs, setFromTheirs] = useState<ReadonlySet<string>>(new Set());
  const list = differences(mine, theirs);
  const pick = (path: string, takeTheirs: boolean) => {
    const next = new Set(fromTheirs);
    if (takeTheirs) next.add(path);
    else next.delete(path);
    setFromTheirs(next);
  };
  return (
    <section role="alert" aria-labelledby="conflict" className="note-doubt mb-4">
      <h2 id="conflict" className="text-lg">
        {t('conflict.title')}
      </h2>
      <p>{t('conflict.what')}</p>
      {props.conflict.deleted === true ? <p className="font-semibold">{t('conflict.deleted')}</p> : null}
      <div className="mt-3 flex flex-wrap gap-2">
        <button type="button" className="press" onClick={() => store.settle(mine)}>
          {t('conflict.allMine')}
        </button>
        <button type="button" className="press" onClick={() => store.settle(theirs)}>
          {t('conflict.allTheirs')}
        </button>
      </div>
      <ul className="rows mt-3">
        {list.map(({ path, mine: left, theirs: right }) => (
          <li key={path} className="py-2">
            <fieldset>
              <legend className="font-semibold">{labelOf(path, book)}</legend>
              <Side
                name={path}
                words={t('conflict.mine', { value: shown(left) })}
                checked={!fromTheirs.has(path)}
                onPick={() => pick(path, false)}
              />
              <Side
                name={path}
                words={t('conflict.theirs', { value: shown(right) })}
                checked={fromTheirs.has(path)}
                onPick={() => pick(path, true)}
              />
            </fieldset>
          </li>
        ))}
      </ul>
      <button
        type="button"
        className="press press-main mt-3"
        onClick={() => store.settle(merged(mine, theirs, fromTheirs))}
      >
        {t('conflict.settle')}
      </button>
    </section>
  );
}

function Side(props: {
  readonly name: string;
  readonly words: string;
  readonly checked: boolean;
  readonly onPick: () => void;
}) {
  return (
    <label className="flex min-h-12 cursor-pointer items-center gap-3">
      <input
        type="radio"
        className="size-6 accent-plum"
        name={`conflict-${props.name}`}
        checked={props.checked}
        onChange={props.onPick}
      />
      <span className="break-words">{props.words}</span>
    </label>
  );
}

/** Fields of the other side are set in order, then those it lacks are taken away from the end of their lists. */
function merged(mine: Draft, theirs: Draft, fromTheirs: ReadonlySet<string>): Draft {
  const paths = [...fromTheirs];
  const gone = paths.filter((path) => valueAt(theirs, path) === undefined).reverse();
  const set = paths.reduce((draft, path) => {
    const value = valueAt(theirs, path);
    return value === undefined ? draft : withValue(draft, path, value);
  }, mine);
  return gone.reduce((draft, path) => withoutField(draft, path), set);
}

/** Takes a field away, and its row once nothing is left in it. */
function withoutField(draft: Draft, path: string): Draft {
  const rest = withValue(draft, path, undefined);
  const row = path.slice(0, path.lastIndexOf('.'));
  const left = valueAt(rest, row);
  const isEmptyRow =
    /\.\d+$/.test(row) && typeof left === 'object' && left !== null && Object.keys(left).length === 0;
  return isEmptyRow ? withValue(rest, row, undefined) : rest;
}

function shown(value: string): string {
  return value === '' ? t('conflict.empty') : value;
}

function labelOf(path: string, book: FieldBook): string {
  const label = book[patternOf(path)]?.label ?? path;
  const at = path.split('.').find((key) => /^\d+$/.test(key));
  return at === undefined ? label : t('conflict.inRow', { label, n: Number(at) + 1 });
}
