import { atOriginalPlace, leaveGap, withoutGaps } from './gaps';
import type { Issue, Result } from './issue';
import { issueFromZod } from './issue-from-zod';
import { tableIssuesGathered } from './table-issues';
import { valueWords } from './typed-value';
import { SCHEMA_VERSION, Visit } from './visit';

/**
 * Reads a visit from unknown data: a file, a form, the store.
 *
 * @param data anything
 * @returns the checked visit, or every issue at once
 * Check: tests/visit/read-visit.test.ts
 */
export function readVisit(data: unknown): Result<Visit> {
  const version = versionIssue(data);
  if (version !== undefined) return { ok: false, issues: [version] };
  const parsed = Visit.safeParse(data, { reportInput: true });
  if (!parsed.success) {
    const issues = parsed.error.issues.flatMap((i) => issueFromZod(i, data));
    return { ok: false, issues: tableIssuesGathered(issues, data) };
  }
  const conflicts = visitConflicts(parsed.data);
  return conflicts.length === 0 ? { ok: true, value: parsed.data } : { ok: false, issues: conflicts };
}

/** A visit with whatever could not be used left out, and the issues that say what was left out. */
export type DraftReading = { readonly visit: Visit | undefined; readonly issues: readonly Issue[] };

/**
 * Reads as much of an unfinished visit as can be used, so that one slip never hides the rest of the answer.
 * Optional fields with an issue are left out; without kind and size of the unit there is no visit yet.
 *
 * @param data anything, usually the form's draft (which the caller keeps as typed)
 * @returns the usable part, or `undefined` when something indispensable is missing, and every issue
 * Check: tests/visit/read-visit.test.ts
 */
export function readDraft(data: unknown): DraftReading {
  const found: Issue[] = [];
  let tree = data;
  for (let round = 0; round < 12; round++) {
    const reading = readVisit(withoutGaps(tree));
    if (reading.ok) return { visit: reading.value, issues: found };
    const issues = reading.issues.map((issue) => atOriginalPlace(issue, tree));
    found.push(
      ...issues.filter(
        (issue) => !found.some((f) => f.path === issue.path || f.path.startsWith(`${issue.path}.`)),
      ),
    );
    const pruned = issues.reduce((rest, issue) => leaveGap(rest, leftOut(issue)), tree);
    if (pruned === tree) break;
    tree = pruned;
  }
  return { visit: undefined, issues: found };
}

/**
 * What an unusable field takes with it: a choice with a broken price is left out whole, since a total without one
 * line would be wrong; so does a flat tariff, a climate or a charging table; of a tariff in parts, of own bins and of
 * bills only the row goes; a record that lacks an indispensable field goes as a whole; any other field goes alone.
 */
function leftOut(issue: Issue): string[] {
  const path = issue.path.split('.');
  // an offer beside the one that counts moves no total: it goes alone
  if (path[0] === 'choices' && path[2] === 'financingOffers' && path[3] !== undefined)
    return path.slice(0, 4);
  if (path[0] === 'choices' && path[1] !== undefined) return path.slice(0, 2);
  const row = rowOf(path);
  if (row !== undefined) return row;
  if (path[0] === 'tariff') return TARIFF_EXTRAS.includes(path[1] ?? '') ? path : ['tariff'];
  if (path[0] === 'site' && path[1] === 'climate') return ['site', 'climate'];
  if (path[0] === 'unit' && path[1] === 'chargingTables' && path[2] !== undefined) return path.slice(0, 3);
  return issue.code === 'missing' ? path.slice(0, -1) : path;
}

/** Path of the list row an issue lies in, where a row can be missed; the innermost one, such as a tier of a season. */
function rowOf(path: readonly string[]): string[] | undefined {
  const inList = ROW_LISTS.some((list) => list.every((key, i) => path[i] === key));
  const last = path.findLastIndex((key) => /^\d+$/.test(key));
  // a month out of range takes its season along: without months the season has no place in the year
  const end = path[last - 1] === 'months' ? last - 2 : last;
  return inList && end > 0 ? path.slice(0, end + 1) : undefined;
}

/** Fields of a tariff it can do without. */
const TARIFF_EXTRAS = ['fixedUsdPerMonth', 'otherUsdPerKwh'];

const ROW_LISTS = [
  ['tariff', 'seasons'],
  ['tariff', 'periods'],
  ['site', 'climate', 'bins'],
  ['unit', 'electricHeatStages'],
];

function versionIssue(data: unknown): Issue | undefined {
  if (typeof data !== 'object' || data === null || Array.isArray(data)) {
    return {
      code: 'notReadable',
      path: '',
      label: 'Visit file',
      ...(data === undefined ? {} : { value: valueWords(data) }),
      limit: 'one visit, as a JSON object { ... }',
      fix: 'Choose a visit file saved by Keepworth (JSON).',
    };
  }
  const version = (data as { schemaVersion?: unknown }).schemaVersion;
  if (version === SCHEMA_VERSION) return undefined;
  return {
    code: 'wrongVersion',
    path: 'schemaVersion',
    label: 'Version of the visit file',
    ...(version === undefined ? {} : { value: valueWords(version) }),
    limit: `version ${SCHEMA_VERSION}`,
    fix:
      typeof version === 'number' && version > SCHEMA_VERSION
        ? 'This file was written by a newer Keepworth: open it there, or update this one.'
        : 'This file has no version this program knows: export the visit again from the program that wrote it.',
  };
}

function visitConflicts(visit: Visit): Issue[] {
  const issues: Issue[] = [];
  visit.runs.forEach((run, i) => {
    if (visit.unit.kind === 'airConditioner' && run.mode === 'heating') {
      issues.push({
        code: 'conflict',
        path: `runs.${i}`,
        label: `Run ${i + 1}`,
        value: 'heating',
        limit: 'cooling only, because the unit is an air conditioner',
        fix: 'Set the run to cooling, or set the unit to heat pump if it heats.',
      });
    }
    if (visit.runs.findIndex((r) => r.id === run.id) !== i) {
      issues.push({
        code: 'conflict',
        path: `runs.${i}`,
        label: `Run ${i + 1}`,
        value: run.id,
        fix: 'Two runs have the same name: give one another name.',
      });
    }
  });
  visit.choices.forEach((choice, i) => {
    if (visit.choices.findIndex((c) => c.id === choice.id) !== i) {
      issues.push({
        code: 'conflict',
        path: `choices.${i}`,
        label: `Choice ${i + 1}`,
        value: choice.id,
        fix: 'Two choices have the same name: give one another name.',
      });
    }
  });
  if (
    visit.unit.manufactureYear !== undefined &&
    visit.unit.manufactureYear > Number(visit.visitDate.slice(0, 4))
  ) {
    issues.push({
      code: 'conflict',
      path: 'unit.manufactureYear',
      label: 'Year of manufacture',
      value: String(visit.unit.manufactureYear),
      limit: `not after the visit (${visit.visitDate.slice(0, 4)})`,
      fix: 'Check the year on the nameplate, or the date of the visit.',
    });
  }
  if (visit.site.builtYear !== undefined && visit.site.builtYear > Number(visit.visitDate.slice(0, 4))) {
    issues.push({
      code: 'conflict',
      path: 'site.builtYear',
      label: 'Year the house was built',
      value: String(visit.site.builtYear),
      limit: `not after the visit (${visit.visitDate.slice(0, 4)})`,
      fix: 'Check the year, or the date of the visit.',
    });
  }
  return issues;
}
