import { exactEstimate } from '../math/estimate';
import type { ResolvedAssumption } from '../visit/assumption';
import { assumptionLabel, assumptionSource, unitLabel } from '../visit/field-words';
import { climateWords } from './climate-words';
import type { Composing } from './composing';
import { dollarWords } from './money-words';
import { counted, phrase, plainNumber } from './phrase';
import { optionWords } from './reading-words';
import { rawReadings } from './readings-section';
import { roundUsdToRange } from './round-to-range';
import type { AssumptionRow, Sheet } from './sheet';

/** How many of the rows say how much they move the result. */
const effectsTold = 3;
/** Emission factors stand behind numbers that the sheet does not print. */
const notOnTheSheet = new Set(['marginalCo2', 'averageCo2']);

/** Everything nobody measured, with its range and source; what moves the result most comes first. */
export function assumptionsSection(c: Composing): Sheet['pageTwo']['assumptions'] {
  const { words } = c;
  const keyed = c.assumptions.map((a) => ({ row: assumptionRow(c, a), effectUsd: effectOf(c, a.key) }));
  keyed.sort((a, b) => b.effectUsd - a.effectUsd);
  const rows = [
    ...keyed.map(({ row, effectUsd }, i) =>
      i < effectsTold ? { ...row, ...effectWords(c, effectUsd) } : row,
    ),
    ...energyRows(c),
  ];
  const introduction = phrase(words, rows.length === 0 ? 'assumptions.none' : 'assumptions.introduction');
  return {
    title: phrase(words, 'assumptions.title'),
    columns: [
      phrase(words, 'assumptions.columnName'),
      phrase(words, 'assumptions.columnValue'),
      phrase(words, 'assumptions.columnRange'),
      phrase(words, 'assumptions.columnSource'),
    ],
    rows,
    introduction: [...lossEffectWords(c, keyed[0]?.effectUsd ?? 0), introduction].join(' '),
    omitted: Array.from({ length: rows.length + 1 }, (_, i) =>
      i === 0 ? '' : counted(words, 'assumptions.omitted', i),
    ),
  };
}

/** Largest change of any choice's result between the low and the high end of one input [USD]. */
function effectOf(c: Composing, input: string): number {
  const spans = c.comparison.choices
    .flatMap((choice) => choice.drivers)
    .filter((driver) => driver.input === input)
    .map((driver) => Math.abs(driver.highUsd - driver.lowUsd));
  return Math.max(0, ...spans);
}

function effectWords(c: Composing, effectUsd: number): { readonly effect?: string } {
  const amount = effectAmount(c, effectUsd);
  return amount === undefined ? {} : { effect: phrase(c.words, 'assumptions.effect', { amount }) };
}

function lossEffectWords(c: Composing, largestOther: number): string[] {
  const effectUsd = effectOf(c, 'loss');
  const amount = effectAmount(c, effectUsd);
  return amount === undefined || effectUsd < largestOther
    ? []
    : [phrase(c.words, 'assumptions.lossMoves', { amount })];
}

function effectAmount(c: Composing, effectUsd: number): string | undefined {
  const rounded = roundUsdToRange(exactEstimate(effectUsd)).likely;
  return rounded === 0 ? undefined : dollarWords(c.words, rounded);
}

/** How many numbers were measured, read off the plate, taken from a bill, or assumed. */
export function countsSection(c: Composing): Sheet['pageTwo']['counts'] {
  const { words, visit } = c;
  const { kind: _kind, note: _note, ratings, chargingTables: _tables, ...plate } = visit.unit;
  const bills = c.energy.assumptions.filter((a) => a.basis === 'bill').length;
  const counts = {
    measured: visit.runs.reduce((sum, run) => sum + rawReadings(c.words, run).length, 0),
    nameplate: Object.keys(plate).length + Object.keys(ratings ?? {}).length,
    bill: Math.max(bills, visit.tariff === undefined ? 0 : 1),
    assumed: c.assumptions.length + energyRows(c).length,
  };
  return {
    title: phrase(words, 'counts.title'),
    items: (['measured', 'nameplate', 'bill', 'assumed'] as const).map((basis) => ({
      basis,
      count: counts[basis],
      words: phrase(words, `counts.${basis}`, { count: counts[basis] }),
    })),
  };
}

function assumptionRow(c: Composing, a: ResolvedAssumption): AssumptionRow {
  const ends = { low: amountNumber(c, a.low, a.unit), high: amountNumber(c, a.high, a.unit) };
  return {
    name: assumptionLabel(c.words.fields, a),
    value: withUnit(c, amountNumber(c, a.likely, a.unit), a.unit),
    range:
      a.low === a.high
        ? phrase(c.words, 'general.none')
        : withUnit(c, phrase(c.words, 'assumptions.range', ends), a.unit),
    source:
      a.setBy === 'visit'
        ? phrase(c.words, 'assumptions.setHere', { source: a.source })
        : assumptionSource(c.words.fields, a),
    basis: a.basis,
    basisWords: phrase(c.words, `basis.${a.basis}`),
  };
}

/** What the energy stage assumed besides; what the table of assumptions holds already is not told twice. */
function energyRows(c: Composing): AssumptionRow[] {
  const told = new Set<string>([...c.assumptions.map((a) => a.key), ...notOnTheSheet]);
  return c.energy.assumptions
    .filter((a) => a.basis === 'assumed' && !told.has(a.name))
    .map((a) => ({
      name: c.words.stages[`assumption.${a.name}`] ?? a.name,
      value: energyValueWords(c, a.value),
      range: phrase(c.words, 'general.rangeNotKnown'),
      source: a.source,
      basis: a.basis,
      basisWords: phrase(c.words, `basis.${a.basis}`),
    }));
}

/** A value that the energy stage gives as text: a number with its unit, the code of an option, or a name. */
function energyValueWords(c: Composing, value: string): string {
  const [, number, unit] = /^(-?\d[\d.]*) (.+)$/.exec(value) ?? [];
  if (number === undefined || unit === undefined) return optionWords(c.words, climateWords(c.words, value));
  if (unit === 'year') return number;
  return withUnit(c, amountNumber(c, Number(number), unit), unit.replace(/ F$/, ' °F'));
}

/** An assumed amount as a reader expects it: shares in percent, prices of electricity in cents. */
function amountNumber(c: Composing, value: number, unit: string): string {
  if (unit.startsWith('USD/') && unit !== 'USD/kWh') return dollarWords(c.words, value);
  const percentOrCents = unit === 'frac' || unit === 'frac/year' || unit === 'USD/kWh';
  return plainNumber(c.words, percentOrCents ? value * 100 : value, unit === 'ratio' ? 2 : 1);
}

/** One amount or a range of amounts with its unit, said once. */
function withUnit(c: Composing, value: string, unit: string): string {
  switch (unit) {
    case 'frac':
      return phrase(c.words, 'percent.value', { value });
    case 'frac/year':
      return phrase(c.words, 'quantity.fracPerYear', { value });
    case 'USD/year':
      return phrase(c.words, 'quantity.usdPerYear', { value });
    case 'USD/ton':
      return phrase(c.words, 'quantity.usdPerTon', { value });
    case 'USD/kWh':
      return phrase(c.words, 'quantity.usdPerKwh', { value });
    case 'ratio':
      return phrase(c.words, 'quantity.ratio', { value });
    default:
      return unitLabel(c.words.fields, unit) === ''
        ? value
        : phrase(c.words, 'readings.withUnit', { value, unit: unitLabel(c.words.fields, unit) });
  }
}
