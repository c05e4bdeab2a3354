import type { ResolvedAssumption } from '../visit/assumption';
import { unitWords } from '../visit/field-at';
import type { Composing } from './composing';
import { dollarWords } from './money-words';
import { counted, phrase, plainNumber } from './phrase';
import { rawReadings } from './readings-section';
import type { AssumptionRow, Sheet } from './sheet';

/** Everything nobody measured, with its range and source. */
export function assumptionsSection(c: Composing): Sheet['pageTwo']['assumptions'] {
  const { words } = c;
  const rows = [...c.assumptions.map((a) => assumptionRow(c, a)), ...energyRows(c)];
  return {
    title: phrase(words, 'assumptions.title'),
    columns: [
      phrase(words, 'assumptions.columnName'),
      phrase(words, 'assumptions.columnValue'),
      phrase(words, 'assumptions.columnRange'),
      phrase(words, 'assumptions.columnSource'),
    ],
    rows,
    introduction: phrase(words, rows.length === 0 ? 'assumptions.none' : 'assumptions.introduction'),
    omitted: Array.from({ length: rows.length + 1 }, (_, i) =>
      i === 0 ? '' : counted(words, 'assumptions.omitted', i),
    ),
  };
}

/** How many numbers were measured, read off the plate, taken from a bill, or assumed. */
export function countsSection(c: Composing): Sheet['pageTwo']['counts'] {
  const { words, visit } = c;
  const { kind: _kind, note: _note, ratings, chargingTables: _tables, ...plate } = visit.unit;
  const nameplate = Object.keys(plate).length + Object.keys(ratings ?? {}).length;
  const others = c.energy.assumptions;
  const of = (basis: string) => others.filter((a) => a.basis === basis).length;
  const counts = {
    measured: visit.runs.reduce((sum, run) => sum + rawReadings(run).length, 0),
    nameplate: nameplate,
    bill: (visit.tariff === undefined ? 0 : 1) + of('bill'),
    assumed: c.assumptions.length + of('assumed'),
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
    name: a.label,
    value: withUnit(c, amountNumber(c, a.likely, a.unit), a.unit),
    range:
      a.low === a.high
        ? phrase(c.words, 'general.none')
        : withUnit(c, phrase(c.words, 'assumptions.range', ends), a.unit),
    source: a.setBy === 'visit' ? phrase(c.words, 'assumptions.setHere', { source: a.source }) : a.source,
    basis: a.basis,
    basisWords: phrase(c.words, `basis.${a.basis}`),
  };
}

function energyRows(c: Composing): AssumptionRow[] {
  return c.energy.assumptions
    .filter((a) => a.basis === 'assumed')
    .map((a) => ({
      name: a.name,
      value: a.value,
      range: phrase(c.words, 'general.notGiven'),
      source: a.source,
      basis: a.basis,
      basisWords: phrase(c.words, `basis.${a.basis}`),
    }));
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
      return unitWords(unit) === ''
        ? value
        : phrase(c.words, 'readings.withUnit', { value, unit: unitWords(unit) });
  }
}
