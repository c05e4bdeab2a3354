import type { Sheet } from '@/lib/sheet/sheet';
import { drawableTexts } from './drawable-text';
import { firstAssumptions, fitPageOne, fitPageTwo, measuringFits, tightestFits } from './fit';
import { laidOut } from './laid-out';
import type { Heights } from './measure';
import { contentHeight, contentWidth, type Paper, paperSize } from './page-frame';
import { SheetDocument } from './sheet-document';
import { sheetFonts } from './sheet-fonts';
import { type MeasurePage, roomiestSetting, smallestLook } from './typesetting';

/** Height of the paper on which blocks are measured: high enough for any of them. [pt] */
const measuringHeight = 14_000;
/** Kept free, since heights are rounded when they are laid out; more when a page still runs over. [pt] */
const slacks = [2, 16, 40] as const;

/**
 * The sheet as a PDF of two pages, set as roomily as fits. Each page is laid out to measure and once more to print.
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
  const { paper } = options;
  const { families, draws } = await sheetFonts(JSON.stringify({ ...sheet, look: undefined }));
  const drawable = drawableSheet(sheet, draws);
  const measureOne = measuring(drawable, paper, 'one');
  const measureTwo = measuring(drawable, paper, 'two');
  let bytes = new Uint8Array();
  for (const slack of slacks) {
    const room = contentHeight(paper) - slack;
    const one = await roomiestSetting(families, measureOne, false, (heights) => fitPageOne(heights, room));
    // The first assumptions with their sources are worth a tighter line, but not smaller type.
    const two =
      (await roomiestSetting(families, measureTwo, true, (heights) =>
        fitPageTwo(heights, room, firstAssumptions),
      )) ?? (await roomiestSetting(families, measureTwo, false, (heights) => fitPageTwo(heights, room, 0)));
    const look = smallestLook(families);
    const printed = await laidOut((onRender) => (
      <SheetDocument
        sheet={drawable}
        size={paperSize[paper]}
        width={contentWidth(paper)}
        one={one ?? { look, fit: tightestFits[0] }}
        two={two ?? { look, fit: tightestFits[1] }}
        onRender={onRender}
      />
    ));
    bytes = printed.bytes;
    if (printed.pages <= 2) break;
  }
  return bytes;
}

/** The sheet in letters that can be drawn; says on page one when some had to be replaced. */
function drawableSheet(sheet: Sheet, draws: (codePoint: number) => boolean): Sheet {
  const { look, ...texts } = sheet;
  const drawn = drawableTexts(texts, draws);
  const value: Sheet = { ...drawn.value, ...(look === undefined ? {} : { look }) };
  const { replaced } = drawn;
  if (!replaced) return value;
  const { pageOne } = value;
  return { ...value, pageOne: { ...pageOne, facts: [...pageOne.facts, value.notDrawn] } };
}

/** Heights of a page's blocks in each look, laid out at most once. */
function measuring(sheet: Sheet, paper: Paper, page: 'one' | 'two'): MeasurePage {
  const done = new Map<string, Heights>();
  return async (look) => {
    const name = JSON.stringify(look.text);
    const known = done.get(name);
    if (known !== undefined) return known;
    const { heights } = await laidOut((onRender) => (
      <SheetDocument
        sheet={sheet}
        size={[paperSize[paper][0], measuringHeight]}
        width={contentWidth(paper)}
        one={page === 'one' ? { look, fit: measuringFits[0] } : undefined}
        two={page === 'two' ? { look, fit: measuringFits[1] } : undefined}
        onRender={onRender}
      />
    ));
    done.set(name, heights);
    return heights;
  };
}
