import {
  type Draft,
  type DraftValue,
  listAt,
  textAt,
  valueAt,
  withValue,
} from '@/components/draft/draft-tree';
import { asideOf, putAside } from '@/components/draft/put-aside';
import { t } from '@/components/words/words';

export const TARIFF_KINDS = ['flat', 'seasonal', 'tiered', 'timeOfUse'] as const;
export type TariffKind = (typeof TARIFF_KINDS)[number];

const SUMMER: readonly number[] = [6, 7, 8, 9];
const ALL_YEAR = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12];
const REST = ALL_YEAR.filter((month) => !SUMMER.includes(month));

/** Where a form begins; the user sets it right. */
const PEAK = { days: 'weekdays', fromHour: '16', toHour: '21' };
const FIRST_TIER_KWH = '1000';

/** Kind of the tariff in the form; a price alone is a flat one. */
export function tariffKind(draft: Draft): TariffKind {
  const kind = textAt(draft, 'tariff.kind');
  return TARIFF_KINDS.find((one) => one === kind) ?? 'flat';
}

/**
 * The draft of one visit with another kind of tariff, keeping what was typed of the one left while the page is open.
 *
 * Check: tests/screens/tariff-draft.test.ts
 */
export function switchedTariff(visitId: string, draft: Draft, kind: TariffKind): Draft {
  const from = tariffKind(draft);
  if (from === kind) return draft;
  const left = valueAt(draft, 'tariff');
  // what a switch filled in and nobody touched was not typed
  const typed = onlyText(left) !== onlyText(asideOf(visitId, `tariff made ${from}`));
  putAside(visitId, `tariff ${from}`, typed && pricesIn(left).length > 0 ? left : undefined);
  const last = asideOf(visitId, `tariff ${kind}`);
  const next = withTariffKind(draft, kind, last);
  putAside(visitId, `tariff made ${kind}`, last === undefined ? valueAt(next, 'tariff') : undefined);
  return next;
}

/**
 * The draft with another kind of tariff; the fixed charge stays. A kind typed before comes back as it was left. In one
 * never typed, names and months of seasons stay, and a price only where nothing but that one was typed, of the year or
 * of its season: where prices differ the fields stay empty rather than hold one that nobody typed.
 *
 * @param last  the kind's tariff as it was left, where it was typed before
 * Check: tests/screens/tariff-draft.test.ts
 */
export function withTariffKind(draft: Draft, kind: TariffKind, last?: DraftValue): Draft {
  const fixed = valueAt(draft, 'tariff.fixedUsdPerMonth');
  const tariff: Made = isRecord(last) ? { ...last } : { kind, ...madeTariff(draft, kind) };
  if (fixed === undefined) delete tariff.fixedUsdPerMonth;
  else tariff.fixedUsdPerMonth = fixed;
  return withValue(draft, 'tariff', tariff);
}

type Made = { [key: string]: DraftValue };

function madeTariff(draft: Draft, kind: TariffKind): Made {
  const tariff = valueAt(draft, 'tariff');
  const priced = pricedBy(tariff, 'energyUsdPerKwh');
  switch (kind) {
    case 'flat':
      return priced;
    case 'seasonal':
      return {
        seasons: seasonsOf(draft, [
          { label: t('tariff.summer'), months: [...SUMMER], ...priced },
          { label: t('tariff.rest'), months: REST, ...priced },
        ]),
      };
    case 'tiered':
      return {
        seasons: seasonsOf(draft, [{ months: ALL_YEAR, ...priced }]).map(({ energyUsdPerKwh, ...season }) => {
          const price: Made = energyUsdPerKwh === undefined ? {} : { energyUsdPerKwh };
          return { ...season, tiers: [{ upToKwh: FIRST_TIER_KWH, ...price }, price] };
        }),
      };
    case 'timeOfUse':
      return {
        periods: [{ label: t('tariff.peak'), months: ALL_YEAR, ...PEAK, ...priced }],
        ...pricedBy(tariff, 'otherUsdPerKwh'),
      };
  }
}

/** The seasons there are, each with its own price where it has only one; else those given. */
function seasonsOf(draft: Draft, fresh: readonly Made[]): Made[] {
  const seasons = listAt(draft, 'tariff.seasons');
  if (seasons.length === 0) return [...fresh];
  return seasons.map((season) => ({
    ...labelOf(season),
    months: [...listAt(season, 'months')],
    ...pricedBy(season, 'energyUsdPerKwh'),
  }));
}

function pricedBy(part: DraftValue | undefined, key: string): Made {
  const prices = pricesIn(part);
  const [price] = prices;
  return price !== undefined && new Set(prices.map(String)).size === 1 ? { [key]: price } : {};
}

/** Every price of energy typed in a part of a tariff. */
function pricesIn(node: DraftValue | undefined): DraftValue[] {
  if (typeof node !== 'object' || node === null) return [];
  return Object.entries(node).flatMap(([key, value]) =>
    key === 'energyUsdPerKwh' || key === 'otherUsdPerKwh' ? [value] : pricesIn(value),
  );
}

/** A tariff as text to compare, the fixed charge apart. */
function onlyText(tariff: DraftValue | undefined): string {
  if (!isRecord(tariff)) return '';
  const { fixedUsdPerMonth: _fixed, ...rest } = tariff;
  return JSON.stringify(rest);
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

function isRecord(node: DraftValue | undefined): node is Made {
  return typeof node === 'object' && node !== null && !Array.isArray(node);
}
