import type { DerivedValue, RunFindings, Target } from '../diagnostics/findings';
import type { Basis } from '../visit/basis';
import { fieldAt } from '../visit/field-at';
import { fieldLabel } from '../visit/field-words';
import type { Run } from '../visit/run';
import type { Composing } from './composing';
import { counted, listWords, lowerFirst, phrase, type Words } from './phrase';
import { quantityName, quantityNumber, quantityWords } from './reading-words';
import type { ReadingRow, ReadingTable, Sheet } from './sheet';

/** Every run with its readings, what a healthy unit would show, and the verdict in words. */
export function readingsSection(c: Composing): Sheet['pageTwo']['readings'] {
  const { words } = c;
  const seen = c.visit.observations.map((o) => {
    if (o.id === 'other' && o.note) return o.note;
    const coolsOnly = o.id === 'neverKeepsUp' && c.visit.unit.kind === 'airConditioner';
    return phrase(words, coolsOnly ? 'seen.neverCoolsEnough' : `seen.${o.id}`);
  });
  return {
    title: phrase(words, 'readings.title'),
    columns: [
      phrase(words, 'readings.columnName'),
      phrase(words, 'readings.columnReading'),
      phrase(words, 'readings.columnTarget'),
      phrase(words, 'readings.columnVerdict'),
      phrase(words, 'readings.columnBasis'),
    ],
    tables: c.visit.runs.map((run, i) => readingTable(c, run, i)),
    ...(seen.length === 0 ? {} : { seen: phrase(words, 'readings.seen', { list: listWords(words, seen) }) }),
    ...(c.visit.runs.length === 0 ? { none: phrase(words, 'readings.none') } : {}),
  };
}

function readingTable(c: Composing, run: Run, position: number): ReadingTable {
  const { words } = c;
  const found = c.findings.runs.find((r) => r.runId === run.id);
  const mode = phrase(words, run.mode === 'heating' ? 'readings.modeHeating' : 'readings.modeCooling');
  const judged = new Set(found?.targets.map((target) => target.id) ?? []);
  const also = rawReadings(words, run).filter((reading) => !judged.has(reading.id));
  const rows = found === undefined ? [] : found.targets.flatMap((target) => readingRow(c, target, found));
  return {
    title:
      run.label === undefined || run.label.trim() === ''
        ? phrase(words, 'readings.runUnnamed', { number: position + 1, mode })
        : phrase(words, 'readings.run', { label: run.label, mode }),
    rows: isAsFound(c, run) ? rows : rows.filter((row) => tellsOfChange(c, run, row)),
    ...restWords(c, run, rows),
    ...normalWords(c, run, rows),
    ...(also.length === 0 ? {} : { also: alsoWords(c, also) }),
  };
}

/** The first run of a mode is the unit as found; of later ones only what was or is off is listed. */
function isAsFound(c: Composing, run: Run): boolean {
  return firstOfMode(c, run)?.id === run.id;
}

function firstOfMode(c: Composing, run: Run): Run | undefined {
  return c.visit.runs.find((other) => other.mode === run.mode);
}

function tellsOfChange(c: Composing, run: Run, row: ReadingRow): boolean {
  if (row.off) return true;
  const first = c.findings.runs.find((found) => found.runId === firstOfMode(c, run)?.id);
  const before = first?.targets.flatMap((target) => readingRow(c, target, first)) ?? [];
  return before.some((found) => found.name === row.name && found.off);
}

function restWords(c: Composing, run: Run, rows: readonly ReadingRow[]): { readonly rest?: string } {
  const rest = rows.filter((row) => !tellsOfChange(c, run, row)).length;
  return isAsFound(c, run) || rest === 0 ? {} : { rest: counted(c.words, 'readings.rest', rest) };
}

/** The readings that are not off, as one sentence for where a row each takes too much room. */
function normalWords(c: Composing, run: Run, rows: readonly ReadingRow[]): { readonly normal?: string } {
  const normal = rows.filter((row) => row.normal);
  if (!isAsFound(c, run) || normal.length === 0) return {};
  const items = normal.map((row) =>
    phrase(c.words, 'readings.normalItem', {
      name: lowerFirst(row.name),
      found: row.found,
      target: row.target,
    }),
  );
  return { normal: phrase(c.words, 'readings.normal', { list: items.join('; ') }) };
}

type RawReading = {
  readonly id: string;
  readonly label: string;
  readonly value: number;
  readonly unit: string;
};

/** Numeric readings of a run in the schema's order. */
export function rawReadings(words: Words, run: Run): RawReading[] {
  return Object.entries(run).flatMap(([id, value]) => {
    if (typeof value !== 'number') return [];
    const path = ['runs', '0', id];
    return [{ id, label: fieldLabel(words.fields, path), value, unit: fieldAt(path).unit ?? '' }];
  });
}

function alsoWords(c: Composing, readings: readonly RawReading[]): string {
  const items = readings.map((r) =>
    phrase(c.words, 'readings.alsoItem', {
      name: lowerFirst(r.label),
      value: quantityWords(c.words, r.value, r.unit),
    }),
  );
  return phrase(c.words, 'readings.also', { list: items.join('; ') });
}

/** A target whose reading is missing has no row: what to read further is said elsewhere. */
function readingRow(c: Composing, target: Target, found: RunFindings): ReadingRow[] {
  const { words } = c;
  const derived = found.derived.find((d) => d.id === target.id);
  const reading = target.reading ?? derived?.value;
  if (reading === undefined) return [];
  const basis = basisOf(derived);
  return [
    {
      name: quantityName(words, target.id) ?? target.id,
      found: quantityWords(words, reading, target.unit),
      target: targetWords(c, target),
      verdict: phrase(words, target.verdict === undefined ? 'verdict.none' : `verdict.${target.verdict}`),
      normal: target.verdict === 'within',
      off: target.verdict === 'above' || target.verdict === 'below',
      basis,
      basisWords: phrase(words, `basis.${basis}`),
    },
  ];
}

/** The unit stands beside the reading already. */
function targetWords(c: Composing, target: Target): string {
  return phrase(c.words, 'assumptions.range', {
    low: quantityNumber(c.words, target.low, target.unit),
    high: quantityNumber(c.words, target.high, target.unit),
  });
}

/** A reading without a derived value was read off an instrument. */
function basisOf(derived: DerivedValue | undefined): Basis {
  return derived?.basis ?? 'measured';
}
