import { parseNumber } from '../visit/parse-number';
import type { Saying } from '../visit/wording';
import type { OwnBins } from './own-climate';

export type BinsRead = { readonly bins: OwnBins; readonly notes: readonly Saying[] };

/**
 * Own bins from a pasted table: one row per bin, a temperature and the hours of the year in it.
 *
 * @param text  table with a heading line; comma, semicolon or tab between columns
 * @returns every row that can be read, and a note for each that cannot
 * A temperature column headed low, lower, from or edge holds lower edges; any other the middles.
 * Check: tests/energy/own-climate.test.ts
 */
export function readBinsCsv(text: string): BinsRead {
  const [head, ...lines] = text.split(/\r?\n/).filter((line) => line.trim() !== '');
  if (head === undefined) return { bins: [], notes: [{ code: 'ownBinsEmpty' }] };
  const separator = ['\t', ';', ','].find((s) => head.includes(s)) ?? ',';
  const headers = head.split(separator).map((h) => h.trim());
  const atHours = headers.findIndex((h) => /hour|hrs/i.test(h));
  const atF = headers.findIndex((h, i) => i !== atHours && /temp|bin|deg|°|^f$|low|edge|from|mid/i.test(h));
  if (atHours < 0 || atF < 0) return { bins: [], notes: [{ code: 'ownBinsNoColumns' }] };
  const notes: Saying[] = [];
  const rows = lines.flatMap((line, i) => rowOf(line.split(separator), atF, atHours, i + 2, notes));
  const half = /low|edge|from/i.test(headers[atF] ?? '') ? halfWidth(rows.map((row) => row.outdoorF)) : 0;
  return { bins: rows.map((row) => ({ ...row, outdoorF: row.outdoorF + half })), notes };
}

function rowOf(
  cells: readonly string[],
  atF: number,
  atHours: number,
  row: number,
  notes: Saying[],
): OwnBins {
  const f = parseNumber(cells[atF] ?? '');
  const hours = parseNumber(cells[atHours] ?? '');
  const usable =
    f.kind === 'number' && hours.kind === 'number' && hours.value >= 0 && f.value >= -60 && f.value <= 130;
  if (usable) return [{ outdoorF: f.value, yearHours: hours.value }];
  notes.push({ code: 'ownBinsRowUnread', values: { row, text: cells.join(' ').slice(0, 60) } });
  return [];
}

/** Half the narrowest step between lower edges [F]; 0 with fewer than two. */
function halfWidth(edges: readonly number[]): number {
  const rising = [...new Set(edges)].sort((a, b) => a - b);
  const steps = rising.slice(1).map((f, i) => f - (rising[i] ?? f));
  return steps.length === 0 ? 0 : Math.min(...steps) / 2;
}
