import { dateWords } from '@/components/format/time-words';
import { td } from '@/components/words/decide-words';
import { t, tCode } from '@/components/words/words';
import type { Appraisal } from '@/lib/appraise/appraisal';
import type { BillUse } from '@/lib/energy/bills/bill-use';
import { fitLine } from '@/lib/energy/bills/fit-line';
import rules from '@/lib/energy/data/bill-rules.json';
import { type PriceClock, priceClocks } from '@/lib/energy/tariff/price-clock';
import { plainNumber, wordsOf } from '@/lib/sheet/phrase';
import { niceStepNotAbove } from '@/lib/sheet/round-to-range';
import type { Axis } from '@/lib/sheet/sheet';
import type { Saying } from '@/lib/visit/wording';
import { centWords, monthSpanWords } from './energy-words';

const words = wordsOf('en');

/** A sentence about one bill, or about all of them where no first day is given. */
export type BillNote = { readonly fromDate?: string; readonly words: string };

/** Bills against the weather, in words and as a plot. */
export type BillsView = {
  readonly verdict: BillUse['verdict'];
  readonly verdictWords: string;
  readonly notes: readonly BillNote[];
  /** Fit and bias, each with what it means; empty without a fit. */
  readonly measures: readonly { readonly name: string; readonly value: string; readonly meaning: string }[];
  /** How a year's electricity divides; left out where the bills cannot be used. */
  readonly split?: string;
  readonly plot?: BillPlotView;
};

export type BillPlotView = {
  readonly points: readonly { readonly meanF: number; readonly kwhPerDay: number }[];
  readonly line: readonly { readonly meanF: number; readonly kwhPerDay: number }[];
  readonly meanTicks: readonly number[];
  readonly axis: Axis;
  readonly table: { readonly header: readonly string[]; readonly rows: readonly (readonly string[])[] };
};

/** The day of a time-of-use tariff, months priced alike together. */
export type ClockView = {
  readonly months: string;
  readonly days: readonly {
    readonly name: string;
    readonly spans: readonly {
      readonly fromHour: number;
      readonly hours: number;
      /** "30¢"; left out in a gap. */
      readonly price?: string;
      /** Which of the tariff's prices it is, cheapest 0; gaps have none. */
      readonly rank?: number;
      readonly words: string;
    }[];
  }[];
};

export type TariffView = {
  /** What a kilowatt-hour costs and where that comes from. */
  readonly used: string;
  readonly assumed: boolean;
  readonly notes: readonly string[];
  readonly clocks: readonly ClockView[];
};

/** What the forms for house, bills and tariff tell besides what was typed. */
export type EnergyInputsView = {
  readonly bills?: BillsView;
  readonly tariff: TariffView;
  /** What stands in for a field left empty, by its path. */
  readonly assumed: Readonly<Record<string, string>>;
  /** Sentences about own temperature bins and degree-days. */
  readonly climateNotes: readonly string[];
  /** Where the year as calculated and what the customer says do not agree. */
  readonly comfortNotes: readonly string[];
};

/** Check: tests/screens/energy-inputs-view.test.ts */
export function energyInputsView(appraisal: Appraisal, told: (saying: Saying) => string): EnergyInputsView {
  const { visit, energy } = appraisal;
  const { bills } = energy;
  const about = (start: RegExp) => energy.notes.filter((note) => start.test(note.code)).map(told);
  return {
    ...(bills === undefined ? {} : { bills: billsView(bills, energy.notes, told) }),
    tariff: {
      ...priceWords(appraisal),
      notes: about(/^tariff/),
      clocks: visit.tariff?.kind === 'timeOfUse' ? priceClocks(visit.tariff).map(clockView) : [],
    },
    assumed: assumedFields(appraisal),
    climateNotes: about(/^(ownBins|degreeDays)/),
    comfortNotes: about(/^comfort/),
  };
}

function billsView(bills: BillUse, all: readonly Saying[], told: (saying: Saying) => string): BillsView {
  const { fit, verdict } = bills;
  // what the load could not take from them stands among the notes of the year
  const ofBills = all.filter((note) => note.code.startsWith('bills'));
  const notes = ofBills.map((note): BillNote => {
    const { from, to } = note.values ?? {};
    // a gap is said at the bill that ends it
    const at = note.code === 'billsGap' ? to : from;
    return { ...(typeof at === 'string' ? { fromDate: at } : {}), words: told(withDateWords(note)) };
  });
  const head = { verdict, verdictWords: t(`bills.${verdict}`), notes };
  if (fit === undefined) return { ...head, measures: [] };
  const percent = (frac: number) => t('energy.percent', { n: plainNumber(words, frac * 100, 0) });
  const limits = rules.verdict;
  return {
    ...head,
    measures: [
      {
        name: td('bills.scatter'),
        value: percent(fit.cvRmseFrac),
        meaning: td('bills.scatterMeaning', {
          accept: percent(limits.acceptCvRmseFrac),
          most: percent(limits.doubtfulCvRmseFrac),
        }),
      },
      {
        name: td('bills.bias'),
        value: percent(fit.nmbeFrac),
        meaning: td('bills.biasMeaning', { most: percent(limits.nmbeFrac) }),
      },
    ],
    ...(verdict === 'unusable'
      ? {}
      : {
          split: td('bills.split', {
            heating: kwhWords(bills.heatingKwhPerYear),
            cooling: kwhWords(bills.coolingKwhPerYear),
            base: kwhWords(bills.baseKwhPerYear),
          }),
        }),
    plot: plotView(bills, fit),
  };
}

