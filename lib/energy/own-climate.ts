import { parseNumber } from '../visit/parse-number';
import type { Saying } from '../visit/wording';
import { type Climate, HOURS_OF_YEAR } from './climate-model';
import { spreadOverCalendar } from './spread-over-calendar';

export type OwnClimate =
  | { readonly kind: 'climate'; readonly climate: Climate; readonly notes: readonly Saying[] }
  | { readonly kind: 'none'; readonly notes: readonly Saying[] };

/**
 * Climate from the user's own bin table: one row per bin, a temperature and the hours of the year in it.
 *
 * @param text      table with a heading line; comma, semicolon or tab between columns
 * @param calendar  city whose design temperatures, months and hours of day are used with it
 * @returns the climate scaled to 8,760 hours, with a note for every doubt; `none` if nothing can be used
 * A temperature column headed low, lower, from or edge holds lower edges; any other the middles.
 * Check: tests/energy/own-climate.test.ts
 */
export function ownClimate(text: string, calendar: Climate): OwnClimate {
  const [head, ...lines] = text.split(/\r?\n/).filter((line) => line.trim() !== '');
  if (head === undefined) return { kind: 'none', notes: [{ code: 'ownBinsEmpty' }] };
  const separator = ['\t', ';', ','].find((s) => head.includes(s)) ?? ',';
  const headers = head.split(separator).map((h) => h.trim());
  const atHours = headers.findIndex((h) => /hour|hrs/i.test(h));
  const atF = headers.findIndex((h, i) => i !== atHours && /temp|bin|deg|°|^f$|low|edge|from|mid/i.test(h));
  if (atHours < 0 || atF < 0) return { kind: 'none', notes: [{ code: 'ownBinsNoColumns' }] };
  const notes: Saying[] = [];
  const rows = lines.flatMap((line, i) => rowOf(line.split(separator), atF, atHours, i + 2, notes));
  const rising = rows.sort((a, b) => a.f - b.f);
  const twice = rising.find((row, i) => row.f === rising[i - 1]?.f);
  if (twice !== undefined)
    return { kind: 'none', notes: [...notes, { code: 'ownBinsTwice', values: { f: twice.f } }] };
  const total = rising.reduce((sum, row) => sum + row.hours, 0);
  if (rising.length < 3 || total <= 0) return { kind: 'none', notes: [...notes, { code: 'ownBinsTooFew' }] };
  if (Math.abs(total - HOURS_OF_YEAR) > 0.5) {
    notes.push({ code: 'ownBinsSum', values: { hours: Math.round(total * 10) / 10 } });
  }
  const half = /low|edge|from/i.test(headers[atF] ?? '') ? halfWidth(rising.map((row) => row.f)) : 0;
  const binF = rising.map((row) => row.f + half);
  const binHours = rising.map((row) => (row.hours * HOURS_OF_YEAR) / total);
  return {
    kind: 'climate',
    climate: {
      id: 'own',
      name: 'Own bin table',
      kind: 'own',
      binF,
      hours: spreadOverCalendar(binF, binHours, calendar),
      heatingDesignF: calendar.heatingDesignF,
      coolingDesignF: calendar.coolingDesignF,
      ...(calendar.elevationFt === undefined ? {} : { elevationFt: calendar.elevationFt }),
      basis: 'measured',
      source: `Bin table given at the visit; calendar and design temperatures of ${calendar.name}`,
      status: 'given',
      notes,
    },
    notes,
  };
}

type Row = { readonly f: number; readonly hours: number };

function rowOf(cells: readonly string[], atF: number, atHours: number, row: number, notes: Saying[]): Row[] {
  const f = parseNumber(cells[atF] ?? '');
  const hours = parseNumber(cells[atHours] ?? '');
  const usable =
    f.kind === 'number' && hours.kind === 'number' && hours.value >= 0 && Math.abs(f.value) < 150;
  if (usable) return [{ f: f.value, hours: hours.value }];
  notes.push({ code: 'ownBinsRowUnread', values: { row, text: cells.join(' ').slice(0, 60) } });
  return [];
}

/** Half the narrowest step between lower edges [F]. */
function halfWidth(edges: readonly number[]): number {
  const steps = edges.slice(1).map((f, i) => f - (edges[i] ?? f));
  return Math.min(...steps) / 2;
}
