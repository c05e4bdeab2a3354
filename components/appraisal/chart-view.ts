import { t } from '@/components/words/words';
import type { EnergyResult } from '@/lib/energy/energy-result';
import { stripShading, widestGap } from '@/lib/energy/strip-shading';
import type { Comparison } from '@/lib/finance/comparison';
import { moneyAxis } from '@/lib/sheet/axis';
import { plainNumber, wordsOf } from '@/lib/sheet/phrase';
import { niceStepNotAbove } from '@/lib/sheet/round-to-range';
import type { Axis } from '@/lib/sheet/sheet';
import { aboutUsd } from './about-usd';
import { crossingSentences } from './decide-view';

const words = wordsOf('en');

/** A line of a chart: its name stands at its end. */
export type ChartLine = { readonly id: string; readonly name: string; readonly look: LineLook };
export type LineLook = 'leave' | 'repair' | 'repairThenReplace' | 'replace' | 'load' | 'healthy';

/** Cost so far, year by year, in today's money. */
export type CostChart = {
  readonly lines: readonly ChartLine[];
  /** `at` by line id [USD]. */
  readonly points: readonly { readonly year: number; readonly at: Readonly<Record<string, number>> }[];
  readonly axis: Axis;
  /** Where the lines cross that of leaving it, a sentence per choice. */
  readonly sentences: readonly string[];
  /** The same numbers as text: header, then a row per year. */
  readonly table: { readonly header: readonly string[]; readonly rows: readonly (readonly string[])[] };
};

export function costChart(comparison: Comparison): CostChart {
  const choices = comparison.choices.filter((choice) => choice.priced);
  const years = choices[0]?.rows.map((row) => row.year) ?? [];
  const points = years.map((year, i) => ({
    year,
    at: Object.fromEntries(
      choices.map((choice) => [choice.id, choice.rows[i]?.cumulativePresentValueUsd ?? 0] as const),
    ),
  }));
  const highest = Math.max(0, ...points.flatMap((point) => Object.values(point.at)));
  return {
    lines: choices.map(({ id, name, kind }) => ({ id, name, look: kind })),
    points,
    axis: moneyAxis(words, highest, t('chart.costAxis')),
    sentences: crossingSentences(comparison),
    table: {
      header: [t('chart.year'), ...choices.map((choice) => choice.name)],
      rows: points.map((point) => [
        String(point.year),
        ...choices.map((choice) => aboutUsd(point.at[choice.id] ?? 0)),
      ]),
    },
  };
}

/** Heat the house asks for and heat each unit gives, by outdoor temperature. */
export type BalanceChart = {
  readonly lines: readonly ChartLine[];
  /** `at` by line id [Btu/h], "load" among them. */
  readonly points: readonly { readonly outdoorF: number; readonly at: Readonly<Record<string, number>> }[];
  /** Zero-based [Btu/h]. */
  readonly axis: Axis;
  readonly outdoorTicks: readonly number[];
  /** What the chart says, in one sentence. */
  readonly message: string;
  /** What the unit as found leaves to the strips, and where its name stands; left out where nothing is missing. */
  readonly shade?: ShadeView;
  /** Where strip heat begins to help, a sentence per unit. */
  readonly sentences: readonly string[];
  readonly table: { readonly header: readonly string[]; readonly rows: readonly (readonly string[])[] };
};

/** A shaded area between two heights, and a place for its name. */
export type ShadeView = {
  readonly points: readonly { readonly x: number; readonly between: readonly [number, number] }[];
  readonly label: string;
  readonly labelX: number;
  readonly labelY: number;
};

function shadeOf(energy: EnergyResult): ShadeView | undefined {
  const found = energy.scenarios.find(({ id }) => id === 'asFound');
  const shading = stripShading(found?.balance ?? []);
  const widest = widestGap(shading);
  if (widest === undefined) return undefined;
  return {
    points: shading.map((gap) => ({ x: gap.outdoorF, between: [gap.fromBtuh, gap.toBtuh] })),
    label: t('chart.strip'),
    labelX: widest.outdoorF,
    labelY: widest.atBtuh,
  };
}

