'use client';

import type { ReactNode } from 'react';
import { t } from '@/components/words/shop-words';
import type { PastState } from './use-past';

/** How far the looking back is, in words, and then its answer. */
export function PastProgress<T>(props: {
  readonly state: PastState<T>;
  readonly children: (answer: T) => ReactNode;
}) {
  const { state } = props;
  return (
    <>
      <p role="status" className={state.kind === 'ready' ? 'sr-only' : 'py-4 text-lg'}>
        {state.kind === 'working' ? t('shop.working', { done: state.done, total: state.total }) : null}
        {state.kind === 'ready' ? t('shop.workedOut') : null}
        {state.kind === 'failed' ? t('shop.notWorkedOut') : null}
      </p>
      {state.kind === 'failed' ? (
        <button type="button" className="press" onClick={() => window.location.reload()}>
          {t('error.again')}
        </button>
      ) : null}
      {state.kind === 'ready' ? props.children(state.answer) : null}
    </>
  );
}
