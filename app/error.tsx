'use client';

import { t } from '@/components/words/words';

/** A page that could not be shown; what was typed is still on this device. */
export default function PageError(props: { error: Error & { digest?: string }; reset: () => void }) {
  return (
    <div className="mx-auto max-w-4xl px-4 py-12">
      <h1 className="text-3xl">{t('error.title')}</h1>
      <p className="mt-3">{t('error.what')}</p>
      {props.error.digest === undefined ? null : (
        <p className="mt-1 text-soft">{t('error.number', { n: props.error.digest })}</p>
      )}
      <div className="mt-6 flex flex-wrap gap-3">
        <button type="button" className="press press-main" onClick={props.reset}>
          {t('error.again')}
        </button>
        <a className="press" href="/">
          {t('error.list')}
        </a>
      </div>
    </div>
  );
}
