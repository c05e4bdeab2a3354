import type { Draft } from '@/components/draft/draft-tree';
import type { FieldBook } from '@/components/draft/field-book';
import { buildView } from './build-view';
import type { View } from './view';

export type Question = { readonly version: number; readonly draft: Draft; readonly book: FieldBook };
export type Reply = { readonly version: number; readonly view: View };

self.addEventListener('message', (event: MessageEvent<Question>) => {
  const { version, draft, book } = event.data;
  const reply: Reply = { version, view: buildView(draft, book) };
  self.postMessage(reply);
});
