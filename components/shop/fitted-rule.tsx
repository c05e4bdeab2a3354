'use client';

import { Titled } from '@/components/results/titled';
import { t } from '@/components/words/shop-words';
import { PastProgress } from './past-progress';
import { usePast } from './use-past';

async function ask(): Promise<readonly string[]> {
  const answer = await fetch('/shop/fitted.json');
  if (!answer.ok) throw new Error(String(answer.status));
  return ((await answer.json()) as { sentences: string[] }).sentences;
}

/** A rule one can keep in mind, and what following it costs. */
export function FittedRule(props: { readonly visitIds: readonly string[] }) {
  return (
    <Titled title={t('shop.wall.fitted')} level={2} className="panel mt-8">
      <PastProgress state={usePast(props.visitIds, ask)}>
        {(sentences) =>
          sentences.map((sentence, i) => (
            <p key={sentence} className={i === 0 ? 'text-lg font-semibold' : ''}>
              {sentence}
            </p>
          ))
        }
      </PastProgress>
    </Titled>
  );
}
