import type { EnergyResult } from '../energy/energy-result';
import type { WallTable } from '../finance/shop-rules/wall-table';
import { invariant } from '../math/invariant';
import type { Visit } from '../visit/visit';
import { climateWords } from './climate-words';
import { dollarWords } from './money-words';
import { counted, dateWords, type Locale, phrase, plainNumber, wordsOf } from './phrase';
import type { PlainDocument } from './plain-document';
import { roundUsdToRange } from './round-to-range';
import type { CompanyLook, LabelledText } from './sheet';

/** Largest repair price worth paying, by age of the unit and by what it costs more to run than a healthy one. */
export type WallTableInput = {
  /** Ages, rising; the rows. [years] */
  readonly agesYears: readonly number[];
  /** Running cost above that of a healthy unit as a share of it, rising; the columns. [1] */
  readonly lossFrac: readonly number[];
  /** By age, then by loss [USD]; 0 = not even for nothing; `undefined` = not known. */
  readonly largestPriceUsd: readonly (readonly (number | undefined)[])[];
  readonly stayYears: number;
  /** ISO date it was made on. */
  readonly madeOn: string;
  readonly modelVersion: string;
  readonly companyName?: string;
  readonly look?: CompanyLook;
  /** What it was made for: climate, price of electricity, price of a new unit. */
  readonly basis: readonly LabelledText[];
  readonly locale: Locale;
};

/**
 * The shop's wall table, as data.
 *
 * @throws invariant when the grid does not fit its ages and losses
 * Check: tests/sheet/wall-table.test.ts
 */
export function composeWallTable(input: WallTableInput): PlainDocument {
  const words = wordsOf(input.locale);
  const { agesYears, lossFrac, largestPriceUsd } = input;
  invariant(
    largestPriceUsd.length === agesYears.length &&
      largestPriceUsd.every((row) => row.length === lossFrac.length),
    'wall table: one row for each age and one column for each loss',
  );
  const heading = phrase(words, 'wall.heading');
  const stay = counted(words, 'years', input.stayYears);
  const share = 0.8 / lossFrac.length;
  const price = (usd: number | undefined) => {
    if (usd === undefined) return phrase(words, 'wall.unknown');
    const rounded = roundUsdToRange({ low: usd, likely: usd, high: usd }).low;
    return rounded <= 0 ? phrase(words, 'wall.never') : dollarWords(words, rounded);
  };
  const date = dateWords(words, input.madeOn);
  return {
    languageTag: words.tag,
    documentTitle: `${heading} (${date})`,
    subject: phrase(words, 'wall.subject'),
    author: input.companyName ?? phrase(words, 'general.notGiven'),
    visitDate: input.madeOn,
    footer: phrase(words, 'wall.footer', { date, version: input.modelVersion }),
    pageOf: words.phrases['footer.page'],
    notDrawn: { label: phrase(words, 'notDrawn.label'), text: phrase(words, 'notDrawn.text') },
    ...(input.look === undefined ? {} : { look: input.look }),
    heading,
    facts: input.basis,
    sections: [
      {
        id: 'wall',
        title: phrase(words, 'wall.title'),
        weight: 'decides',
        sentences: [phrase(words, 'wall.introduction', { stay }), phrase(words, 'wall.limits')],
        tables: [
          {
            caption: heading,
            columns: [
              { label: phrase(words, 'wall.corner'), align: 'left', share: 0.2 },
              ...lossFrac.map((loss) => ({
                label: phrase(words, 'wall.loss', { percent: plainNumber(words, loss * 100, 0) }),
                align: 'right' as const,
                share,
              })),
            ],
            rows: agesYears.map((age, i) => ({
              cells: [counted(words, 'wall.age', age), ...(largestPriceUsd[i] ?? []).map(price)],
            })),
          },
        ],
      },
    ],
  };
}

type Appraised = {
  readonly visit: Visit;
  readonly energy: EnergyResult;
  readonly modelVersion: string;
};

/**
 * What the composer needs, for a house, climate and tariff like that of a visit.
 *
 * @param table  from lib/finance, for the same visit
 * Check: tests/sheet/wall-table.test.ts
 */
export function wallTableOf(
  { visit, energy, modelVersion }: Appraised,
  table: WallTable,
  locale: Locale,
): WallTableInput {
  const words = wordsOf(locale);
  const { name, accent, logo } = visit.company ?? {};
  return {
    ...table,
    madeOn: visit.visitDate,
    modelVersion,
    ...(name === undefined ? {} : { companyName: name }),
    ...(accent === undefined && logo === undefined
      ? {}
      : { look: { ...(accent === undefined ? {} : { accent }), ...(logo === undefined ? {} : { logo }) } }),
    basis: [
      {
        label: phrase(words, 'fact.unit'),
        text: `${phrase(words, `unit.${visit.unit.kind}`)}, ${counted(words, 'unit.tons', visit.unit.nominalTons)}`,
      },
      { label: phrase(words, 'wall.climate'), text: climateWords(words, energy.climateName) },
      {
        label: phrase(words, 'wall.electricity'),
        text: phrase(words, 'quantity.usdPerKwh', {
          value: plainNumber(words, energy.priceUsdPerKwh * 100, 1),
        }),
      },
      { label: phrase(words, 'wall.newUnit'), text: dollarWords(words, Math.round(table.newPriceUsd)) },
    ],
    locale,
  };
}
