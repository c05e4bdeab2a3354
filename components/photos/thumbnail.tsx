'use client';

import { useEffect, useRef, useState } from 'react';
import { t } from '@/components/words/words';
import { photoOf } from './photo-store';

/** A small picture that opens; a photo of another device says so. */
export function Thumbnail(props: {
  readonly id: string;
  readonly name: string;
  readonly onRemove: () => void;
}) {
  const { id, name } = props;
  const [url, setUrl] = useState<string | 'elsewhere' | undefined>(undefined);
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    let made: string | undefined;
    let open = true;
    photoOf(id)
      .catch(() => undefined)
      .then((photo) => {
        if (!open) return;
        made = photo === undefined ? undefined : URL.createObjectURL(photo.blob);
        setUrl(made ?? 'elsewhere');
      });
    return () => {
      open = false;
      if (made !== undefined) URL.revokeObjectURL(made);
    };
  }, [id]);
  if (url === undefined) return <div className="box size-24" />;
  if (url === 'elsewhere') {
    return (
      <div className="box grid w-40 gap-1">
        <p>{t('photo.elsewhere', { name })}</p>
        <button type="button" className="press press-plain px-0" onClick={props.onRemove}>
          {t('photo.remove')}
          <span className="sr-only">: {name}</span>
        </button>
      </div>
    );
  }
  return (
    <>
      <button
        type="button"
        className="box size-24 overflow-hidden p-0"
        onClick={() => dialog.current?.showModal()}
      >
        <img src={url} alt={t('photo.open', { name })} className="size-full object-cover" />
      </button>
      <dialog
        ref={dialog}
        aria-label={name}
        className="m-auto max-h-dvh max-w-full bg-paper p-4 text-ink backdrop:bg-black/70"
      >
        <img src={url} alt={name} className="max-h-[70dvh] max-w-full object-contain" />
        <div className="mt-3 flex flex-wrap gap-2">
          <button type="button" className="press press-main" onClick={() => dialog.current?.close()}>
            {t('photo.close')}
          </button>
          <button
            type="button"
            className="press"
            onClick={() => {
              dialog.current?.close();
              props.onRemove();
            }}
          >
            {t('photo.remove')}
          </button>
        </div>
      </dialog>
    </>
  );
}
