import type { z } from 'zod';
import { fieldAt } from './field-at';
import type { Issue } from './issue';
import { shortened, valueWords } from './typed-value';

/**
 * One schema complaint as issues in the user's words.
 *
 * @param issue complaint of the schema library, with the input reported
 * @param data  what was read, to show what was typed
 * @returns issues naming field, value, limit and what to do
 * Check: tests/visit/read-visit.test.ts
 */
export function issueFromZod(issue: z.core.$ZodIssue, data: unknown): Issue[] {
  const path = issue.path.map(String);
  if (issue.code === 'unrecognized_keys') {
    return issue.keys.map((key) => ({
      code: 'unknownField' as const,
      path: [...path, key].join('.'),
      label: shortened(key),
      ...shownValue(valueAt(data, [...path, key])),
      fix: `The visit has no field called "${shortened(key)}": check the spelling or leave it out.`,
    }));
  }
  const field = fieldAt(path);
  const typed = valueAt(data, path);
  const base = {
    path: path.join('.'),
    label: field.label,
    ...shownValue(typed),
  };
  if (typed === undefined || typed === null || typed === '') {
    return [
      {
        ...base,
        code: 'missing',
        ...limitOf(field),
        fix: `Enter ${field.label.toLowerCase()}${field.range === undefined ? '' : `, ${field.range}`}.`,
      },
    ];
  }
  if (issue.code === 'invalid_type' && (issue.expected === 'number' || issue.expected === 'int')) {
    const whole = issue.expected === 'int';
    return [
      {
        ...base,
        code: 'notNumber',
        ...limitOf(field),
        fix: `${field.label} must be a ${whole ? 'whole number' : 'number'}${field.range === undefined ? '' : ` ${field.range}`}. Type digits only, for example ${field.example}.`,
      },
    ];
  }
  if (issue.code === 'too_small' || issue.code === 'too_big') {
    return [
      { ...base, code: 'outOfRange', ...limitOf(field), fix: outOfRangeFix(issue, field, typed, path[0]) },
    ];
  }
  if (issue.code === 'invalid_value') {
    const allowed = issue.values.map(String).join(', ');
    const fix = `Choose one of: ${allowed}.${base.path === 'unit.refrigerant' ? OTHER_REFRIGERANT : ''}`;
    return [{ ...base, code: 'notAllowed', limit: `one of: ${allowed}`, fix }];
  }
  if (issue.code === 'custom' && typeof issue.params?.limit === 'string') {
    const { limit, fix } = issue.params;
    return [
      {
        ...base,
        code: issue.params.code === 'notAllowed' ? 'notAllowed' : 'outOfRange',
        limit,
        fix: typeof fix === 'string' ? fix : `${field.label} must be ${limit}.`,
      },
    ];
  }
  if (issue.code === 'invalid_format' && issue.format === 'date') {
    return [
      {
        ...base,
        code: 'notReadable',
        limit: 'a date like 2026-11-25',
        fix: `${field.label} must be a date like 2026-11-25.`,
      },
    ];
  }
  return [
    {
      ...base,
      code: 'notReadable',
      ...limitOf(field),
      fix: `${field.label} could not be read: check what was typed.`,
    },
  ];
}

/** What still can be done with a refrigerant outside the list. */
const OTHER_REFRIGERANT =
  ' For another one leave this out and put its name under otherRefrigerant: air-side, electric and drier readings still answer.';

/** What was typed, as text: cut when long, named by its kind when it is no single value, left out when nothing. */
function shownValue(typed: unknown): { value: string } | Record<string, never> {
  return typed === undefined || typed === null ? {} : { value: valueWords(typed) };
}

type Field = ReturnType<typeof fieldAt>;

function limitOf(field: Field): { limit: string } | Record<string, never> {
  return field.range === undefined ? {} : { limit: field.range };
}

/** Only a reading of a run may be left out as not measured; a price or a size has to be put right. */
function outOfRangeFix(
  issue: z.core.$ZodIssue,
  field: Field,
  typed: unknown,
  part: string | undefined,
): string {
  if (typeof typed === 'string')
    return `${field.label} is too long: shorten it to ${'maximum' in issue ? issue.maximum : 'fewer'} characters.`;
  if (Array.isArray(typed))
    return `${field.label}: ${issue.code === 'too_small' ? 'add at least one entry' : 'remove some entries'}.`;
  const remedy =
    part === 'runs'
      ? 'Check the reading and the unit, or leave the field empty if it was not measured.'
      : 'Check the number and its unit.';
  return `${field.label} must be ${field.range ?? 'inside its limits'}. ${remedy}`;
}

function valueAt(data: unknown, path: readonly string[]): unknown {
  return path.reduce<unknown>(
    (node, key) =>
      typeof node === 'object' && node !== null ? (node as Record<string, unknown>)[key] : undefined,
    data,
  );
}
