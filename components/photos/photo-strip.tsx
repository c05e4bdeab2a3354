'use client';

import { useState } from 'react';
import { useDraftState, useDraftStore, useVisitId } from '@/components/draft/draft-context';
import { type Draft, listAt, textAt, withValue } from '@/components/draft/draft-tree';
import { t } from '@/components/words/words';
import { MAX_PHOTOS } from '@/lib/visit/max-photos';
import { addPhotos } from './add-photos';
import { Thumbnail } from './thumbnail';

/** Photos of one observation; the pictures stay on this device, the visit only names them. */
export function PhotoStrip(props: { readonly observation: string; readonly of: string }) {
  const { observation } = props;
  const store = useDraftStore();
  const visitId = useVisitId();
  const [words, setWords] = useState('');
  const [isBusy, setIsBusy] = useState(false);
  const names = useDraftState((s) => photoIds(s.draft, observation).join(' '));
  const ids = names === '' ? [] : names.split(' ');
  const add = async (files: FileList | null) => {
    if (files === null || files.length === 0 || isBusy) return;
    setIsBusy(true);
    const has = photoIds(store.get().draft, observation).length;
    const added = await addPhotos(visitId, [...files], has);
    if (added.ids.length > 0) {
      store.change(t('photo.added'), (draft) =>
        withPhotos(draft, observation, [...photoIds(draft, observation), ...added.ids]),
      );
    }
    setWords(added.words);
    setIsBusy(false);
  };
  const remove = (id: string) =>
    store.change(t('photo.removed'), (draft) =>
      withPhotos(
        draft,
        observation,
        photoIds(draft, observation).filter((other) => other !== id),
      ),
    );
  return (
    <div className="pb-2">
      {ids.length === 0 ? null : (
        <ul className="flex flex-wrap gap-2 py-2" aria-label={t('photo.list', { of: props.of })}>
          {ids.map((id, i) => (
            <li key={id}>
              <Thumbnail
                id={id}
                name={t('photo.name', { n: i + 1, of: props.of })}
                onRemove={() => remove(id)}
              />
            </li>
          ))}
        </ul>
      )}
      {ids.length >= MAX_PHOTOS ? (
        <p>{t('photo.enough', { n: MAX_PHOTOS })}</p>
      ) : (
        <div className="flex flex-wrap gap-2">
          <FileButton words={t('photo.take')} of={props.of} camera onFiles={add} />
          <FileButton words={t('photo.choose')} of={props.of} onFiles={add} />
        </div>
      )}
      {ids.length === 0 ? null : <p className="mt-1 text-soft">{t('photo.where')}</p>}
      <p role="status" className="font-semibold text-danger">
        {isBusy ? t('photo.working') : words}
      </p>
    </div>
  );
}

function FileButton(props: {
  readonly words: string;
  readonly of: string;
  readonly camera?: boolean;
  readonly onFiles: (files: FileList | null) => Promise<void>;
}) {
  return (
    <label className="press cursor-pointer has-focus-visible:outline-3 has-focus-visible:outline-offset-2 has-focus-visible:outline-plum">
      <input
        type="file"
        accept="image/*"
        className="sr-only"
        {...(props.camera === true ? { capture: 'environment' as const } : { multiple: true })}
        onChange={(event) => {
          const input = event.target;
          // Emptied, so that the same picture can be chosen once more.
          void props.onFiles(input.files).then(() => {
            input.value = '';
          });
        }}
      />
      {props.words}
      <span className="sr-only">: {props.of}</span>
    </label>
  );
}

function photoIds(draft: Draft, observation: string): string[] {
  const own = listAt(draft, 'observations').find((one) => textAt(one, 'id') === observation);
  return listAt(own, 'photoIds').filter((id) => typeof id === 'string');
}

/** The observation may have moved in its list while a picture was shrunk; one that is gone takes no photos. */
function withPhotos(draft: Draft, observation: string, ids: readonly string[]): Draft {
  const at = listAt(draft, 'observations').findIndex((one) => textAt(one, 'id') === observation);
  if (at < 0) return draft;
  return withValue(draft, `observations.${at}.photoIds`, ids.length === 0 ? undefined : [...ids]);
}
