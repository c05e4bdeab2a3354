import { describe, expect, test } from 'vitest';
import { renderPlainPdf } from '@/components/pdf/render-plain-pdf';
import type { PlainDocument } from '@/lib/sheet/plain-document';
import { composeWallTable } from '@/lib/sheet/wall-table';
import { demoFiles } from '../appraise/demo-files';
import { crowdedVisit, longText } from '../sheet/fixtures/crowded';
import { beforeAfterOf, readTwice, recordOf, wallInput } from '../sheet/fixtures/documents';
import { expectInsideMargins, expectNoOverlap, poppler, textOf } from './pdf-tools';

const papers = ['letter', 'a4'] as const;

/** Words broken over lines, with or without a hyphen, and page feet in between: compared without blanks and hyphens. */
function dense(text: string): string {
  return text.replace(/[\s\u00ad\u200e-]+/g, '');
}

/** Every cell, sentence and fact of a document. */
function partsOf(content: PlainDocument): string[] {
  return [
    content.heading,
    ...content.facts.flatMap((fact) => [fact.label, fact.text]),
    ...content.sections.flatMap((section) => [
      section.title,
      ...(section.warnings ?? []),
      ...(section.sentences ?? []),
      ...(section.facts ?? []).flatMap((fact) => [fact.label, fact.text]),
      ...(section.tables ?? []).flatMap((table) => table.rows.flatMap((row) => row.cells)),
    ]),
  ];
}

/** All figures a text says, in their order. */
function figures(text: string): string[] {
  return text.match(/\d[\d,.]*/g) ?? [];
}

async function expectWhole(content: PlainDocument, paper: 'letter' | 'a4'): Promise<Uint8Array> {
  const pdf = await renderPlainPdf(content, { paper });
  const { out, err } = poppler('pdfinfo', ['FILE'], pdf);
  expect(err).toBe('');
  expect(out).toMatch(paper === 'letter' ? /612 x 792/ : /595\.28 x 841\.89/);
  const text = textOf(pdf);
  const densest = dense(text);
  // A cell that goes over several lines stands beside others: its figures are looked for, and its words one by one.
  const missing = partsOf(content)
    .filter((part) => !densest.includes(dense(part)))
    .flatMap((part) => part.split(/[\s-]+/))
    .filter((word) => !densest.includes(dense(word)));
  expect(missing.filter((word) => word.length <= 16)).toEqual([]);
  expect(
    partsOf(content)
      .flatMap(figures)
      .filter((figure) => !text.includes(figure)),
  ).toEqual([]);
  expectInsideMargins(pdf);
  expectNoOverlap(pdf);
  return pdf;
}

describe.each(papers)('papers of many pages on %s', (paper) => {
  test.each(demoFiles.map((visit) => [visit.id, visit] as const))(
    'wiring: the record of %s says all it must, numbered, inside the margins',
    async (_, visit) => {
      const pdf = await expectWhole(recordOf(visit), paper);
      const pages = Number(/Pages: +(\d+)/.exec(poppler('pdfinfo', ['FILE'], pdf).out)?.[1]);
      expect(pages).toBeGreaterThan(2);
      expect(textOf(pdf)).toContain(`page ${pages} of ${pages}`);
    },
  );

  test.each(readTwice.map((visit) => [visit.id, visit] as const))(
    'wiring: before and after of %s says all it must on two pages at most',
    async (_, visit) => {
      const pdf = await expectWhole(beforeAfterOf(visit), paper);
      expect(poppler('pdfinfo', ['FILE'], pdf).out).toMatch(/Pages: +[12]\n/);
    },
  );

  test('wiring: the wall table stands on one page', async () => {
    const pdf = await expectWhole(composeWallTable(wallInput), paper);
    expect(poppler('pdfinfo', ['FILE'], pdf).out).toMatch(/Pages: +1\n/);
  });
});

describe('a crowded record', () => {
  test('wiring: longest names, a note of 4,000 letters and one without blanks lose nothing', async () => {
    const [demo] = demoFiles;
    if (demo === undefined) throw new Error('no demo visit');
    const { site, company, technician, note } = crowdedVisit;
    const visit = { ...demo, site: { ...demo.site, customer: site.customer }, company, technician, note };
    const record = recordOf(visit as typeof demo);
    const pdf = await renderPlainPdf(record);
    expectInsideMargins(pdf);
    expectNoOverlap(pdf);
    const text = dense(textOf(pdf)).replace(/Estimate,sheet.*?pageof/g, '');
    const start = dense(longText(4000)).slice(0, 300);
    expect(text).toContain(start);
  });

  test('identity: the same record gives the same bytes, with bookmarks, language and title', async () => {
    const [demo] = demoFiles;
    if (demo === undefined) throw new Error('no demo visit');
    const [first, second] = [await renderPlainPdf(recordOf(demo)), await renderPlainPdf(recordOf(demo))];
    expect(Buffer.from(first).equals(Buffer.from(second))).toBe(true);
    const raw = Buffer.from(first).toString('latin1');
    expect(raw).toContain('/Lang (en-US)');
    expect(raw).toContain('/Outlines');
    expect(poppler('pdfinfo', ['FILE'], first).out).toContain('Title:           Record of the visit:');
  });
});
