'use client';

import { useDraftState, useDraftStore } from '@/components/draft/draft-context';
import { valueAt } from '@/components/draft/draft-tree';
import { isFinishedFurnace } from '@/components/draft/financing-data';
import { NumberField } from '@/components/form/number-field';
import { PickField } from '@/components/form/pick-field';
import { t } from '@/components/words/words';

/** A furnace behind the new heat pump: it heats when it is colder than the switch-over. */
export function FurnaceFields(props: { readonly path: string }) {
  const path = `${props.path}.furnace`;
  const store = useDraftStore();
  const there = useDraftState((s) => valueAt(s.draft, path) !== undefined);
  const open = useDraftState((s) => !isFinishedFurnace(valueAt(s.draft, path)));
  return (
    <>
      <label className="flex min-h-12 cursor-pointer items-center gap-3 py-1">
        <input
          type="checkbox"
          className="size-7 accent-plum"
          checked={there}
          onChange={(event) => store.set(path, event.target.checked ? {} : undefined, t('money.furnace'))}
        />
        <span>{t('money.furnace')}</span>
      </label>
      {there ? (
        <div className="rows border-l-4 border-hair pl-3">
          <PickField path={`${path}.fuel`} words="fuel" />
          <NumberField path={`${path}.afueFrac`} />
          <NumberField path={`${path}.switchOverF`} hint={t('money.switchOverHint')} />
          <NumberField path={`${path}.outputBtuh`} hint={t('money.furnaceOutputHint')} />
          {open ? <p className="py-2 text-soft">{t('money.furnaceOpen')}</p> : null}
        </div>
      ) : null}
    </>
  );
}
