import { renderToBuffer } from '@react-pdf/renderer';
import type { Sheet } from '@/lib/sheet/sheet';
import { drawableSheet } from './drawable-text';
import {
  firstAssumptions,
  fitPageOne,
  fitPageTwo,
  measuringFits,
  type PageOneFit,
  type PageTwoFit,
  tightestFits,
} from './fit';
import { type Look, makeLook } from './look';
import { type Heights, heightsOf, pagesOf } from './measure';
import { contentHeight, contentWidth, type Paper, paperSize } from './page-frame';
import { SheetDocument } from './sheet-document';
import { registerSheetFonts } from './sheet-fonts';

/** Settings of the type from the usual one to the last resort; each page takes the first in which it fits. */
const typesettings = [
  { scale: 1, lineHeight: 1.18 },
  { scale: 1, lineHeight: 1.1 },
  { scale: 1, lineHeight: 1.04 },
  { scale: 0.92, lineHeight: 1.06 },
  { scale: 0.84, lineHeight: 1.06 },
  { scale: 0.76, lineHeight: 1.04 },
  { scale: 0.68, lineHeight: 1.02 },
] as const;

/** How many of them, from the first, have type of full size. */
const fullSized = typesettings.filter(({ scale }) => scale === 1).length;

const smallestLook = makeLook(0.68, 1.02);

/** Height of the paper on which blocks are measured: high enough for any of them. [pt] */
const measuringHeight = 14_000;
/** Kept free, since heights are rounded when they are laid out; more when a page still runs over. [pt] */
const slacks = [2, 16, 40] as const;

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
  const drawable = drawableSheet(sheet);
  const measure = measuring(drawable, paper);
  let bytes = new Uint8Array();
  for (const slack of slacks) {
    const room = contentHeight(paper) - slack;
    const one = await settingOf(measure, typesettings.length, (heights) => fitPageOne(heights, room));
    // The first assumptions with their sources are worth a tighter line, but not smaller type.
    const two =
      (await settingOf(measure, fullSized, (heights) => fitPageTwo(heights, room, firstAssumptions))) ??
      (await settingOf(measure, typesettings.length, (heights) => fitPageTwo(heights, room, 0)));
    const printed = await laidOut(drawable, paperSize[paper], paper, [
      one ?? { look: smallestLook, fit: tightestFits[0] },
      two ?? { look: smallestLook, fit: tightestFits[1] },
    ]);
    bytes = printed.bytes;
    if (printed.pages <= 2) break;
  }
  return bytes;
}

type Setting<Fit> = { readonly look: Look; readonly fit: Fit };
type Settings = readonly [Setting<PageOneFit>, Setting<PageTwoFit>];
type Measure = (typesetting: number) => Promise<{ readonly look: Look; readonly heights: Heights }>;

/** The roomiest of the first so many typesettings in which a page fits. */
async function settingOf<Fit>(
  measure: Measure,
  tried: number,
  fitOf: (heights: Heights) => Fit | undefined,
): Promise<Setting<Fit> | undefined> {
  for (let i = 0; i < tried; i++) {
    const { look, heights } = await measure(i);
    const fit = fitOf(heights);
    if (fit !== undefined) return { look, fit };
  }
  return undefined;
}

/** Heights of all blocks in each setting of the type, laid out at most once. */
function measuring(sheet: Sheet, paper: Paper): Measure {
  const done = new Map<number, Awaited<ReturnType<Measure>>>();
  return async (typesetting) => {
    const known = done.get(typesetting);
    if (known !== undefined) return known;
    const { scale, lineHeight } = typesettings[typesetting] ?? typesettings[0];
    const look = makeLook(scale, lineHeight);
    const settings: Settings = [
      { look, fit: measuringFits[0] },
      { look, fit: measuringFits[1] },
    ];
    const { heights } = await laidOut(sheet, [paperSize[paper][0], measuringHeight], paper, settings);
    done.set(typesetting, { look, heights });
    return { look, heights };
  };
}

type LaidOut = { readonly bytes: Uint8Array<ArrayBuffer>; readonly heights: Heights; readonly pages: number };

async function laidOut(
  sheet: Sheet,
  size: readonly [number, number],
  paper: Paper,
  settings: Settings,
): Promise<LaidOut> {
  let layout: unknown;
  const bytes = await renderToBuffer(
    <SheetDocument
      sheet={sheet}
      size={size}
      width={contentWidth(paper)}
      settings={settings}
      onRender={(rendered) => {
        layout = (rendered as { _INTERNAL__LAYOUT__DATA_?: unknown })._INTERNAL__LAYOUT__DATA_;
      }}
    />,
  );
  return { bytes: new Uint8Array(bytes), heights: heightsOf(layout), pages: pagesOf(layout) };
}
