import type { PlainDocument } from '@/lib/sheet/plain-document';
import { drawableTexts } from './drawable-text';
import { laidOut } from './laid-out';
import { makeLook } from './look';
import { type Paper, paperSize } from './page-frame';
import { PlainPages } from './plain-pages';
import { sheetFonts } from './sheet-fonts';

const lineHeight = 1.15;

/**
 * A document of sections as a PDF of as many pages as it needs, numbered "page x of y".
 *
 * @param content  from lib/sheet (record, before and after, wall table)
 * @param options  paper size; Letter when left out
 * @returns bytes of the file; the same content and paper give the same bytes
 * @throws when the font package is missing
 * Check: tests/pdf/render-plain-pdf.test.ts
 */
export async function renderPlainPdf(
  content: PlainDocument,
  options: { readonly paper: Paper } = { paper: 'letter' },
): Promise<Uint8Array<ArrayBuffer>> {
  const { look: companyLook, ...texts } = content;
  const { families, draws } = await sheetFonts(JSON.stringify(texts));
  const { value, replaced } = drawableTexts(texts, draws);
  const drawable: PlainDocument = {
    ...value,
    ...(companyLook === undefined ? {} : { look: companyLook }),
    facts: replaced ? [...value.facts, value.notDrawn] : value.facts,
  };
  const { bytes } = await laidOut((onRender) => (
    <PlainPages
      content={drawable}
      size={paperSize[options.paper]}
      look={makeLook(families, 1, lineHeight)}
      onRender={onRender}
    />
  ));
  return bytes;
}
