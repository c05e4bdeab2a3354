import units from './data/typed-units.json';

/** What became of the text in a numeric field. */
export type ParsedNumber =
  | { readonly kind: 'number'; readonly value: number }
  | { readonly kind: 'empty' }
  | { readonly kind: 'notNumber'; readonly text: string }
  /** A number with a unit the field is not in. */
  | { readonly kind: 'otherUnit'; readonly text: string };

const SPELLINGS: Readonly<Record<string, readonly string[]>> = units.spellings;
const FACTORS: Readonly<Record<string, Readonly<Record<string, number>>>> = units.factors;
const KNOWN = new Set(Object.values(SPELLINGS).flat());

/**
 * Number typed by a person: spaces, a unit typed along, a currency sign and thousands or decimal commas are
 * understood; anything else is said to be no number instead of being read "loosely" as another one.
 *
 * @param typed text of the field
 * @param unit  unit beside the field ("psig", "°F"; "" = a plain number); left out = any unit may stand behind the number
 * @returns the number in the field's unit; `empty`; `notNumber` or `otherUnit` with the text kept
 * A unit that differs by a fixed factor is converted ("5 ft" in a field of inches is 60).
 * Check: tests/visit/parse-number.test.ts
 */
export function parseNumber(typed: string, unit?: string): ParsedNumber {
  const bare = typed.trim();
  if (bare === '') return { kind: 'empty' };
  const [, number = '', tail = ''] = /^(\$?\s*[-+−]?[\d.,\s]*(?:'\d{3}[\d.,\s]*)*)(.*)$/s.exec(bare) ?? [];
  const value = numberIn(number);
  const written = tail.trim().toLowerCase().replace(/\s+/g, ' ').replace(/\.$/, '');
  if (value === undefined || (written !== '' && !KNOWN.has(written))) {
    return { kind: 'notNumber', text: typed };
  }
  const factor = factorOf(written, unit);
  if (factor === undefined) return { kind: 'otherUnit', text: typed };
  return { kind: 'number', value: factor === 1 ? value : Number((value * factor).toPrecision(15)) };
}

function numberIn(digits: string): number | undefined {
  const bare = digits
    .replace(/^\$\s*/, '')
    .trim()
    .replace(/^−/, '-');
  const noSpace = bare.replace(/(\d)[\s'](?=\d{3}(\D|$))/g, '$1');
  const american = /^-?\d{1,3}(,\d{3})+(\.\d+)?$/.test(noSpace) ? noSpace.replaceAll(',', '') : noSpace;
  const plain = american.replace(/^(-?\d+),(\d{1,2})$/, '$1.$2').replace(/^\+/, '');
  return /^-?(\d+\.?\d*|\.\d+)$/.test(plain) ? Number(plain) : undefined;
}

/** What the typed number is multiplied with; undefined where the field is not in that unit. */
function factorOf(written: string, unit: string | undefined): number | undefined {
  if (written === '' || unit === undefined) return 1;
  if (SPELLINGS[unit]?.includes(written) === true) return 1;
  const other = Object.entries(FACTORS[unit] ?? {}).find(([name]) => SPELLINGS[name]?.includes(written));
  if (other !== undefined) return other[1];
  // a plain field, or a unit nobody listed, takes any
  return SPELLINGS[unit] === undefined ? 1 : undefined;
}
