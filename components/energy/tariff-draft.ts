import {
  type Draft,
  type DraftValue,
  listAt,
  textAt,
  valueAt,
  withValue,
} from '@/components/draft/draft-tree';
import { t } from '@/components/words/words';

export const TARIFF_KINDS = ['flat', 'seasonal', 'tiered', 'timeOfUse'] as const;
export type TariffKind = (typeof TARIFF_KINDS)[number];

const SUMMER: readonly number[] = [6, 7, 8, 9];
const ALL_YEAR = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12];
const REST = ALL_YEAR.filter((month) => !SUMMER.includes(month));

/** Kind of the tariff in the form; a price alone is a flat one. */
export function tariffKind(draft: Draft): TariffKind {
  const kind = textAt(draft, 'tariff.kind');
  return TARIFF_KINDS.find((one) => one === kind) ?? 'flat';
}

/**
 * The draft with another kind of tariff: what fits is carried over, the price that stood first above all.
 *
 * Check: tests/screens/tariff-draft.test.ts
 */
export function withTariffKind(draft: Draft, kind: TariffKind): Draft {
  const price = firstPrice(draft);
  const priced = price === undefined ? {} : { energyUsdPerKwh: price };
  const fixed = valueAt(draft, 'tariff.fixedUsdPerMonth');
  const seasons = listAt(draft, 'tariff.seasons');
  const parts = (inSeason: { [key: string]: DraftValue }): DraftValue[] =>
    seasons.length > 0
      ? seasons.map((season) => ({ months: [...listAt(season, 'months')], ...labelOf(season), ...inSeason }))
      : [
          { label: t('tariff.summer'), months: [...SUMMER], ...inSeason },
          { label: t('tariff.rest'), months: REST, ...inSeason },
        ];
  const made: Readonly<Record<TariffKind, { [key: string]: DraftValue }>> = {
    flat: priced,
    seasonal: { seasons: parts(priced) },
    tiered: { seasons: [{ months: ALL_YEAR, tiers: [{ upToKwh: '1000', ...priced }, { ...priced }] }] },
    timeOfUse: {
      periods: [
        {
          label: t('tariff.peak'),
          months: ALL_YEAR,
          days: 'weekdays',
          fromHour: '16',
          toHour: '21',
          ...priced,
        },
      ],
      ...(price === undefined ? {} : { otherUsdPerKwh: price }),
    },
  };
  return withValue(draft, 'tariff', {
    kind,
    ...made[kind],
    ...(fixed === undefined ? {} : { fixedUsdPerMonth: fixed }),
  });
}

/**
 * The draft with a month given to a season, or taken from it; a month belongs to one season, so the others lose it.
 *
 * Check: tests/screens/tariff-draft.test.ts
 */
export function withSeasonMonth(draft: Draft, at: number, month: number, on: boolean): Draft {
  const seasons = listAt(draft, 'tariff.seasons').map((season, i) => {
    const others = listAt(season, 'months').filter((m) => m !== month);
    const months = on && i === at ? inOrder([...others, month]) : others;
    return typeof season === 'object' && season !== null ? { ...season, months } : season;
  });
  return withValue(draft, 'tariff.seasons', seasons as DraftValue[]);
}

/** The draft with a month switched at one period; periods may share months. Check: tests/screens/tariff-draft.test.ts */
export function withPeriodMonth(draft: Draft, at: number, month: number, on: boolean): Draft {
  const path = `tariff.periods.${at}.months`;
  const others = listAt(draft, path).filter((m) => m !== month);
  return withValue(draft, path, on ? inOrder([...others, month]) : others);
}

function inOrder(months: readonly DraftValue[]): DraftValue[] {
  return [...months].sort((a, b) => Number(a) - Number(b));
}

function labelOf(season: DraftValue): { label?: string } {
  const label = textAt(season, 'label');
  return label === '' ? {} : { label };
}

const FIRST_PRICES = [
  'energyUsdPerKwh',
  'seasons.0.energyUsdPerKwh',
  'seasons.0.tiers.0.energyUsdPerKwh',
  'otherUsdPerKwh',
  'periods.0.energyUsdPerKwh',
];

function firstPrice(draft: Draft): DraftValue | undefined {
  return FIRST_PRICES.map((place) => valueAt(draft, `tariff.${place}`)).find((price) => price !== undefined);
}
