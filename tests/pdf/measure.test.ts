import { Document, Page, renderToBuffer, Text, View } from '@react-pdf/renderer';
import { createElement } from 'react';
import { expect, test } from 'vitest';
import { heightsOf, pagesOf } from '@/components/pdf/measure';

// The layout handed to onRender is the library's own business: this test tells when an upgrade changes it.
test('wiring: the PDF library hands over the heights of blocks by their id, and the pages', async () => {
  let layout: unknown;
  const line = (id: string, times: number) =>
    createElement(
      View,
      { id, key: id },
      ...Array.from({ length: times }, (_, i) =>
        createElement(Text, { key: i, style: { fontSize: 10, lineHeight: 1.2 } }, `line ${i}`),
      ),
    );
  const page = createElement(Page, { size: [300, 400] }, line('block-0', 3), line('block-1', 5));
  const onRender = (rendered: unknown) => {
    layout = (rendered as { _INTERNAL__LAYOUT__DATA_?: unknown })._INTERNAL__LAYOUT__DATA_;
  };
  await renderToBuffer(createElement(Document, { onRender }, page, createElement(Page, { key: 2 })));
  const heights = heightsOf(layout);
  expect(heights.list('block-').map((height) => Math.round(height))).toEqual([36, 60]);
  expect(heights.sum('block-')).toBeCloseTo(96, 3);
  expect(heights.count('block-')).toBe(2);
  expect(heights.of('no such block')).toBe(0);
  expect(pagesOf(layout)).toBe(2);
});
