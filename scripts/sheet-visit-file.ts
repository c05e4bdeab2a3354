import { readFileSync, statSync } from 'node:fs';
import type { Issue, Result } from '../lib/visit/issue';
import { readVisit } from '../lib/visit/read-visit';
import { shortened } from '../lib/visit/typed-value';
import type { Visit } from '../lib/visit/visit';

/** Largest visit file read: many times a full visit, small enough to hold. Our own limit. */
const MAX_FILE_BYTES = 5_000_000;

/**
 * Reads a visit from a file.
 *
 * @param file path
 * @returns the visit, or everything to correct
 * Check: tests/scripts/sheet-command.test.ts
 */
export function visitFromFile(file: string): Result<Visit> {
  let text: string;
  try {
    const stat = statSync(file);
    if (!stat.isFile()) return refused(file, 'a file', 'Name the visit file itself, ending in .json.');
    if (stat.size > MAX_FILE_BYTES) {
      return refused(
        `${file}, ${stat.size.toLocaleString('en-US')} bytes`,
        `at most ${MAX_FILE_BYTES.toLocaleString('en-US')} bytes`,
        'Name a visit file saved by Keepworth; they are far smaller.',
      );
    }
    text = readFileSync(file, 'utf8').replace(/^\uFEFF/, '');
  } catch (error) {
    const missing = (error as NodeJS.ErrnoException).code === 'ENOENT';
    return missing
      ? refused(file, 'a file that exists', 'There is no such file: check its name and folder.')
      : refused(file, 'a file that can be read', 'The file cannot be opened: check its access rights.');
  }
  try {
    return readVisit(JSON.parse(text));
  } catch (error) {
    const where = error instanceof SyntaxError ? ` (${error.message})` : '';
    return refused(
      file,
      'JSON',
      `The file is not readable as JSON${where}: export the visit again, or correct the text.`,
    );
  }
}

function refused(value: string, limit: string, fix: string): Result<Visit> {
  return { ok: false, issues: [{ code: 'notReadable', path: '', label: 'Visit file', value, limit, fix }] };
}

/**
 * Issues for a terminal, a group of lines each: field, value, limit, what to do.
 *
 * Check: tests/scripts/sheet-command.test.ts
 */
export function issuesText(file: string, issues: readonly Issue[]): string {
  const count = issues.length === 1 ? '1 thing' : `${issues.length} things`;
  const groups = issues.map((issue) =>
    [
      issue.path === '' ? issue.label : `${issue.label} (${issue.path.split('.').map(shortened).join('.')})`,
      `  found:    ${issue.value ?? 'nothing'}`,
      ...(issue.limit === undefined ? [] : [`  allowed:  ${issue.limit}`]),
      `  to do:    ${issue.fix}`,
    ].join('\n'),
  );
  return [`${count} to correct in ${file}:`, ...groups].join('\n\n');
}
