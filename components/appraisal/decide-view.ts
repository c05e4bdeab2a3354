import { td, tdCode } from '@/components/words/decide-words';
import type { ComparedChoice, Comparison } from '@/lib/finance/comparison';
import { overtakes } from '@/lib/finance/crossings';
import { chanceBase, chanceWords } from '@/lib/sheet/chance-words';
import { quotedWords } from '@/lib/sheet/money-words';
import { listWords, plainNumber, wordsOf } from '@/lib/sheet/phrase';
import { roundUsdToRange } from '@/lib/sheet/round-to-range';
import { spanAxis } from '@/lib/sheet/span-axis';
import { resolveAssumption } from '@/lib/visit/assumption';
import { assumptionKeys } from '@/lib/visit/assumption-keys';
import type { Saying } from '@/lib/visit/wording';
import { aboutUsd } from './about-usd';

const words = wordsOf('en');

export type ChoiceKind = ComparedChoice['kind'];
type Tick = { readonly frac: number; readonly label: string };

/** What one thing that is not known does to the saving of a choice. */
export type DriverRow = {
  readonly name: string;
  /** Ends of the bar along the axis, 0..1. */
  readonly from: number;
  readonly to: number;
  /** "$−300" and "$1,400", the smaller first. */
  readonly low: string;
  readonly high: string;
};

/** What moves the answer most, choice by choice on one axis. */
export type DriversView = {
  readonly ticks: readonly Tick[];
  readonly zero: number;
  /** Shown first: what is recommended, else the lowest besides leaving it. */
  readonly firstId: string;
  readonly choices: readonly {
    readonly id: string;
    readonly name: string;
    readonly sentence: string;
    /** Place of the likely saving. */
    readonly likely: number;
    readonly rows: readonly DriverRow[];
  }[];
};

/** Rows of a tornado at most; what moves less would not be read. */
const MOST_DRIVERS = 6;

/** Check: tests/screens/decide-view.test.ts */
export function driversView(
  comparison: Comparison,
  told: (saying: Saying) => string,
): DriversView | undefined {
  const shown = comparison.choices.filter((c) => c.kind !== 'leave' && c.priced && c.drivers.length > 0);
  if (shown.length === 0) return undefined;
  const likelyOf = (c: ComparedChoice) => c.netSavingUsd.likely;
  const axis = spanAxis(words, [
    ...shown.map(likelyOf),
    ...shown.flatMap((c) => c.drivers.slice(0, MOST_DRIVERS).flatMap((d) => [d.lowUsd, d.highUsd])),
  ]);
  return {
    ticks: axis.ticks.map(({ frac, label }) => ({ frac, label })),
    zero: axis.place(0),
    firstId: firstShown(shown, comparison.recommendation.choiceId),
    choices: shown.map((choice) => ({
      id: choice.id,
      name: choice.name,
      likely: axis.place(likelyOf(choice)),
      sentence: td(likelyOf(choice) < 0 ? 'moves.costs' : 'moves.saves', {
        name: choice.name,
        usd: aboutUsd(Math.abs(likelyOf(choice))),
        first: driverName(choice.drivers[0]?.input ?? '', told),
      }),
      rows: choice.drivers.slice(0, MOST_DRIVERS).map((driver) => {
        const ends = [driver.lowUsd, driver.highUsd, likelyOf(choice)];
        const [low, high] = [Math.min(...ends), Math.max(...ends)];
        return {
          name: driverName(driver.input, told),
          from: axis.place(low),
          to: axis.place(high),
          low: aboutUsd(low),
          high: aboutUsd(high),
        };
      }),
    })),
  };
}

function firstShown(shown: readonly ComparedChoice[], recommendedId: string | undefined): string {
  const lowest = [...shown].sort((a, b) => a.totalTodayUsd.likely - b.totalTodayUsd.likely)[0];
  return (shown.find((c) => c.id === recommendedId) ?? lowest)?.id ?? '';
}

function driverName(input: string, told: (saying: Saying) => string): string {
  const key = assumptionKeys.find((k) => k === input);
  if (key === undefined) return told({ code: `driver.${input}` });
  const code = `moves.input.${key}`;
  const plain = tdCode(code);
  return plain === code ? resolveAssumption([], key).label : plain;
}

/** From when a choice has cost less so far than leaving it: the crossings of the cost chart in words. */
export function crossingSentences(comparison: Comparison): string[] {
  const leave = comparison.choices.find((c) => c.kind === 'leave');
  if (leave === undefined) return [];
  const soFar = (c: ComparedChoice) => c.rows.map((row) => row.cumulativePresentValueUsd);
  return comparison.choices
    .filter((c) => c.kind !== 'leave' && c.priced)
    .map((c) => {
      const found = overtakes(soFar(c), soFar(leave));
      const values = { name: c.name, leave: leave.name, stay: comparison.stayYears };
      if (found.kind === 'between')
        return td('cross.between', { ...values, year: found.year, until: found.until });
      if (found.kind !== 'from') return td(`cross.${found.kind}`, values);
      return td(found.year === 1 ? 'cross.fromOne' : 'cross.from', { ...values, year: found.year });
    });
}

