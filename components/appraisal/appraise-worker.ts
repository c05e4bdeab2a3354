import type { Draft } from '@/components/draft/draft-tree';
import type { FieldBook } from '@/components/draft/field-book';
import { answerDraft } from './build-view';
import type { ChanceView } from './chance-view';
import { STILL_MS } from './still';
import type { View } from './view';

export type Question = { readonly version: number; readonly draft: Draft; readonly book: FieldBook };
export type Answer = { readonly version: number; readonly view: View };
/** Comes after the answer, in a message of its own, once no newer question has come. */
export type Simulated = { readonly version: number; readonly chances: ChanceView | undefined };
export type Reply = Answer | Simulated;

let later: ReturnType<typeof setTimeout> | undefined;

self.addEventListener('message', (event: MessageEvent<Question>) => {
  const { version, draft, book } = event.data;
  clearTimeout(later);
  const { view, chances } = answerDraft(draft, book);
  self.postMessage({ version, view } satisfies Reply);
  later = setTimeout(() => {
    self.postMessage({ version, chances: chances() } satisfies Reply);
  }, STILL_MS);
});
