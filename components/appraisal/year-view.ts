import { monthName } from '@/components/format/entry-words';
import { td, tdCode } from '@/components/words/decide-words';
import { t } from '@/components/words/words';
import type { EnergyResult, EnergyScenario } from '@/lib/energy/energy-result';
import {
  type ByUse,
  dearestDifference,
  dearestMonth,
  monthUsd,
  YEAR_USES,
  type YearUse,
  yearByUse,
} from '@/lib/energy/year-by-use';
import type { Comparison } from '@/lib/finance/comparison';
import { moneyAxis } from '@/lib/sheet/axis';
import { dollarWords, moneyRangeWords } from '@/lib/sheet/money-words';
import { lowerFirst, plainNumber, wordsOf } from '@/lib/sheet/phrase';
import { roundToRange, roundUsdToRange } from '@/lib/sheet/round-to-range';
import type { Axis } from '@/lib/sheet/sheet';
import { type LineLook, leaveId, nameAndLook } from './chart-view';
import { centWords } from './energy-words';

const words = wordsOf('en');

/** One unit's year: its months drawn, its uses told. */
export type YearPanel = {
  readonly id: string;
  readonly name: string;
  readonly look: LineLook;
  /** "about $1,900 a year" */
  readonly total: string;
  /** Dollars by use, January first. */
  readonly months: readonly (Readonly<Partial<Record<YearUse, number>>> & { readonly month: number })[];
};

export type YearTableRow = {
  readonly use?: YearUse;
  readonly name: string;
  readonly cells: readonly { readonly main: string; readonly small?: string }[];
};

/** Where the money of a year goes, for every unit on one scale. */
export type YearView = {
  readonly sentences: readonly string[];
  readonly uses: readonly { readonly use: YearUse; readonly name: string }[];
  readonly panels: readonly YearPanel[];
  /** Dollars a month, the same in all panels. */
  readonly axis: Axis;
  readonly rows: readonly YearTableRow[];
  readonly monthTable: {
    readonly header: readonly string[];
    readonly rows: readonly (readonly string[])[];
  };
  /** Price, grid factor and how the shares came about. */
  readonly notes: readonly string[];
  /** Grid factor in use. */
  readonly co2Used: 'marginal' | 'average';
};

type Shown = {
  readonly scenario: EnergyScenario;
  readonly split: ReturnType<typeof yearByUse>;
  readonly name: string;
  readonly look: LineLook;
};

/** Check: tests/screens/year-view.test.ts */
export function yearView(energy: EnergyResult, comparison: Comparison): YearView {
  const shown = [...energy.scenarios]
    .filter(({ id }) => id !== leaveId(comparison))
    .sort((a, b) => Number(b.id === 'asFound') - Number(a.id === 'asFound'))
    .map((scenario): Shown => {
      return { scenario, split: yearByUse(scenario.likely), ...nameAndLook(scenario.id, comparison) };
    });
  const uses = YEAR_USES.filter((use) => shown.some(({ split }) => aboutUsd(split.year[use].usd) > 0));
  const highest = Math.max(...shown.flatMap(({ split }) => split.months.map(monthUsd)));
  return {
    sentences: sentencesOf(shown),
    uses: uses.map((use) => ({ use, name: tdCode(`year.use.${use}`) })),
    panels: shown.map(panelOf),
    axis: moneyAxis(words, highest, td('year.axis')),
    rows: [...uses.map((use) => useRow(use, shown)), ...sumRows(shown)],
    monthTable: {
      header: [td('year.month'), ...shown.map(({ name }) => name)],
      rows: MONTHS.map((month, i) => [
        monthName(month, 'long'),
        ...shown.map(({ split }) => dollars(monthUsd(split.months[i] ?? NO_MONTH))),
      ]),
    },
    notes: notesOf(energy),
    co2Used: energy.co2?.used ?? 'marginal',
  };
}

const MONTHS = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12];

const NONE = { usd: 0, kwh: 0 };
const NO_MONTH: ByUse = { heating: NONE, strip: NONE, cooling: NONE, blower: NONE, fuel: NONE };

