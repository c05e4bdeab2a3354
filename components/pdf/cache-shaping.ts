/** What is used of a font as the PDF library has parsed it. */
export type ShapingFont = {
  /** Of its letters above and below the baseline [font units]. */
  readonly ascent: number;
  readonly descent: number;
  readonly unitsPerEm: number;
  readonly hasGlyphForCodePoint: (codePoint: number) => boolean;
  layout: (text: string, ...rest: unknown[]) => GlyphRun;
};

type GlyphRun = { readonly glyphs: readonly unknown[]; readonly positions: readonly object[] };

/** Most runs of text whose glyphs are remembered; a sheet has about a thousand. */
const mostRuns = 8_000;

/**
 * Lets a font remember the glyphs of every run of text. A sheet is laid out several times, and most of its words stand
 * on every sheet: finding their glyphs anew took a fifth of the time. Whoever asks gets positions of its own, since one
 * part of the library scales them in place.
 *
 * @param font  as parsed by the PDF library; its shape is the library's own and checked by the test
 * @throws when it cannot lay out text
 * Check: tests/pdf/cache-shaping.test.ts
 */
export function cacheShaping(font: unknown): ShapingFont {
  const shaping = font as ShapingFont | undefined;
  if (typeof shaping?.layout !== 'function')
    throw new Error('The PDF library gave a font that lays out no text.');
  const plain = shaping.layout.bind(shaping);
  const known = new Map<string, GlyphRun>();
  shaping.layout = (text, ...rest) => {
    const key = `${JSON.stringify(rest)}${text}`;
    const run = known.get(key) ?? plain(text, ...rest);
    if (known.size >= mostRuns) known.clear();
    known.set(key, run);
    return ownCopy(run);
  };
  return shaping;
}

function ownCopy(run: GlyphRun): GlyphRun {
  const parts = { glyphs: [...run.glyphs], positions: run.positions.map((position) => ({ ...position })) };
  return Object.assign(Object.create(Object.getPrototypeOf(run)), run, parts);
}