/** The chart's message: where the unit as found, and a healthy one, can no longer keep up alone. */
function balanceMessage(energy: EnergyResult): string {
  const at = (id: string) => {
    const f = energy.scenarios.find((scenario) => scenario.id === id)?.balancePointF;
    return f === undefined ? undefined : plainNumber(words, f, 0);
  };
  const [found, healthy] = [at('asFound'), at('healthy')];
  if (found === undefined) return t('chart.keepsUp');
  if (healthy === undefined || healthy === found) return t('chart.below', { found });
  return t('chart.belowBoth', { found, healthy });
}

/** The balance chart of a heat pump; `undefined` when nothing heats. */
export function balanceChart(energy: EnergyResult, comparison: Comparison): BalanceChart | undefined {
  const shown = energy.scenarios.filter((s) => s.balance.length > 0 && s.id !== leaveId(comparison));
  const first = shown[0];
  if (first === undefined) return undefined;
  const lines: ChartLine[] = [
    { id: 'load', name: t('chart.load'), look: 'load' },
    ...shown.map((s) => ({ id: s.id, ...nameAndLook(s.id, comparison) })),
  ];
  const points = first.balance.map(({ outdoorF, loadBtuh }, i) => ({
    outdoorF,
    at: Object.fromEntries([
      ['load', loadBtuh] as const,
      ...shown.map((s) => [s.id, s.balance[i]?.capacityBtuh ?? 0] as const),
    ]),
  }));
  const shade = shadeOf(energy);
  return {
    lines,
    points,
    axis: heatAxis(Math.max(1, ...points.flatMap((point) => Object.values(point.at)))),
    message: balanceMessage(energy),
    ...(shade === undefined ? {} : { shade }),
    outdoorTicks: roundTens(points.map((point) => point.outdoorF)),
    sentences: shown.map((s) => {
      const { name } = nameAndLook(s.id, comparison);
      if (s.balancePointF === undefined) return t('chart.noBalance', { name });
      return t('chart.balance', { name, at: plainNumber(words, s.balancePointF, 0) });
    }),
    table: {
      header: [t('chart.outdoor'), ...lines.map((line) => line.name)],
      rows: points.map((point) => [
        t('chart.degrees', { at: point.outdoorF }),
        ...lines.map((line) => plainNumber(words, Math.round((point.at[line.id] ?? 0) / 100) * 100, 0)),
      ]),
    },
  };
}

/** Every ten degrees within the range of the points. */
function roundTens(outdoorF: readonly number[]): number[] {
  const first = Math.ceil(Math.min(...outdoorF) / 10);
  const last = Math.floor(Math.max(...outdoorF) / 10);
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => (first + i) * 10);
}

/** Zero-based axis of heat in thousands of Btu/h. */
function heatAxis(highestBtuh: number): Axis {
  const step = niceStepNotAbove(highestBtuh / 3);
  const count = Math.ceil(highestBtuh / step);
  const ticks = Array.from({ length: count + 1 }, (_, i) => ({
    at: i * step,
    label: plainNumber(words, (i * step) / 1_000, 1),
  }));
  return { max: count * step, ticks, unit: t('chart.heatAxis') };
}

/** Id of leaving it, which stands in charts as the unit as found. */
export function leaveId(comparison: Comparison): string | undefined {
  return comparison.choices.find((choice) => choice.kind === 'leave')?.id;
}

/** Name and look of a scenario in charts. */
export function nameAndLook(id: string, comparison: Comparison): { name: string; look: LineLook } {
  if (id === 'healthy') return { name: t('chart.healthy'), look: 'healthy' };
  if (id === 'asFound') return { name: t('chart.asFound'), look: 'leave' };
  const choice = comparison.choices.find((c) => c.id === id);
  return { name: choice?.name ?? id, look: choice?.kind ?? 'replace' };
}
