/** What became of the text in a numeric field. */
export type ParsedNumber =
  | { readonly kind: 'number'; readonly value: number }
  | { readonly kind: 'empty' }
  | { readonly kind: 'notNumber'; readonly text: string };

const UNITS =
  /(psig|psi|°?f|deg|btu\/?h|kw|w|volts?|v|amps?|a|cfm|fpm|in\.? ?w\.?c\.?|in2|sq ?in|uf|µf|mfd|%|\$|usd|tons?|years?|months?|ft2?|hours?|h|lb)\.?$/i;

/**
 * Number typed by a person: spaces, a unit typed along, a currency sign and thousands or decimal commas are
 * understood; anything else is said to be no number instead of being read "loosely" as another one.
 *
 * @param typed text of the field
 * @returns the number, `empty`, or `notNumber` with the text kept
 * Check: tests/visit/parse-number.test.ts
 */
export function parseNumber(typed: string): ParsedNumber {
  const bare = typed.trim();
  if (bare === '') return { kind: 'empty' };
  const noUnit = bare
    .replace(/^\$\s*/, '')
    .replace(UNITS, '')
    .trim()
    .replace(/^−/, '-');
  const noSpace = noUnit.replace(/(\d)[\s'](?=\d{3}(\D|$))/g, '$1');
  const american = /^-?\d{1,3}(,\d{3})+(\.\d+)?$/.test(noSpace) ? noSpace.replaceAll(',', '') : noSpace;
  const plain = american.replace(/^(-?\d+),(\d{1,2})$/, '$1.$2').replace(/^\+/, '');
  if (!/^-?(\d+\.?\d*|\.\d+)$/.test(plain)) return { kind: 'notNumber', text: typed };
  return { kind: 'number', value: Number(plain) };
}