function panelOf({ scenario, split, name, look }: Shown): YearPanel {
  return {
    id: scenario.id,
    name,
    look,
    total: td('year.total', { cost: moneyRangeWords(words, scenario.costUsd).full }),
    months: split.months.map((month, i) => ({
      month: MONTHS[i] ?? 0,
      ...Object.fromEntries(YEAR_USES.map((use) => [use, month[use].usd])),
    })),
  };
}

function sentencesOf(shown: readonly Shown[]): string[] {
  const found = shown.find(({ scenario }) => scenario.id === 'asFound');
  const healthy = shown.find(({ scenario }) => scenario.id === 'healthy');
  if (found === undefined || healthy === undefined) return [];
  const more = found.scenario.likely.costUsd - healthy.scenario.likely.costUsd;
  const most = dearestDifference(found.split.year, healthy.split.year);
  const { month, usd } = dearestMonth(found.split.months);
  const dearest = td('year.dearest', { month: monthName(month, 'long'), usd: dollars(usd) });
  if (most === undefined || aboutUsd(more) <= 0) return [td('year.noMore'), dearest];
  const use = lowerFirst(tdCode(`year.use.${most.use}`));
  return [td('year.more', { more: dollars(more), use, usd: dollars(most.usd) }), dearest];
}

function useRow(use: YearUse, shown: readonly Shown[]): YearTableRow {
  return {
    use,
    name: tdCode(`year.use.${use}`),
    cells: shown.map(({ split }) => {
      const { usd, kwh } = split.year[use];
      return { main: dollars(usd), ...(kwh > 0 ? { small: kwhWords(kwh) } : {}) };
    }),
  };
}

/** The total, what is not met, and carbon dioxide. */
function sumRows(shown: readonly Shown[]): YearTableRow[] {
  const row = (name: string, cell: (year: Shown['scenario']) => YearTableRow['cells'][number]) => ({
    name,
    cells: shown.map(({ scenario }) => cell(scenario)),
  });
  const hours = (name: string, of: (year: EnergyScenario['likely']) => number) =>
    shown.some(({ scenario }) => aboutHours(of(scenario.likely)) > 0)
      ? [row(name, ({ likely }) => ({ main: hourWords(of(likely)) }))]
      : [];
  return [
    row(td('year.all'), ({ costUsd, likely }) => ({
      main: moneyRangeWords(words, costUsd).ends.likely,
      small: kwhWords(likely.totalKwh),
    })),
    ...hours(td('year.tooCold'), (year) => year.unmetHeatingHours),
    ...hours(td('year.tooWarm'), (year) => year.unmetCoolingHours),
    row(td('year.co2'), ({ likely }) => ({ main: poundWords(likely.co2Lb) })),
  ];
}

function notesOf({ price, co2 }: EnergyResult): string[] {
  const notes: string[] = [];
  if (price !== undefined) {
    notes.push(
      td(price.kind === 'tiered' ? 'year.priceTiers' : 'year.price', {
        marginal: centWords(price.marginalUsdPerKwh),
        average: centWords(price.averageUsdPerKwh),
      }),
    );
  }
  if (co2 !== undefined) {
    const factor = co2[co2.used];
    const values = { lb: plainNumber(words, factor.lbPerKwh, 2), region: factor.region };
    notes.push(td(co2.used === 'marginal' ? 'year.co2Marginal' : 'year.co2Average', values));
  }
  return [...notes, td('year.shares')];
}

function aboutUsd(usd: number): number {
  return roundUsdToRange({ low: usd, likely: usd, high: usd }).likely;
}

function dollars(usd: number): string {
  return dollarWords(words, aboutUsd(usd));
}

function about(value: number, step: number): number {
  return roundToRange({ low: value, likely: value, high: value }, step).likely;
}

function aboutHours(hours: number): number {
  return about(hours, 10);
}

function hourWords(hours: number): string {
  const n = aboutHours(hours);
  return n === 0 ? td('year.noHours') : td('year.hours', { n: plainNumber(words, n, 0) });
}

function kwhWords(kwh: number): string {
  return t('energy.kwh', { n: plainNumber(words, about(kwh, 50), 0) });
}

function poundWords(lb: number): string {
  return td('year.pounds', { n: plainNumber(words, about(lb, 100), 0) });
}
