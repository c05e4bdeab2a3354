import type { Style } from '@react-pdf/types';

/** Greys only: a copy machine must not lose anything. Text is black. */
export const ink = {
  text: '#000000',
  rule: '#777777',
  fill: '#b8b8b8',
  light: '#e6e6e6',
  paper: '#ffffff',
} as const;

/** Sizes of type [pt]: what decides is set in `decides` or larger, evidence in `evidence`. */
const size = { title: 17, section: 13, decides: 12, evidence: 10, apr: 15 } as const;

/** Half an inch is the least; printers cut what is nearer to the edge. [pt] */
export const margin = { sides: 38, top: 36, bottom: 36, footer: 16 } as const;

/** How the type is set. A line height is only understood together with its size, so both always stand in one style. */
export type Look = {
  readonly scale: number;
  readonly text: Style;
  readonly strong: Style;
  readonly figures: Style;
  readonly evidence: Style;
  readonly evidenceStrong: Style;
  readonly section: Style;
  readonly title: Style;
  readonly pageTwoTitle: Style;
  readonly apr: Style;
  readonly chart: { readonly fontFamily: string[]; readonly fontSize: number };
};

/**
 * Styles of the sheet.
 *
 * @param families    of letters, in the order in which a letter is looked for
 * @param scale       1 as a rule; less only when a sheet cannot be kept to two pages otherwise
 * @param lineHeight  distance of lines over size of type
 */
export function makeLook(families: string[], scale: number, lineHeight: number): Look {
  const of = (points: number, leading = lineHeight): Style => ({
    fontSize: points * scale,
    lineHeight: leading,
  });
  const bold: Style = { fontWeight: 700 };
  return {
    scale,
    text: of(size.decides),
    strong: { ...of(size.decides), ...bold },
    figures: { ...of(size.decides), fontFeatureSettings: ['tnum'] },
    evidence: of(size.evidence),
    evidenceStrong: { ...of(size.evidence), ...bold },
    section: { ...of(size.section), ...bold },
    title: { ...of(size.title, 1.15), ...bold },
    pageTwoTitle: { ...of(14, 1.15), ...bold },
    apr: { ...of(size.apr, 1.1), ...bold },
    chart: { fontFamily: families, fontSize: size.evidence * scale },
  };
}
