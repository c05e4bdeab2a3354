import { existsSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { Font } from '@react-pdf/renderer';
import { cacheShaping, type ShapingFont } from './cache-shaping';
import { unpackWoff } from './unpack-woff';

/** A file of letters: its name for the PDF, its npm package, its part of the alphabet, and what asks for it. */
type Face = {
  readonly family: string;
  readonly folder: string;
  readonly stem: string;
  /** Left out: always at hand. */
  readonly when?: RegExp;
};

/** Marks without ink that keep the order of letters written from right to left; the Hebrew and Arabic files hold them. */
const rightToLeft = /[\p{Script=Hebrew}\p{Script=Arabic}]/u;

/** Families in the order in which a letter is looked for; further scripts are only loaded when a text needs them. */
const faces: readonly Face[] = [
  {
    family: 'Atkinson Hyperlegible',
    folder: 'atkinson-hyperlegible',
    stem: 'atkinson-hyperlegible-latin',
  },
  {
    family: 'Atkinson Hyperlegible Ext',
    folder: 'atkinson-hyperlegible',
    stem: 'atkinson-hyperlegible-latin-ext',
  },
  noto(
    'Noto Sans Latin Ext',
    'noto-sans',
    'noto-sans-latin-ext',
    /[\u0100-\u024f\u1e00-\u1eff\u02b0-\u02ff]/u,
  ),
  noto(
    'Noto Sans Vietnamese',
    'noto-sans',
    'noto-sans-vietnamese',
    /[\u0300-\u036f\u01a0-\u01b0\u1ea0-\u1ef9]/u,
  ),
  noto('Noto Sans Greek', 'noto-sans', 'noto-sans-greek', /\p{Script=Greek}/u),
  noto('Noto Sans Greek Ext', 'noto-sans', 'noto-sans-greek-ext', /[\u1f00-\u1fff]/u),
  noto('Noto Sans Cyrillic', 'noto-sans', 'noto-sans-cyrillic', /\p{Script=Cyrillic}/u),
  noto('Noto Sans Cyrillic Ext', 'noto-sans', 'noto-sans-cyrillic-ext', /\p{Script=Cyrillic}/u),
  noto('Noto Sans Hebrew', 'noto-sans-hebrew', 'noto-sans-hebrew-hebrew', rightToLeft),
  noto('Noto Sans Arabic', 'noto-sans-arabic', 'noto-sans-arabic-arabic', /\p{Script=Arabic}/u),
];

function noto(family: string, folder: string, stem: string, when: RegExp): Face {
  return { family, folder, stem, when };
}

const weights = [400, 700] as const;
const longestWholeWord = 16;
const pieceOfLongWord = 8;

/** Fonts loaded for a text. */
export type SheetFonts = {
  /** Families in the order in which a letter is looked for. */
  readonly families: string[];
  /** Whether one of them draws the character. */
  readonly draws: (codePoint: number) => boolean;
};

const loaded = new Map<string, Promise<ShapingFont>>();

/**
 * Loads the fonts that a text needs; the files come with npm packages under the SIL Open Font License.
 *
 * @param text  everything that will be printed
 * @throws when a package is not installed
 * Check: tests/pdf/drawable-text.test.ts
 */
export async function sheetFonts(text: string): Promise<SheetFonts> {
  Font.registerHyphenationCallback(breakLongWords);
  const needed = faces.filter((face) => face.when?.test(text) ?? true);
  const fonts = await Promise.all(needed.map(loadOnce));
  return {
    families: needed.map((face) => face.family),
    draws: (codePoint) => fonts.some((font) => font.hasGlyphForCodePoint(codePoint)),
  };
}

function loadOnce(face: Face): Promise<ShapingFont> {
  const known = loaded.get(face.family);
  if (known !== undefined) return known;
  const loading = load(face);
  loaded.set(face.family, loading);
  return loading;
}

/** All families stand on one baseline: a letter of another family must not push its line down into the next. */
async function level(font: ShapingFont): Promise<void> {
  const [base] = faces;
  const first = base === undefined ? undefined : await loaded.get(base.family);
  if (first === undefined) return;
  for (const edge of ['ascent', 'descent'] as const) {
    Object.defineProperty(font, edge, { value: (first[edge] / first.unitsPerEm) * font.unitsPerEm });
  }
}

async function load({ family, folder, stem, when }: Face): Promise<ShapingFont> {
  const files = fontFolder(folder);
  const fonts = weights.map((fontWeight) => ({
    src: asDataUrl(unpackWoff(readFileSync(join(files, `${stem}-${fontWeight}-normal.woff`)))),
    fontWeight,
  }));
  Font.register({ family, fonts });
  const [regular] = await Promise.all(
    weights.map(async (fontWeight) => {
      const descriptor = { fontFamily: family, fontWeight, fontStyle: 'normal' } as const;
      await Font.load(descriptor);
      const font = cacheShaping(Font.getFont(descriptor)?.data);
      if (when !== undefined) await level(font);
      return font;
    }),
  );
  return regular as ShapingFont;
}

/** Words stay whole; only one too long for a narrow column may be broken, so that nothing is cut off. */
export function breakLongWords(word: string | null): string[] {
  if (word === null) return [];
  const letters = [...word];
  // Joined letters change their form where a word is broken.
  if (letters.length <= longestWholeWord || /\p{Script=Arabic}/u.test(word)) return [word];
  return Array.from({ length: Math.ceil(letters.length / pieceOfLongWord) }, (_, i) =>
    letters.slice(i * pieceOfLongWord, (i + 1) * pieceOfLongWord).join(''),
  );
}

function asDataUrl(font: Buffer): string {
  return `data:font/ttf;base64,${font.toString('base64')}`;
}

/** A package's files, looked for from the working folder upwards: bundlers move this module, not the package. */
function fontFolder(name: string): string {
  const inPackage = join('node_modules', '@fontsource', name, 'files');
  for (let folder = process.cwd(); ; folder = dirname(folder)) {
    const candidate = join(folder, inPackage);
    if (existsSync(candidate)) return candidate;
    if (folder === dirname(folder)) {
      throw new Error(`The font package @fontsource/${name} is not installed: run npm ci.`);
    }
  }
}
