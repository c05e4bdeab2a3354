import { existsSync } from 'node:fs';
import path from 'node:path';
import { expect, test } from 'vitest';
import { filesUnder, PURE_FOLDERS, ROOT, textOf } from './source-files';

const CODE = ['.ts', '.tsx', '.mjs', '.cjs', '.css'];
const TEXT = [...CODE, '.json', '.md', '.sh', '.csv'];

/** This file, which must write down what it forbids. */
const SELF = 'tests/architecture/house-rules.test.ts';

const FORBIDDEN: readonly (readonly [what: string, pattern: RegExp])[] = [
  ['a folder outside the project', /\/work\/(shared|main)/],
  ['a folder outside the project', /\.\.\/shared\//],
  ['a folder outside the project', /shared\/(reference|design|style)/],
  ['a folder of one machine', /\/tmp\/kw|\.library\/|\/home\/|\/root\//],
  ['a ticket number', /\bissue (#|no\.? ?)?\d/i],
];

/** Lines of a text where a pattern is found. */
function mentions(text: string, pattern: RegExp): number[] {
  return text.split('\n').flatMap((line, i) => (pattern.test(line) ? [i + 1] : []));
}

test('wiring: the project stands alone: nothing points outside it', () => {
  const files = [...filesUnder('.', TEXT), '.ci/run'].filter(
    (file) => file !== 'package-lock.json' && file !== SELF,
  );
  expect(files.length).toBeGreaterThan(100);
  const found = files.flatMap((file) => {
    const text = textOf(file);
    return FORBIDDEN.flatMap(([what, pattern]) =>
      mentions(text, pattern).map((line) => `${file}:${line} mentions ${what}`),
    );
  });
  expect(found).toEqual([]);
});

test('wiring: the search for what is forbidden finds it', () => {
  const samples = [
    ['', 'work', 'shared', 'reference'].join('/'),
    `from '../../..${'/shared'}/x.json'`,
    'see shared/design.md',
    ['', 'tmp', 'kw', 'x'].join('/'),
    'as issue 2 wants',
    'Issue #14',
  ];
  const hits = samples.map((sample) => FORBIDDEN.some(([, pattern]) => mentions(sample, pattern).length > 0));
  expect(hits).toEqual([true, true, true, true, true, true]);
});

test('wiring: no barrels, no drawers for odds and ends', () => {
  const files = filesUnder('.', CODE);
  expect(files.filter((file) => /(^|\/)(index|utils?|helpers?|misc|common)\.[a-z]+$/.test(file))).toEqual([]);
});

test('wiring: lib exports by name, as types rather than interfaces, without classes in its pure part', () => {
  const lib = filesUnder('lib', ['.ts', '.tsx']);
  const pure = PURE_FOLDERS.flatMap((folder) => filesUnder(folder, ['.ts', '.tsx']));
  const where = (files: readonly string[], pattern: RegExp) =>
    files.flatMap((file) => mentions(textOf(file), pattern).map((line) => `${file}:${line}`));
  expect(where(lib, /^export default/)).toEqual([]);
  expect(where(lib, /^(export )?(declare )?interface /)).toEqual([]);
  expect(where(lib, /^(export )?(const )?enum /)).toEqual([]);
  expect(where(pure, /^(export )?(abstract )?class /)).toEqual([]);
  expect(lib.length).toBeGreaterThan(pure.length);
});

test('wiring: no check is switched off and no test is skipped or run alone', () => {
  // Lint findings that may be let be, outside lib and with the reason beside them; this list may only shrink.
  const letBe =
    /biome-ignore lint\/(a11y\/noNoninteractiveTabindex|suspicious\/noArrayIndexKey): [a-z].{14,}/;
  const files = filesUnder('.', CODE).filter((file) => file !== SELF);
  const where = (pattern: RegExp, among = files) =>
    among.flatMap((file) => mentions(textOf(file), pattern).map((line) => `${file}:${line}`));
  expect(where(/@ts-(ignore|nocheck)|eslint-disable/)).toEqual([]);
  expect(
    where(
      /biome-ignore/,
      files.filter((file) => /^(lib|scripts|tests)\//.test(file)),
    ),
  ).toEqual([]);
  expect(where(/biome-ignore/)).toEqual(where(letBe));
  const tests = files.filter((file) => file.startsWith('tests/'));
  expect(where(/\b(test|it|describe)\.(skip|only|todo|fails|skipIf|runIf)\b/, tests)).toEqual([]);
  expect(tests.length).toBeGreaterThan(10);
});

test('wiring: every "Check:" of a docstring names a test that exists', () => {
  const claims = filesUnder('lib', ['.ts', '.tsx']).flatMap((file) =>
    [...textOf(file).matchAll(/^\s*\*\s*Check: (.+)$/gm)].flatMap(([, line = '']) => namedTests(line, file)),
  );
  expect(claims.length).toBeGreaterThan(100);
  expect([
    ...new Set(claims.filter(({ test: named }) => !existsSync(path.join(ROOT, named))).map(text)),
  ]).toEqual([]);
});

type Claim = { readonly file: string; readonly test: string };

/** Test files named in a line; a bare name after the first means the same folder. */
function namedTests(line: string, file: string): Claim[] {
  const names = [...line.matchAll(/[\w./-]+\.test\.tsx?/g)].map(([name]) => name);
  const folder = path.posix.dirname(names[0] ?? '');
  return names.map((name) => ({ file, test: name.includes('/') ? name : `${folder}/${name}` }));
}

function text(claim: Claim): string {
  return `${claim.file} names ${claim.test}`;
}