/** The best year to replace, with every year beside it. */
export type LaterView = {
  readonly sentences: readonly string[];
  readonly rows: readonly {
    readonly when: string;
    readonly total: string;
    /** Length of the bar, 0..1 of the longest. */
    readonly frac: number;
    readonly mark?: string;
  }[];
};

/** Check: tests/screens/decide-view.test.ts */
export function laterView(comparison: Comparison): LaterView | undefined {
  const later = comparison.replaceLater;
  const replacement = comparison.choices.find((c) => c.id === later?.choiceId);
  if (later === undefined || replacement === undefined) return undefined;
  const { name } = replacement;
  const stay = comparison.stayYears;
  const when = (k: number) =>
    k === 0
      ? td('later.now')
      : k >= stay
        ? td('later.onFailure')
        : td(k === 1 ? 'later.afterOne' : 'later.after', { years: k });
  const inText = (k: number) =>
    k === 0 ? td('later.inNow') : k >= stay ? td('later.inOnFailure') : when(k).toLowerCase();
  const same = later.aboutTheSameYears;
  const totals = later.byYear.map((y) => y.totalTodayUsd);
  const spreadUsd = Math.max(...totals) - Math.min(...totals);
  // What the total itself is told to is too coarse to tell these years apart.
  const isFlat = same.length > stay || spreadUsd < roundUsdToRange(replacement.totalTodayUsd).step;
  const agreed = later.bestAfterYears === later.bestWithoutValueLeft;
  const first = isFlat
    ? td('later.flat', { name, usd: aboutUsd(spreadUsd) })
    : agreed
      ? td('later.best', { name, when: inText(later.bestAfterYears) })
      : td('later.depends', {
          name,
          when: inText(later.bestAfterYears),
          without: inText(later.bestWithoutValueLeft),
        });
  const others = same.filter((k) => k !== later.bestAfterYears);
  const flat =
    isFlat || others.length === 0 ? [] : [td('later.same', { list: listWords(words, others.map(inText)) })];
  const highest = Math.max(1, ...totals);
  return {
    sentences: [first, ...flat],
    rows: later.byYear.map(({ afterYears, totalTodayUsd }) => ({
      when: when(afterYears),
      total: aboutUsd(totalTodayUsd),
      frac: Math.max(0, totalTodayUsd) / highest,
      ...(isFlat
        ? {}
        : afterYears === later.bestAfterYears
          ? { mark: td('later.lowest') }
          : same.includes(afterYears)
            ? { mark: td('later.alike') }
            : {}),
    })),
  };
}

/** Whether a repair is worth its price: by the full answer and by what customers hear elsewhere. */
export type RepairWorth = {
  readonly id: string;
  readonly name: string;
  readonly price: string;
  readonly breakEven: string;
  readonly rules: readonly { readonly name: string; readonly figure: string; readonly says: string }[];
  readonly full: string;
  readonly differs: readonly string[];
};

/** Check: tests/screens/decide-view.test.ts */
export function repairsView(comparison: Comparison, told: (saying: Saying) => string): RepairWorth[] {
  return comparison.choices.flatMap((c) => {
    const rules = c.rulesOfThumb;
    if (rules === undefined) return [];
    return [
      {
        id: c.id,
        name: c.name,
        price: quotedWords(c.priceUsd),
        breakEven:
          c.breakEvenPriceUsd === undefined
            ? td('worth.notForNothing')
            : td('worth.upTo', { usd: aboutUsd(c.breakEvenPriceUsd) }),
        rules: [
          {
            name: td('worth.ageTimesPrice'),
            figure: aboutUsd(rules.ageTimesPriceUsd),
            says: td(`worth.${rules.ageTimesPriceSays}`),
          },
          {
            name: td('worth.priceShare'),
            figure: td('worth.share', { percent: plainNumber(words, 100 * rules.priceShareFrac, 0) }),
            says: td(`worth.${rules.priceShareSays}`),
          },
        ],
        full: td(rules.fullSays === 'replace' ? 'worth.replace' : 'worth.repair'),
        differs: (rules.differs ?? []).map(told),
      },
    ];
  });
}

/** Worth finding out first? */
export type InvestigateView = {
  readonly sentence: string;
  readonly most?: string;
  readonly causes: readonly string[];
  readonly tests: readonly {
    readonly what: string;
    readonly saves: string;
    readonly price: string;
    readonly takes: string;
    readonly verdict: string;
  }[];
};

/** Causes rarer than this are not listed one by one. Our own choice. */
const LEAST_CAUSE_FRAC = 0.05;
/** A saving below this is told as none. Our own choice. */
const LEAST_SAVING_USD = 5;

