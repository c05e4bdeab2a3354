import { expect, test } from 'vitest';
import file from '../reference/finance-checks.json';

/** One outside value with its source, as kept in tests/reference/finance-checks.json. */
export type Check = {
  readonly id: string;
  readonly topic: string;
  readonly what: string;
  readonly inputs: unknown;
  readonly expected: unknown;
  readonly tolerance: number | null;
  readonly source: string;
  readonly status: string;
};

const checks: readonly Check[] = file.checks;
export const statedCount: number = file.meta.count;
export const allChecks = checks;

/** The entry of that name; a wrong name fails the test. */
export function checkOf(id: string): Check {
  const found = checks.find((c) => c.id === id);
  if (found === undefined) throw new Error(`no check ${id}`);
  return found;
}

function at(check: Check, path: string): unknown {
  let node: unknown = check;
  for (const key of path.split('.')) {
    if (typeof node !== 'object' || node === null || !(key in node))
      throw new Error(`${check.id}: no ${path}`);
    node = (node as Record<string, unknown>)[key];
  }
  return node;
}

/** Number at a path of the entry ("inputs.rate"). */
export function num(check: Check, path: string): number {
  const value = at(check, path);
  if (typeof value !== 'number') throw new Error(`${check.id}: ${path} is no number`);
  return value;
}

/** Numbers at a path of the entry. */
export function nums(check: Check, path: string): number[] {
  const value = at(check, path);
  if (!Array.isArray(value)) throw new Error(`${check.id}: ${path} is no list`);
  return value.map((_, i) => num(check, `${path}.${i}`));
}

/** Rows of numbers at a path of the entry. */
export function rows(check: Check, path: string): number[][] {
  const value = at(check, path);
  if (!Array.isArray(value)) throw new Error(`${check.id}: ${path} is no list`);
  return value.map((_, i) => nums(check, `${path}.${i}`));
}

/** Anything else at a path of the entry, as the type the test says it has (compared literally afterwards). */
export function raw(check: Check, path: string): unknown {
  return at(check, path);
}

/** Within the entry's own tolerance, or the one given with a reason beside the call. */
export function near(actual: number, expected: number, tolerance: number | null, label: string): void {
  const limit = (tolerance ?? 0) + 1e-12 * Math.max(1, Math.abs(expected));
  const error = Math.abs(actual - expected);
  expect(
    error <= limit,
    `${label}: actual ${actual}, expected ${expected}, error ${error}, limit ${limit}`,
  ).toBe(true);
}

/**
 * Goes through every entry of one topic: each must have its own check here, or a reason for having none.
 *
 * @param topic  topic of the reference file
 * @param count  number of entries the topic must have
 * @param byId   what to do with each entry
 * @param left   entries without a check, and why
 */
export function coverTopic(
  topic: string,
  count: number,
  byId: Readonly<Record<string, (check: Check) => void>>,
  left: Readonly<Record<string, string>> = {},
): void {
  const entries = checks.filter((c) => c.topic === topic);
  test(`outside: all ${count} entries on ${topic} are gone through`, () => {
    expect(entries).toHaveLength(count);
    expect([...Object.keys(byId), ...Object.keys(left)].sort()).toEqual(entries.map((c) => c.id).sort());
  });
  test.each(entries.filter((c) => !(c.id in left)).map((c) => [c.id, c] as const))(
    'outside: %s',
    (id, check) => {
      const run = byId[id];
      expect(run, `no check for ${id}`).toBeDefined();
      run?.(check);
      expect(expect.getState().assertionCalls, `${id} asserted nothing`).toBeGreaterThan(1);
    },
  );
}
