import { renderToBuffer } from '@react-pdf/renderer';
import type { Sheet } from '@/lib/sheet/sheet';
import { fitPageOne, fitPageTwo, measuringFits, type PageOneFit, type PageTwoFit } from './fit';
import { type Look, makeLook } from './look';
import { type Heights, heightsOf } from './measure';
import { contentHeight, contentWidth, type Paper, paperSize } from './page-frame';
import { SheetDocument } from './sheet-document';
import { registerSheetFonts } from './sheet-fonts';

/** Settings of the type from the usual one to the last resort, taken in turn until everything keeps to two pages. */
const typesettings = [
  { scale: 1, lineHeight: 1.18 },
  { scale: 1, lineHeight: 1.1 },
  { scale: 1, lineHeight: 1.04 },
  { scale: 0.92, lineHeight: 1.1 },
  { scale: 0.84, lineHeight: 1.08 },
  { scale: 0.76, lineHeight: 1.06 },
] as const;

/** Height of the paper on which blocks are measured: high enough for any of them. [pt] */
const measuringHeight = 14_000;
/** Kept free, since heights are rounded when they are laid out. [pt] */
const slack = 2;

/**
 * The sheet as a PDF of two pages, set as roomily as fits. It is laid out twice: once to measure, once to print.
 *
 * @param sheet    content from composeSheet
 * @param options  paper size; Letter when left out
 * @returns bytes of the file; the same sheet and paper give the same bytes
 * @throws when the font package is missing
 * Check: tests/pdf/render-sheet-pdf.test.ts
 */
export async function renderSheetPdf(
  sheet: Sheet,
  options: { readonly paper: Paper } = { paper: 'letter' },
): Promise<Uint8Array> {
  registerSheetFonts();
  const { paper } = options;
  const { look, fits } = await typesetting(sheet, paper);
  const bytes = await renderToBuffer(
    <SheetDocument
      sheet={sheet}
      size={paperSize[paper]}
      width={contentWidth(paper)}
      look={look}
      fits={fits}
    />,
  );
  return new Uint8Array(bytes);
}

type Typesetting = { readonly look: Look; readonly fits: readonly [PageOneFit, PageTwoFit] };

async function typesetting(sheet: Sheet, paper: Paper): Promise<Typesetting> {
  const room = contentHeight(paper) - slack;
  let tightest: Typesetting = { look: makeLook(1, 1), fits: measuringFits };
  for (const { scale, lineHeight } of typesettings) {
    const look = makeLook(scale, lineHeight);
    const heights = await measured(sheet, paper, look);
    const one = fitPageOne(heights, room);
    const two = fitPageTwo(heights, room);
    if (one !== undefined && two !== undefined) return { look, fits: [one, two] };
    tightest = { look, fits: [one ?? measuringFits[0], two ?? { ...measuringFits[1], assumptionRows: 0 }] };
  }
  return tightest;
}

async function measured(sheet: Sheet, paper: Paper, look: Look): Promise<Heights> {
  let layout: unknown;
  await renderToBuffer(
    <SheetDocument
      sheet={sheet}
      size={[paperSize[paper][0], measuringHeight]}
      width={contentWidth(paper)}
      look={look}
      fits={measuringFits}
      onRender={(rendered) => {
        layout = (rendered as { _INTERNAL__LAYOUT__DATA_?: unknown })._INTERNAL__LAYOUT__DATA_;
      }}
    />,
  );
  return heightsOf(layout);
}
