'use client';

import { useState } from 'react';
import { useDraftState, useDraftStore } from '@/components/draft/draft-context';
import { textAt } from '@/components/draft/draft-tree';
import { fieldId } from '@/components/form/field-id';
import { t } from '@/components/words/words';
import { contrastOnWhite, leastContrast, nearestReadable } from '@/lib/visit/contrast';
import { logoOf } from './logo-of';

const colourPath = 'company.accent';
const logoPath = 'company.logo';

/** The company's colour and mark for its papers; neither is required. */
export function CompanyLook() {
  return (
    <>
      <AccentField />
      <LogoField />
    </>
  );
}

function AccentField() {
  const store = useDraftStore();
  const colour = useDraftState((s) => textAt(s.draft, colourPath));
  const label = t('look.accent');
  const set = (value: string | undefined) => store.set(colourPath, value, label);
  const pale = /^#[0-9a-f]{6}$/i.test(colour) && contrastOnWhite(colour) < leastContrast;
  const shade = pale ? nearestReadable(colour) : colour;
  return (
    <div className="py-2">
      <label htmlFor={fieldId(colourPath)} className="block font-medium">
        {label}
      </label>
      <div className="mt-1 flex flex-wrap items-center gap-2">
        <input
          id={fieldId(colourPath)}
          type="color"
          className="box h-12 w-20"
          value={colour === '' ? '#000000' : colour}
          aria-describedby={pale ? `${fieldId(colourPath)}-pale` : undefined}
          onChange={(event) => set(event.target.value)}
        />
        {colour === '' ? (
          <span className="text-soft">{t('look.none')}</span>
        ) : (
          <button type="button" className="press press-plain" onClick={() => set(undefined)}>
            {t('look.remove')}
          </button>
        )}
      </div>
      {pale ? (
        <div id={`${fieldId(colourPath)}-pale`} role="status" className="note-doubt mt-2">
          <p>
            {t('look.pale', { colour, contrast: contrastOnWhite(colour).toFixed(1), least: leastContrast })}
          </p>
          <button type="button" className="press mt-2" onClick={() => set(shade)}>
            <span
              aria-hidden="true"
              className="size-6 border border-ink"
              style={{ backgroundColor: shade }}
            />
            {t('look.take', { shade })}
          </button>
        </div>
      ) : null}
    </div>
  );
}

function LogoField() {
  const store = useDraftStore();
  const logo = useDraftState((s) => textAt(s.draft, logoPath));
  const [problem, setProblem] = useState<string>();
  const label = t('look.logo');
  const choose = async (file: File | undefined) => {
    if (file === undefined) return;
    const made = await logoOf(file);
    setProblem(made.ok ? undefined : t(`look.logo.${made.why}`, { name: file.name }));
    if (made.ok) store.set(logoPath, made.dataUrl, label);
  };
  return (
    <div className="py-2">
      <label htmlFor={fieldId(logoPath)} className="block font-medium">
        {label}
      </label>
      <input
        id={fieldId(logoPath)}
        type="file"
        accept="image/png,image/jpeg"
        className="box mt-1 w-full"
        aria-describedby={`${fieldId(logoPath)}-told`}
        onChange={(event) => void choose(event.target.files?.[0])}
      />
      <p
        id={`${fieldId(logoPath)}-told`}
        role="status"
        className={problem === undefined ? 'text-soft' : 'note-doubt mt-2'}
      >
        {problem ?? t('look.logoHint')}
      </p>
      {logo === '' ? null : (
        <div className="mt-2 flex flex-wrap items-center gap-2">
          <div
            role="img"
            aria-label={label}
            className="h-16 w-48 border border-hair bg-white bg-contain bg-center bg-no-repeat"
            style={{ backgroundImage: `url(${logo})` }}
          />
          <button
            type="button"
            className="press press-plain"
            onClick={() => store.set(logoPath, undefined, label)}
          >
            {t('look.remove')}
          </button>
        </div>
      )}
    </div>
  );
}