function plotView(bills: BillUse, fit: NonNullable<BillUse['fit']>): BillPlotView {
  const meansF = bills.points.map((point) => point.meanF);
  const lowF = Math.floor(Math.min(...meansF) / 10) * 10;
  const highF = Math.ceil(Math.max(...meansF) / 10) * 10;
  const line = fitLine(fit, lowF, highF);
  const highest = Math.max(...[...line, ...bills.points].map((point) => point.kwhPerDay));
  return {
    points: bills.points.map(({ meanF, kwhPerDay }) => ({ meanF, kwhPerDay })),
    line,
    meanTicks: Array.from({ length: (highF - lowF) / 10 + 1 }, (_, i) => lowF + 10 * i),
    axis: plainAxis(highest, td('bills.plotY')),
    table: {
      header: [td('bills.period'), t('bills.plotX'), td('bills.perDay'), td('bills.expected')],
      rows: bills.points.map((point, i) => [
        t('bills.fromTo', { from: dateWords(point.fromDate), to: dateWords(point.toDate) }),
        plainNumber(words, point.meanF, 0),
        plainNumber(words, point.kwhPerDay, 1),
        plainNumber(words, bills.expectedKwhPerDay[i] ?? 0, 1),
      ]),
    },
  };
}

/** Zero-based axis of a plain quantity. */
export function plainAxis(highest: number, unit: string): Axis {
  const step = niceStepNotAbove(Math.max(highest, 1) / 3);
  const count = Math.ceil(highest / step);
  const ticks = Array.from({ length: count + 1 }, (_, i) => ({
    at: i * step,
    label: plainNumber(words, i * step, 1),
  }));
  return { max: count * step, ticks, unit };
}

function kwhWords(kwh: number): string {
  return t('energy.kwh', { n: plainNumber(words, Number(kwh.toPrecision(2)), 0) });
}

/** Dates inside a sentence as people write them. */
function withDateWords(saying: Saying): Saying {
  const values = Object.entries(saying.values ?? {}).map(([name, value]) => [
    name,
    typeof value === 'string' && /^\d{4}-\d{2}-\d{2}$/.test(value) ? dateWords(value) : value,
  ]);
  return { ...saying, values: Object.fromEntries(values) };
}

function priceWords({ visit, energy }: Appraisal): { used: string; assumed: boolean } {
  const price = energy.assumptions.find(({ name }) => name === 'electricityPrice');
  const assumed = energy.priceBasis === 'assumed';
  const values = { price: centWords(energy.priceUsdPerKwh), source: price?.source ?? '' };
  if (visit.tariff !== undefined) return { used: givenWords(energy, values), assumed };
  return { used: td(assumed ? 'tariff.assumed' : 'tariff.fromBills', values), assumed };
}

/** A price by amount is what the unit pays on top of the rest of the house, no average of the bill. */
function givenWords(energy: Appraisal['energy'], values: { readonly price: string }): string {
  const byAmount = energy.price?.kind === 'tiered';
  const used = td(byAmount ? 'tariff.givenTiers' : 'tariff.given', values);
  return energy.priceBasis === 'assumed' ? `${used} ${td('tariff.givenGaps')}` : used;
}

/** Fields of the house whose value is assumed while they are empty, by the assumption's name. */
const ASSUMED_FIELDS: Readonly<Record<string, string>> = {
  heatingRoomF: 'site.heatingSetpointF',
  coolingRoomF: 'site.coolingSetpointF',
  cutOutF: 'unit.cutOutF',
  stripKw: 'unit.electricHeatKw',
};

function assumedFields({ energy }: Appraisal): Record<string, string> {
  return Object.fromEntries(
    energy.assumptions.flatMap(({ name, value, basis }) => {
      const path = ASSUMED_FIELDS[name];
      if (path === undefined || basis !== 'assumed') return [];
      return [[path, t('energy.leftEmpty', { value: value.replace(/ F$/, ' °F') })]];
    }),
  );
}

function clockView({ months, days }: PriceClock, _: number, all: readonly PriceClock[]): ClockView {
  const prices = [
    ...new Set(
      all
        .flatMap((c) => c.days)
        .flatMap((d) => d.spans)
        .flatMap((s) => s.usdPerKwh ?? []),
    ),
  ].sort((a, b) => a - b);
  return {
    months: monthSpanWords(months),
    days: days.map(({ day, spans }) => ({
      name: tCode(`tariff.${day}`),
      spans: spans.map(({ fromHour, toHour, hours, usdPerKwh, contested }) => {
        const price = usdPerKwh === undefined ? undefined : centWords(usdPerKwh);
        const code = price === undefined ? 'tariff.spanGap' : contested ? 'tariff.spanTwice' : 'tariff.span';
        return {
          fromHour,
          hours,
          ...(price === undefined || usdPerKwh === undefined
            ? {}
            : { price, rank: prices.indexOf(usdPerKwh) }),
          words: td(code, { from: fromHour, to: toHour, price: price ?? '' }),
        };
      }),
    })),
  };
}
