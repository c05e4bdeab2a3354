'use client';

import { useRef, useState } from 'react';
import { useDraftStore, useDraftValue, useFieldEntry } from '@/components/draft/draft-context';
import { type Draft, withValue } from '@/components/draft/draft-tree';
import { fieldId } from '@/components/form/field-id';
import { errorId, FieldError } from '@/components/form/field-message';
import { useIssueAt, useIssues } from '@/components/form/use-field-issues';
import { t } from '@/components/words/words';

/** As many points as a run keeps. */
const MOST_POINTS = 60;

/**
 * Velocities of a traverse, one after another: a big box, "next point", and every point to tap and put right. What is
 * typed is in the draft at once; a point left blank is dropped when one goes on.
 */
export function PointEntry(props: { readonly path: string }) {
  const { path } = props;
  const store = useDraftStore();
  const stored = useDraftValue(path);
  const points = Array.isArray(stored) ? stored.map(String) : [];
  const [picked, setPicked] = useState<number | undefined>(undefined);
  const box = useRef<HTMLInputElement>(null);
  const { typingIn } = useIssues();
  const at = Math.min(picked ?? points.length, MOST_POINTS - 1);
  const here = `${path}.${at}`;
  const entry = useFieldEntry(here);
  const issue = useIssueAt(here);
  const text = points[at] ?? '';
  const what = t('measure.grille.point', { n: at + 1 });

  const put = (typed: string) => {
    typingIn(here);
    setPicked(at);
    if (points.length === 0) store.set(path, [typed], what);
    else store.set(here, typed, what);
  };
  const goOn = () => {
    typingIn(undefined);
    if (points.some((point) => point.trim() === '')) {
      const kept = points.filter((point) => point.trim() !== '');
      store.set(path, kept.length === 0 ? undefined : kept, what);
      setPicked(kept.length);
    } else setPicked(points.length);
    box.current?.focus();
  };
  const remove = () => {
    const kept = points.filter((_, i) => i !== at);
    store.change(t('measure.grille.removed', { n: at + 1 }), (draft) => withPoints(draft, path, kept));
    setPicked(undefined);
    box.current?.focus();
  };
  const full = points.length >= MOST_POINTS;
  return (
    <div className="py-2">
      <div className="flex items-end gap-2">
        <div className="min-w-0 flex-1">
          <label htmlFor={fieldId(here)} className="block font-medium">
            {what}
            <span className="sr-only">, {entry.unit}</span>
          </label>
          <div className="mt-1 flex items-center gap-2">
            <input
              ref={box}
              id={fieldId(here)}
              className="box box-number min-h-14 w-full text-2xl"
              type="text"
              inputMode="decimal"
              enterKeyHint="next"
              autoComplete="off"
              value={text}
              aria-invalid={issue !== undefined}
              aria-describedby={issue === undefined ? undefined : errorId(here)}
              onChange={(event) => put(event.target.value)}
              onBlur={() => setTimeout(() => typingIn(undefined), 250)}
              onKeyDown={(event) => {
                if (event.key !== 'Enter') return;
                event.preventDefault();
                goOn();
              }}
            />
            <span aria-hidden="true" className="text-soft">
              {entry.unit}
            </span>
          </div>
        </div>
        <button
          type="button"
          className="press press-main shrink-0"
          onClick={goOn}
          disabled={full && at >= MOST_POINTS - 1}
        >
          {t('measure.grille.next')}
        </button>
      </div>
      <FieldError path={here} />
      {full ? <p className="text-soft">{t('measure.grille.full', { n: MOST_POINTS })}</p> : null}
      {points.length === 0 ? null : (
        <ol className="mt-2 flex flex-wrap gap-1.5" aria-label={t('measure.grille.list')}>
          {points.map((point, i) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: a point of a traverse is its place in the order
            <li key={i}>
              <button
                type="button"
                id={i === at ? undefined : fieldId(`${path}.${i}`)}
                className={`press min-w-14 px-2 font-normal ${i === at ? 'bg-plum-wash underline decoration-2' : 'border-edge'}`}
                aria-pressed={i === at}
                aria-label={t('measure.grille.pickPoint', { n: i + 1, fpm: point })}
                onClick={() => {
                  setPicked(i);
                  box.current?.focus();
                }}
              >
                {point.trim() === '' ? '…' : point}
              </button>
            </li>
          ))}
        </ol>
      )}
      {at < points.length ? (
        <button type="button" className="press press-plain px-0" onClick={remove}>
          {t('measure.grille.remove', { n: at + 1 })}
        </button>
      ) : null}
    </div>
  );
}

function withPoints(draft: Draft, path: string, points: string[]): Draft {
  return withValue(draft, path, points.length === 0 ? undefined : points);
}
