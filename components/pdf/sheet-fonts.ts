import { existsSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { Font } from '@react-pdf/renderer';
import { unpackWoff } from './unpack-woff';

/** Families in the order in which a glyph is looked for: Latin, then the further letters of European languages. */
export const sheetFontFamily = ['Atkinson Hyperlegible', 'Atkinson Hyperlegible Ext'];

const filesInPackage = join('node_modules', '@fontsource', 'atkinson-hyperlegible', 'files');
const longestWholeWord = 16;
const pieceOfLongWord = 8;

let registered = false;

/**
 * Registers the font that the sheet is set in; the files come with an npm package under the SIL Open Font License.
 *
 * @throws when the package is not installed
 */
export function registerSheetFonts(): void {
  if (registered) return;
  const folder = fontFolder();
  const face = (subset: string, weight: 400 | 700) => ({
    src: asDataUrl(
      unpackWoff(readFileSync(join(folder, `atkinson-hyperlegible-${subset}-${weight}-normal.woff`))),
    ),
    fontWeight: weight,
  });
  Font.register({ family: 'Atkinson Hyperlegible', fonts: [face('latin', 400), face('latin', 700)] });
  Font.register({
    family: 'Atkinson Hyperlegible Ext',
    fonts: [face('latin-ext', 400), face('latin-ext', 700)],
  });
  Font.registerHyphenationCallback(breakLongWords);
  registered = true;
}

/** Words stay whole; only one too long for a narrow column may be broken, so that nothing is cut off. */
export function breakLongWords(word: string | null): string[] {
  if (word === null) return [];
  const letters = [...word];
  if (letters.length <= longestWholeWord) return [word];
  return Array.from({ length: Math.ceil(letters.length / pieceOfLongWord) }, (_, i) =>
    letters.slice(i * pieceOfLongWord, (i + 1) * pieceOfLongWord).join(''),
  );
}

function asDataUrl(font: Buffer): string {
  return `data:font/ttf;base64,${font.toString('base64')}`;
}

/** The package's files, looked for from the working folder upwards: bundlers move this module, not the package. */
function fontFolder(): string {
  for (let folder = process.cwd(); ; folder = dirname(folder)) {
    const candidate = join(folder, filesInPackage);
    if (existsSync(candidate)) return candidate;
    if (folder === dirname(folder)) throw new Error('The font package is not installed: run npm ci.');
  }
}
