import { LEAST_TABLE_ROWS, type TableGaps, tableEntry, tableGaps } from './charging-table-entry';
import type { Issue } from './issue';

/**
 * Issues with everything still blank in a charging table told as one, at its first blank field.
 *
 * @param issues  of reading the data
 * @param data    what was read
 * @returns the other issues unchanged; what is no number or out of its limits keeps its own
 * Check: tests/visit/table-issues.test.ts
 */
export function tableIssuesGathered(issues: readonly Issue[], data: unknown): readonly Issue[] {
  const gathered = new Set<string>();
  return issues.flatMap((issue) => {
    const at = tableOf(issue);
    if (at === undefined) return [issue];
    if (gathered.has(at)) return [];
    gathered.add(at);
    return [blankIssue(at, data)];
  });
}

/** Place of the table an issue calls unfinished. */
function tableOf({ code, path }: Issue): string | undefined {
  const at = /^unit\.chargingTables\.(\d+)\.(outdoorF|indoorF|suctionPsig|dischargePsig)(\..*)?$/.exec(path);
  const tooFew = code === 'outOfRange' && at?.[3] === undefined;
  return at !== null && (code === 'missing' || tooFew) ? at[1] : undefined;
}

function blankIssue(at: string, data: unknown): Issue {
  const tables = (data as { unit?: { chargingTables?: readonly unknown[] } }).unit?.chargingTables ?? [];
  const table = tables[Number(at)];
  const mode = (table as { mode?: unknown } | undefined)?.mode;
  const gaps = tableGaps(tableEntry(table));
  const label =
    typeof mode === 'string'
      ? `${mode.charAt(0).toUpperCase()}${mode.slice(1)} charging table`
      : 'Charging table';
  const where = gaps.firstBlank ?? [gaps.rowCount < LEAST_TABLE_ROWS ? 'outdoorF' : 'indoorF'];
  return {
    code: 'missing',
    path: ['unit.chargingTables', at, ...where].join('.'),
    label,
    fix: `${label}: ${gapWords(gaps)} Until then the table is not used; what was typed is kept.`,
  };
}

function gapWords(gaps: TableGaps): string {
  const few = [
    ...(gaps.rowCount < LEAST_TABLE_ROWS ? [`at least ${LEAST_TABLE_ROWS} outdoor temperatures`] : []),
    ...(gaps.columnCount < 1 ? ['at least one indoor temperature'] : []),
  ];
  const blank = [
    counted(gaps.outdoorCount, 'outdoor temperature'),
    counted(gaps.indoorCount, 'indoor temperature'),
    counted(gaps.suctionCount, 'suction pressure'),
    counted(gaps.dischargeCount, 'discharge pressure'),
  ].filter((words) => words !== undefined);
  return [
    ...(few.length === 0 ? [] : [`it needs ${few.join(' and ')}.`]),
    ...(blank.length === 0
      ? []
      : [`still blank: ${blank.join(', ')}. Type what is blank, or remove its row or column.`]),
  ].join(' ');
}

function counted(n: number, what: string): string | undefined {
  return n === 0 ? undefined : `${n} ${what}${n === 1 ? '' : 's'}`;
}