/** Check: tests/screens/decide-view.test.ts */
export function investigateView(
  comparison: Comparison,
  told: (saying: Saying) => string,
  causeName: (cause: string) => string,
): InvestigateView | undefined {
  const found = comparison.investigate;
  if (found === undefined) return undefined;
  if (found.kind === 'none') return { sentence: told(found.why), causes: [], tests: [] };
  const nameOf = (id: string) => comparison.choices.find((c) => c.id === id)?.name ?? id;
  const listed = found.byCause.filter(({ frac }) => frac >= LEAST_CAUSE_FRAC);
  const base = chanceBase(listed.map(({ frac }) => frac));
  return {
    sentence: told(found.saying),
    most: td('find.most', {
      usd: found.mostUsd < LEAST_SAVING_USD ? td('find.nothing') : aboutUsd(found.mostUsd),
      name: nameOf(found.choiceId),
    }),
    causes: listed.map(({ cause, frac, choiceId }) =>
      td('find.ifCause', {
        cause: causeName(cause),
        chance: chanceWords(words, Math.min(1, frac), base),
        name: nameOf(choiceId),
      }),
    ),
    tests: found.tests.map((test) => ({
      what: told({ code: test.code }),
      saves: test.savesUsd < LEAST_SAVING_USD ? td('find.nothing') : aboutUsd(test.savesUsd),
      price: test.priceUsd === undefined ? td('find.noPrice') : quotedWords(test.priceUsd),
      takes: test.minutes === undefined ? td('find.noTime') : td('find.minutes', { minutes: test.minutes }),
      verdict:
        test.netUsd !== undefined && test.netUsd > 0
          ? td('find.worth')
          : td(test.changesChoice ? 'find.notWorth' : 'find.sameChoice'),
    })),
  };
}

/** Which choice costs least by years of stay and price of a repair. */
export type FlipMapView = {
  readonly repair: string;
  readonly prices: readonly string[];
  readonly rows: readonly {
    readonly stay: string;
    readonly sentence: string;
    readonly cells: readonly { readonly key: number; readonly price: string; readonly here: boolean }[];
  }[];
  /** `key` of a cell is the place in this list. */
  readonly keys: readonly {
    readonly letter: string;
    readonly id: string;
    readonly name: string;
    readonly kind: ChoiceKind;
  }[];
};

/** Check: tests/screens/decide-view.test.ts */
export function flipMapView(comparison: Comparison): FlipMapView | undefined {
  const map = comparison.flipMap;
  const repair = comparison.choices.find((c) => c.id === map?.repairId);
  if (map === undefined || repair === undefined) return undefined;
  const keys = comparison.choices.map((c, i) => ({
    letter: String.fromCharCode('A'.charCodeAt(0) + i),
    id: c.id,
    name: c.name,
    kind: c.kind,
  }));
  const net = Number(repair.priceUsd) - Number(repair.rebateUsd);
  const nearest = (list: readonly number[], value: number) =>
    list.reduce((best, v, i) => (Math.abs(v - value) < Math.abs((list[best] ?? 0) - value) ? i : best), 0);
  const here = {
    stay: nearest(map.stayYears, comparison.stayYears),
    price: nearest(map.repairPricesUsd, net),
  };
  const prices = map.repairPricesUsd.map((usd) => aboutUsd(usd));
  return {
    repair: repair.name,
    prices,
    keys,
    rows: map.choiceIds.map((ids, r) => {
      const years = map.stayYears[r] ?? 0;
      return {
        stay: td(years === 1 ? 'flip.year' : 'flip.years', { years }),
        sentence: flipSentence(ids, prices, years, (id) => keys.find((k) => k.id === id)?.name ?? id),
        cells: ids.map((id, k) => ({
          key: keys.findIndex((key) => key.id === id),
          price: prices[k] ?? '',
          here: r === here.stay && k === here.price,
        })),
      };
    }),
  };
}

/** "5 years: “Clean the coil” up to about $600, then “Leave as is”." */
function flipSentence(
  ids: readonly string[],
  prices: readonly string[],
  years: number,
  nameOf: (id: string) => string,
): string {
  const spans: { id: string; end: number }[] = [];
  ids.forEach((id, k) => {
    const last = spans.at(-1);
    if (last?.id === id) last.end = k;
    else spans.push({ id, end: k });
  });
  const stay = td(years === 1 ? 'flip.year' : 'flip.years', { years });
  if (spans.length === 1) return td('flip.always', { stay, name: nameOf(spans[0]?.id ?? '') });
  const parts = spans.map(({ id, end }, i) =>
    i === spans.length - 1
      ? td('flip.then', { name: nameOf(id) })
      : td('flip.upTo', { name: nameOf(id), usd: prices[end] ?? '' }),
  );
  return td('flip.sentence', { stay, parts: parts.join(', ') });
}
