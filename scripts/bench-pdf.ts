import { Document, Page, renderToBuffer } from '@react-pdf/renderer';
import { createElement } from 'react';
import { renderSheetPdf } from '../components/pdf/render-sheet-pdf';
import { demoVisits, sheetOf } from './bench-appraisal';
import { durationText, timeAsync } from './bench-timing';

const TIMES = 3;

/** Rows: what, time, size, time over that of an empty page by the same library; the first of each also loads code and fonts. */
export async function benchPdf(folder: string): Promise<string[][]> {
  const emptyPage = () =>
    renderToBuffer(createElement(Document, {}, createElement(Page, { size: 'LETTER' })));
  const sheets = demoVisits(folder).map(({ name, visit }) => ({ name, sheet: sheetOf(visit) }));
  const [first] = sheets;
  const rows: string[][] = [];
  const from = performance.now();
  await emptyPage();
  const between = performance.now();
  if (first !== undefined) await renderSheetPdf(first.sheet);
  const firstNs = [between - from, performance.now() - between].map((ms) => ms * 1e6) as [number, number];
  rows.push(['empty page, first of the process', durationText(firstNs[0]), '', '1 x']);
  rows.push(['sheet, first of the process', durationText(firstNs[1]), '', ratio(firstNs[1], firstNs[0])]);
  const empty = await measured(emptyPage);
  rows.push(['empty page', durationText(empty.ns), sizeText(empty.bytes), '1 x']);
  for (const { name, sheet } of sheets) {
    const { ns, bytes } = await measured(() => renderSheetPdf(sheet));
    rows.push([`sheet of ${name}`, durationText(ns), sizeText(bytes), ratio(ns, empty.ns)]);
  }
  return rows;
}

function ratio(ns: number, baseNs: number): string {
  return `${(ns / baseNs).toFixed(0)} x`;
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
