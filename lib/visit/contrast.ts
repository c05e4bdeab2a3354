/** Least contrast of text and marks on white. Source: WCAG 2.2, success criterion 1.4.3 (AA), status read. */
export const leastContrast = 4.5;

type Rgb = readonly [number, number, number];

/**
 * Contrast of a colour on white paper.
 *
 * @param colour  "#rrggbb"
 * @returns 1 (white) to 21 (black)
 * Source: WCAG 2.2, definitions of contrast ratio and relative luminance, status memory
 * Check: tests/visit/contrast.test.ts
 */
export function contrastOnWhite(colour: string): number {
  return 1.05 / (luminance(rgbOf(colour)) + 0.05);
}

/**
 * The nearest darker shade of a colour that can be read on white: the same hue, mixed with black as little as needed.
 *
 * @param colour  "#rrggbb"
 * @returns the colour itself when it can be read already
 * Check: tests/visit/contrast.test.ts
 */
export function nearestReadable(colour: string): string {
  const rgb = rgbOf(colour);
  for (let percent = 100; percent > 0; percent--) {
    const shade = hexOf(rgb, percent / 100);
    if (contrastOnWhite(shade) >= leastContrast) return shade;
  }
  return '#000000';
}

function rgbOf(colour: string): Rgb {
  const at = (from: number) => Number.parseInt(colour.slice(from, from + 2), 16) / 255;
  return [at(1), at(3), at(5)];
}

function hexOf(rgb: Rgb, share: number): string {
  const parts = rgb.map((part) =>
    Math.floor(part * share * 255 + 1e-9)
      .toString(16)
      .padStart(2, '0'),
  );
  return `#${parts.join('')}`;
}

function luminance([red, green, blue]: Rgb): number {
  return 0.2126 * linear(red) + 0.7152 * linear(green) + 0.0722 * linear(blue);
}

function linear(part: number): number {
  return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
}
