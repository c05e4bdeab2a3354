'use client';

import { useDraftState, useDraftStore, useFieldEntry, useVisitId } from '@/components/draft/draft-context';
import { listAt, textAt } from '@/components/draft/draft-tree';
import { ListField } from '@/components/form/pick-field';
import { TextField } from '@/components/form/text-field';
import { PhotoStrip } from '@/components/photos/photo-strip';
import { useSweptPhotos } from '@/components/photos/use-swept-photos';
import { t, tCode } from '@/components/words/words';
import { Group } from './fold';
import { markedSeen } from './marked-seen';

/** What was seen, heard or told, and what the technician suspects. */
export function SeenPart() {
  const entry = useFieldEntry('observations.*.id');
  useSweptPhotos();
  return (
    <>
      <Group title={t('seen.title')} note={t('seen.note')}>
        {(entry.options ?? []).map((id) => (
          <Seen key={id} id={id} />
        ))}
      </Group>
      <Group title={t('seen.suspicion')} note={t('seen.suspicionNote')}>
        <ListField path="suspectedCause.cause" words="cause" unknown />
        <TextField path="suspectedCause.note" long />
      </Group>
    </>
  );
}

function Seen(props: { readonly id: string }) {
  const store = useDraftStore();
  const visitId = useVisitId();
  const words = tCode(`option.observation.${props.id}`);
  const at = useDraftState((s) =>
    listAt(s.draft, 'observations').findIndex((o) => textAt(o, 'id') === props.id),
  );
  return (
    <div className="py-1">
      <label className="flex min-h-12 cursor-pointer items-center gap-3">
        <input
          type="checkbox"
          className="size-7 accent-plum"
          checked={at >= 0}
          onChange={(event) => {
            const on = event.target.checked;
            store.change(words, (draft) => markedSeen(visitId, draft, props.id, on));
          }}
        />
        <span>{words}</span>
      </label>
      {at >= 0 ? (
        <>
          <TextField path={`observations.${at}.note`} label={t('seen.noteOn', { what: words })} />
          <PhotoStrip observation={props.id} of={words} />
        </>
      ) : null}
    </div>
  );
}
