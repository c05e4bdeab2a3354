import { readdirSync, readFileSync } from 'node:fs';
import { deflateSync } from 'node:zlib';
import { describe, expect, test } from 'vitest';
import type { Paper } from '@/components/pdf/page-frame';
import { renderSheetPdf } from '@/components/pdf/render-sheet-pdf';
import { appraise } from '@/lib/appraise/appraise';
import { composeSheet } from '@/lib/sheet/compose-sheet';
import type { Sheet } from '@/lib/sheet/sheet';
import { readVisit } from '@/lib/visit/read-visit';
import { allTexts } from '../sheet/fixtures/all-texts';
import { crowdedInput } from '../sheet/fixtures/crowded';
import { orificeInput } from '../sheet/fixtures/orifice-heat-pump';
import { expectInsideMargins, expectNoOverlap, oneLine, poppler, textOf } from './pdf-tools';

const papers: readonly Paper[] = ['letter', 'a4'];
/** What page one says in figures and words, cell by cell; all of it must be on the paper. */
function figuresOf(sheet: Sheet): string[] {
  const { choices, finding, leftOut, runningCost, waiting, advice, explanations } = sheet.pageOne;
  const cells = choices.rows.flatMap((row) => row.cells.flatMap((cell) => [cell.main, ...cell.details]));
  return [
    ...cells,
    ...finding.sentences,
    ...finding.dangers,
    ...[finding.conflict, leftOut].filter((text) => text !== undefined),
    ...runningCost.sentences,
    ...waiting.sentences,
    ...advice.sentences,
    ...advice.wouldChange,
    ...explanations,
  ];
}

/** What page two must hold whatever the space. */
function dutiesOf(sheet: Sheet): string[] {
  const { doubts, financing, cautions, excluded, signature, validity } = sheet.pageTwo;
  return [
    ...financing.plans.flatMap((plan) => [plan.apr, ...plan.rows.map((row) => row.text)]),
    ...(financing.plans.length > 0 ? [financing.terms] : []),
    ...cautions.sentences,
    ...excluded.sentences,
    ...signature.choices,
    signature.told,
    validity.line,
    ...(doubts.sentences.length > 0 ? [doubts.title] : []),
  ];
}

function expectOnPaper(pdf: Uint8Array, sheet: Sheet): void {
  const text = textOf(pdf);
  const wanted = [...figuresOf(sheet), ...dutiesOf(sheet)].map(oneLine);
  expect(wanted.length).toBeGreaterThan(40);
  expect(wanted.filter((part) => !text.includes(part))).toEqual([]);
}

/** How many doubts the paper prints, from the first, and how many it says it left out. */
function doubtsOnPaper(pdf: Uint8Array, sheet: Sheet): { shown: number; counted: number } {
  const text = textOf(pdf);
  const { sentences, omitted } = sheet.pageTwo.doubts;
  const found = sentences.map((sentence) => text.includes(oneLine(sentence)));
  const firstMissing = found.indexOf(false);
  const told = omitted.findLastIndex((words) => text.includes(` ${oneLine(words)}`));
  return { shown: firstMissing === -1 ? found.length : firstMissing, counted: Math.max(0, told) };
}

