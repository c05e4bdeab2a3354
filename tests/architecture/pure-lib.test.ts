import { expect, test } from 'vitest';
import { impuritiesIn } from './impurities';
import { filesUnder, PURE_FOLDERS, textOf } from './source-files';

test('wiring: pure lib reads no clock, no chance, no machine settings, and prints nothing', () => {
  const files = PURE_FOLDERS.flatMap((folder) => filesUnder(folder, ['.ts', '.tsx']));
  expect(files.length).toBeGreaterThan(60);
  const found = files.flatMap((file) =>
    impuritiesIn(textOf(file)).map(({ what, line }) => `${file}:${line} ${what}`),
  );
  expect(found).toEqual([]);
});

test('wiring: the scan finds each impurity', () => {
  const cases: readonly (readonly [code: string, what: string])[] = [
    ['const a = Date.now();', 'Date.now'],
    ['const a = new Date();', 'Date()'],
    ['const a = new Date;', 'Date()'],
    ['const a = Date();', 'Date()'],
    ['const f = Math.random;', 'Math.random'],
    ['console.log(1);', 'console'],
    ['const b = structuredClone(a);', 'structuredClone'],
    ['const m = new Date(text).getMonth();', 'getMonth'],
    ['const t = (1234).toLocaleString();', 'toLocaleString()'],
    ['const t = new Intl.NumberFormat();', 'Intl.NumberFormat()'],
    ['words.sort((a, b) => a.localeCompare(b));', 'localeCompare()'],
  ];
  expect(cases.map(([code]) => impuritiesIn(code).map(({ what }) => what))).toEqual(
    cases.map(([, what]) => [what]),
  );
  expect(cases).toHaveLength(11);
});

test('wiring: the scan lets comments, texts, members and given dates be', () => {
  const fine = [
    '// Date.now() and Math.random() are for others',
    "const a = 'new Date()';",
    'const d = new Date(text).getUTCMonth();',
    'const t = visit.console.structuredClone;',
    "const n = (1234).toLocaleString('en-US');",
    "const n = new Intl.NumberFormat('en-US');",
    'const o = { console: 1 };',
  ];
  expect(fine.flatMap((code) => impuritiesIn(code))).toEqual([]);
  expect(fine).toHaveLength(7);
});

test('wiring: the compiler configuration of pure lib covers it and knows neither browser nor Node', () => {
  const config = JSON.parse(textOf('tsconfig.lib.json')) as {
    compilerOptions: { lib: string[]; types: string[] };
    include: string[];
  };
  expect(config.compilerOptions.lib).toEqual(['ES2023']);
  expect(config.compilerOptions.types).toEqual([]);
  const missing = PURE_FOLDERS.filter((folder) => !config.include.includes(`${folder}/**/*.ts`));
  expect(missing).toEqual([]);
});
