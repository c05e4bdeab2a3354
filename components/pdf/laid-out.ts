import { type DocumentProps, renderToBuffer } from '@react-pdf/renderer';
import type { ReactElement } from 'react';
import { type Heights, heightsOf, pagesOf } from './measure';

/** Given to a document so that its layout can be read. */
export type OnRender = NonNullable<DocumentProps['onRender']>;

export type LaidOut = {
  readonly bytes: Uint8Array<ArrayBuffer>;
  readonly heights: Heights;
  readonly pages: number;
};

/**
 * Renders a document and keeps what the PDF library knows of its layout.
 *
 * @param make  the document, with the callback in its place
 * Check: tests/pdf/measure.test.ts
 */
export async function laidOut(make: (onRender: OnRender) => ReactElement<DocumentProps>): Promise<LaidOut> {
  let layout: unknown;
  const bytes = await renderToBuffer(
    make((rendered) => {
      layout = (rendered as { _INTERNAL__LAYOUT__DATA_?: unknown })._INTERNAL__LAYOUT__DATA_;
    }),
  );
  return { bytes: new Uint8Array(bytes), heights: heightsOf(layout), pages: pagesOf(layout) };
}