describe.each(papers)('the sheet on %s', (paper) => {
  const sheet = composeSheet(orificeInput);
  let once: Promise<Uint8Array> | undefined;
  const rendered = () => {
    once ??= renderSheetPdf(sheet, { paper });
    return once;
  };

  test('wiring: two pages of the paper asked for, read without a warning', async () => {
    const pdf = await rendered();
    const { out, err } = poppler('pdfinfo', ['FILE'], pdf);
    expect(err).toBe('');
    expect(out).toMatch(/Pages: +2\n/);
    expect(out).toMatch(paper === 'letter' ? /612 x 792/ : /595\.28 x 841\.89/);
    expect(poppler('pdftotext', ['FILE', '-'], pdf).err).toBe('');
  });

  test('wiring: its text gives back the sheet\u2019s own words and numbers', async () => {
    expectOnPaper(await rendered(), sheet);
  });

  test('identity: no word leaves the page or its margins', async () => {
    expectInsideMargins(await rendered());
  });

  test('identity: the same sheet gives the same bytes', async () => {
    const [first, second] = [await rendered(), await renderSheetPdf(sheet, { paper })];
    expect(Buffer.from(first).equals(Buffer.from(second))).toBe(true);
  });

  test('regression: contradictions and left-out choices reach page one; doubts without room are counted', async () => {
    const pressures = {
      code: 'dischargeNotAboveSuction',
      severity: 'conflict',
      readings: ['dischargePsig', 'suctionPsig'],
      values: { high: 40, suction: 41 },
    } as const;
    const many = Array.from({ length: 60 }, (_, i) => ({
      code: 'wetBulbAboveDryBulb',
      severity: 'doubt' as const,
      readings: [],
      values: { wetBulb: 80 + i, dryBulb: 70 },
    }));
    const full = composeSheet({
      ...orificeInput,
      findings: { ...orificeInput.findings, flags: [...many, pressures, ...orificeInput.findings.flags] },
      leftOut: [{ name: 'New 3-ton heat pump', why: 'loan term must be between 1 and 240 months' }],
    });
    const pdf = await renderSheetPdf(full, { paper });
    expect(poppler('pdfinfo', ['FILE'], pdf).out).toMatch(/Pages: +2\n/);
    expectOnPaper(pdf, full);
    expect(full.pageTwo.doubts.sentences[0]).toMatch(/^Discharge pressure \(40 psig\)/);
    const { shown, counted } = doubtsOnPaper(pdf, full);
    expect(shown).toBeGreaterThan(0);
    expect(shown + counted).toBe(63);
  });

  test('wiring: longest names, more choices than fit and three loans keep to two pages and lose nothing', async () => {
    const crowded = composeSheet(crowdedInput);
    const pdf = await renderSheetPdf(crowded, { paper });
    expect(poppler('pdfinfo', ['FILE'], pdf).out).toMatch(/Pages: +2\n/);
    expectInsideMargins(pdf);
    expectNoOverlap(pdf);
    // Long names break over lines, with or without a hyphen: compared without blanks and hyphens.
    const dense = (text: string) => text.replace(/[\s\u00ad-]+/g, '');
    const text = dense(textOf(pdf));
    const wanted = [...figuresOf(crowded), ...crowded.pageOne.facts.map((fact) => fact.text)].map(dense);
    expect(wanted.filter((part) => !text.includes(part))).toEqual([]);
  });
});

/** A PNG of black dots. */
function blackPng(widthPx: number, heightPx: number): string {
  const chunk = (name: string, data: Buffer) => {
    const body = Buffer.concat([Buffer.from(name, 'latin1'), data]);
    const [length, check] = [Buffer.alloc(4), Buffer.alloc(4)];
    length.writeUInt32BE(data.length);
    check.writeUInt32BE(crc32(body));
    return Buffer.concat([length, body, check]);
  };
  const head = Buffer.alloc(13);
  head.writeUInt32BE(widthPx, 0);
  head.writeUInt32BE(heightPx, 4);
  head.set([8, 0, 0, 0, 0], 8);
  const parts = [
    Buffer.from([137, 80, 78, 71, 13, 10, 26, 10]),
    chunk('IHDR', head),
    chunk('IDAT', deflateSync(Buffer.alloc((widthPx + 1) * heightPx))),
    chunk('IEND', Buffer.alloc(0)),
  ];
  return `data:image/png;base64,${Buffer.concat(parts).toString('base64')}`;
}

/** Source: PNG specification, annex D, status memory; libpng behind poppler refuses a wrong one. */
function crc32(bytes: Buffer): number {
  let crc = 0xffffffff;
  for (const byte of bytes) {
    crc ^= byte;
    for (let i = 0; i < 8; i++) crc = crc & 1 ? (crc >>> 1) ^ 0xedb88320 : crc >>> 1;
  }
  return (crc ^ 0xffffffff) >>> 0;
}

