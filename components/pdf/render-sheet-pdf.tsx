import { renderToBuffer } from '@react-pdf/renderer';
import type { Sheet } from '@/lib/sheet/sheet';
import { fitPageOne, fitPageTwo, measuringFits, type PageOneFit, type PageTwoFit, tightestFits } from './fit';
import { type Look, makeLook } from './look';
import { type Heights, heightsOf, pagesOf } from './measure';
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
/** Kept free, since heights are rounded when they are laid out; more when a page still runs over. [pt] */
const leastSlack = 2;
const moreSlack = 14;
const mostSlack = 44;

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
  for (let slack = leastSlack; ; slack += moreSlack) {
    const setting = await typesetting(sheet, paper, contentHeight(paper) - slack);
    const { bytes, pages } = await printed(sheet, paper, setting);
    if (pages <= 2 || slack >= mostSlack) return bytes;
  }
}

type Typesetting = { readonly look: Look; readonly fits: readonly [PageOneFit, PageTwoFit] };

/** The roomiest setting in which everything keeps to two pages; the tightest there is when nothing does. */
async function typesetting(sheet: Sheet, paper: Paper, room: number): Promise<Typesetting> {
  let last: Typesetting = { look: makeLook(1, 1), fits: measuringFits };
  for (const { scale, lineHeight } of typesettings) {
    const look = makeLook(scale, lineHeight);
    const { heights } = await laidOut(sheet, [paperSize[paper][0], measuringHeight], paper, {
      look,
      fits: measuringFits,
    });
    const one = fitPageOne(heights, room);
    const two = fitPageTwo(heights, room);
    last = { look, fits: [one ?? tightestFits[0], two ?? tightestFits[1]] };
    if (one !== undefined && two !== undefined) return last;
  }
  return last;
}

async function printed(sheet: Sheet, paper: Paper, setting: Typesetting) {
  return laidOut(sheet, paperSize[paper], paper, setting);
}

type LaidOut = { readonly bytes: Uint8Array; readonly heights: Heights; readonly pages: number };

async function laidOut(
  sheet: Sheet,
  size: readonly [number, number],
  paper: Paper,
  { look, fits }: Typesetting,
): Promise<LaidOut> {
  let layout: unknown;
  const bytes = await renderToBuffer(
    <SheetDocument
      sheet={sheet}
      size={size}
      width={contentWidth(paper)}
      look={look}
      fits={fits}
      onRender={(rendered) => {
        layout = (rendered as { _INTERNAL__LAYOUT__DATA_?: unknown })._INTERNAL__LAYOUT__DATA_;
      }}
    />,
  );
  return { bytes: new Uint8Array(bytes), heights: heightsOf(layout), pages: pagesOf(layout) };
}
