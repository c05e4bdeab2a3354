import { expect, test } from 'vitest';
import { sheetRequest, USAGE } from '@/scripts/sheet-arguments';

test('wiring: files and options in any order', () => {
  const asked: readonly (readonly string[])[] = [
    ['v.json'],
    ['v.json', 'out.pdf'],
    ['--paper', 'a4', 'v.json', 'out.pdf'],
    ['v.json', '--paper=letter', 'out.pdf', '--json'],
    ['--json', 'v.json'],
    ['v.json', '--lang', 'es', '--paper=a4'],
    ['v.json', '-h'],
    ['--help'],
  ];
  expect(asked.map(sheetRequest)).toEqual([
    { visitFile: 'v.json', json: false, paper: 'letter', lang: 'en' },
    { visitFile: 'v.json', pdfFile: 'out.pdf', json: false, paper: 'letter', lang: 'en' },
    { visitFile: 'v.json', pdfFile: 'out.pdf', json: false, paper: 'a4', lang: 'en' },
    { visitFile: 'v.json', pdfFile: 'out.pdf', json: true, paper: 'letter', lang: 'en' },
    { visitFile: 'v.json', json: true, paper: 'letter', lang: 'en' },
    { visitFile: 'v.json', json: false, paper: 'a4', lang: 'es' },
    { help: true },
    { help: true },
  ]);
});

test('wiring: what cannot be meant is named', () => {
  const asked: readonly (readonly string[])[] = [
    [],
    ['--json'],
    ['v.json', '--paper', 'legal'],
    ['v.json', '--paper'],
    ['v.json', '--lang=fr'],
    ['v.json', '--jsno'],
    ['v.json', 'out.pdf', 'again.pdf'],
  ];
  expect(asked.map(sheetRequest)).toEqual([
    { problem: '' },
    { problem: 'No visit file was named.' },
    { problem: 'Paper must be letter or a4, not "legal".' },
    { problem: 'Paper must be letter or a4, not "".' },
    { problem: 'Language must be en or es, not "fr".' },
    { problem: 'There is no option "--jsno".' },
    { problem: 'One visit and one PDF at a time; "again.pdf" is too much.' },
  ]);
});

test('wiring: the usage names every option and exit code', () => {
  expect(['--paper', '--json', 'Exit code: 0', ' 2 ', ' 1 '].filter((word) => !USAGE.includes(word))).toEqual(
    [],
  );
});
