import { Document, Page, renderToBuffer } from '@react-pdf/renderer';
import { createElement } from 'react';
import { renderSheetPdf } from '../components/pdf/render-sheet-pdf';
import { demoVisits, sheetOf } from './bench-appraisal';
import { durationText, timeAsync } from './bench-timing';

const TIMES = 3;

/** Rows: what, time, size, time over that of an empty page by the same library. */
export async function benchPdf(folder: string): Promise<string[][]> {
  const emptyPage = createElement(Document, {}, createElement(Page, { size: 'LETTER' }));
  const empty = await measured(() => renderToBuffer(emptyPage));
  const rows = [['empty page', durationText(empty.ns), sizeText(empty.bytes), '1 x']];
  for (const { name, visit } of demoVisits(folder)) {
    const sheet = sheetOf(visit);
    const { ns, bytes } = await measured(() => renderSheetPdf(sheet));
    rows.push([`sheet of ${name}`, durationText(ns), sizeText(bytes), `${(ns / empty.ns).toFixed(0)} x`]);
  }
  return rows;
}

async function measured(render: () => Promise<Uint8Array>): Promise<{ ns: number; bytes: number }> {
  let bytes = 0;
  const { nsPerCall } = await timeAsync(async () => {
    bytes = (await render()).length;
    return bytes;
  }, TIMES);
  return { ns: nsPerCall, bytes };
}

function sizeText(bytes: number): string {
  return `${(bytes / 1024).toFixed(0)} KiB`;
}