describe('the document', () => {
  const sheet = composeSheet(orificeInput);
  let once: Promise<Uint8Array> | undefined;
  const rendered = () => {
    once ??= renderSheetPdf(sheet);
    return once;
  };

  test('wiring: carries title, author and the visit\u2019s date, and no other', async () => {
    const { out } = poppler('pdfinfo', ['-isodates', 'FILE'], await rendered());
    expect(out).toContain(
      'Title:           Estimate: leave, repair or replace your heat pump (November 18, 2026)',
    );
    expect(out).toContain('Author:          Larkfield Heating and Air (invented)');
    expect(out).toContain('CreationDate:    2026-11-18T00:00:00Z');
    expect(out).not.toMatch(/ModDate: +(?!2026-11-18)/);
  });

  test('wiring: names its language and has a bookmark for each page', async () => {
    const raw = Buffer.from(await rendered()).toString('latin1');
    expect(raw).toContain('/Lang (en-US)');
    expect(raw.match(/\/Type \/Page\b/g)?.length).toBe(2);
    expect(raw).toContain('/Outlines');
  });

  test('wiring: every font is embedded', async () => {
    const { out } = poppler('pdffonts', ['FILE'], await rendered());
    const fonts = out.trim().split('\n').slice(2);
    expect(fonts.length).toBeGreaterThan(0);
    expect(fonts.filter((line) => !/AtkinsonHyperlegible/.test(line) || !/ yes yes /.test(line))).toEqual([]);
  });

  test('wiring: names in other letters are printed in their own fonts, in the right order, and on one baseline', async () => {
    const site = {
      ...orificeInput.visit.site,
      customer: '\u05e9\u05dc\u05d5\u05dd \u05db\u05d4\u05df',
      street: '12 Nguy\u1ec5n Way',
      town: '\u0645\u062d\u0645\u062f',
    };
    const visit = {
      ...orificeInput.visit,
      site,
      technician: '\u0395\u03bb\u03ad\u03bd\u03b7 \u0414\u043e\u043c',
    };
    const pdf = await renderSheetPdf(composeSheet({ ...orificeInput, visit }));
    const { out } = poppler('pdffonts', ['FILE'], pdf);
    expect(out).toMatch(/NotoSansHebrew/);
    expect(out).toMatch(/NotoSansArabic/);
    const text = textOf(pdf);
    for (const part of [
      '\u05e9\u05dc\u05d5\u05dd',
      '\u0645\u062d\u0645\u062f',
      ', 12 Nguy\u1ec5n Way,',
      '\u0395\u03bb\u03ad\u03bd\u03b7 \u0414\u043e\u043c',
    ]) {
      expect(text).toContain(part);
    }
    // Drawn from left to right, the second word of the Hebrew name comes first.
    expect(text.indexOf('\u05db\u05d4\u05df')).toBeLessThan(text.indexOf('\u05e9\u05dc\u05d5\u05dd'));
    expectInsideMargins(pdf);
    expectNoOverlap(pdf);
  });

  test('wiring: the company\u2019s mark and colour stand in the head; without them nothing does', async () => {
    const company = { ...orificeInput.visit.company, accent: '#14506e', logo: blackPng(64, 24) };
    const pdf = await renderSheetPdf(
      composeSheet({ ...orificeInput, visit: { ...orificeInput.visit, company } }),
    );
    expect(poppler('pdfinfo', ['FILE'], pdf).out).toMatch(/Pages: +2\n/);
    expect(poppler('pdfimages', ['-list', 'FILE'], pdf).out).toMatch(/image +64 +24/);
    expect(poppler('pdfimages', ['-list', 'FILE'], await rendered()).out).not.toContain('image ');
    expectInsideMargins(pdf);
    expectOnPaper(pdf, sheet);
  });

  test('wiring: what no font draws stands as its number, and page one says so', async () => {
    const visit = {
      ...orificeInput.visit,
      site: { ...orificeInput.visit.site, customer: '\u738b\u5c0f\u660e \u{1f600}' },
    };
    const pdf = await renderSheetPdf(composeSheet({ ...orificeInput, visit }));
    const text = textOf(pdf);
    expect(text).toContain('House: [U+738B U+5C0F U+660E] [U+1F600], 12 Sedge Lane');
    expect(text).toContain('Letters: some could not be printed');
    expect(textOf(await rendered())).not.toContain('could not be printed');
  });
});

describe('the demo visits', () => {
  const folder = new URL('../../data-demo/', import.meta.url);
  const files = readdirSync(folder).filter((file) => file.endsWith('.json'));

  test('wiring: there are at least five', () => {
    expect(files.length).toBeGreaterThanOrEqual(5);
  });

  const cases = files.flatMap((file) => papers.map((paper) => [file, paper] as const));
  test.each(cases)(
    'wiring: %s on %s keeps to two pages, says all it must and shows no bare code',
    async (file, paper) => {
      const reading = readVisit(JSON.parse(readFileSync(new URL(file, folder), 'utf8')));
      if (!reading.ok) throw new Error(JSON.stringify(reading.issues));
      const sheet = composeSheet({ ...appraise(reading.value), locale: 'en' });
      const pdf = await renderSheetPdf(sheet, { paper });
      const { out, err } = poppler('pdfinfo', ['FILE'], pdf);
      expect(err).toBe('');
      expect(out).toMatch(/Pages: +2\n/);
      expectOnPaper(pdf, sheet);
      expectInsideMargins(pdf);
      expectNoOverlap(pdf);
      const { shown, counted } = doubtsOnPaper(pdf, sheet);
      expect(shown + counted).toBe(sheet.pageTwo.doubts.sentences.length);
      // A code without words would stand as "someCode" or "family.someCode".
      expect(
        allTexts([sheet.pageOne, sheet.pageTwo]).filter((text) => /^[a-z]+(\.[a-z]+)*[A-Z]\w*$/.test(text)),
      ).toEqual([]);
    },
  );
});
