import { execFileSync } from 'node:child_process';
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { expect, test } from 'vitest';
import { appraise } from '@/lib/appraise/appraise';
import { readVisit } from '@/lib/visit/read-visit';
import { ROOT, runScript, temporaryFolder } from './run-script';

const DEMO = path.join(ROOT, 'data-demo');
const demoFiles = readdirSync(DEMO)
  .filter((name) => name.endsWith('.json'))
  .map((name) => path.join(DEMO, name));
const demoFile = demoFiles[0] ?? '';

type AnyVisit = {
  unit: Record<string, unknown>;
  runs: Record<string, unknown>[];
  choices: Record<string, unknown>[];
} & Record<string, unknown>;

/** A demo visit with something changed, in a file. */
function changed(folder: string, change: (visit: AnyVisit) => void): string {
  const visit = JSON.parse(readFileSync(demoFile, 'utf8')) as AnyVisit;
  change(visit);
  const file = path.join(folder, 'changed.json');
  writeFileSync(file, JSON.stringify(visit));
  return file;
}

test('wiring: every demo visit gives a table', async () => {
  const seen: string[] = [];
  for (const file of demoFiles) {
    const { code, out, err } = await runScript('sheet.mjs', [file]);
    expect({ file, code, err }).toEqual({ file, code: 0, err: '' });
    expect(out).toMatch(/\nPay now .*\$/);
    seen.push(file);
  }
  expect(seen.length).toBeGreaterThanOrEqual(5);
}, 180_000);

test('wiring: the table has a row for each thing a customer decides on, and a column per choice', async () => {
  const { out } = await runScript('sheet.mjs', [demoFile]);
  const reading = readVisit(JSON.parse(readFileSync(demoFile, 'utf8')));
  expect(reading.ok).toBe(true);
  const choices = reading.ok ? appraise(reading.value).comparison.choices : [];
  expect(choices.length).toBeGreaterThanOrEqual(3);
  const [head = '', rule = ''] = [out.slice(0, out.indexOf('\n--')), /^-[- ]+$/m.exec(out)?.[0]];
  expect(rule.split('  ').filter((part) => part !== '')).toHaveLength(choices.length + 1);
  const firstWords = choices.map(({ name }) => name.split(' ')[0] ?? '');
  expect(firstWords.filter((word) => !head.includes(word))).toEqual([]);
  const rows = [
    'Pay now',
    'Pay monthly',
    'Running cost a year',
    'Chance that',
    'Total over',
    'Against leaving it',
  ];
  const starts = out.split('\n').map((line) => line.split('  ')[0] ?? '');
  expect(rows.filter((row) => !starts.some((start) => start.startsWith(row)))).toEqual([]);
});

test('wiring: --json prints the very appraisal and nothing else', async () => {
  const { code, out, err } = await runScript('sheet.mjs', [demoFile, '--json']);
  expect({ code, err }).toEqual({ code: 0, err: '' });
  const reading = readVisit(JSON.parse(readFileSync(demoFile, 'utf8')));
  expect(reading.ok).toBe(true);
  const here = reading.ok ? JSON.parse(JSON.stringify(appraise(reading.value))) : undefined;
  expect(JSON.parse(out)).toEqual(here);
});

test('wiring: a sheet of two pages, on letter unless A4 is asked for, and file names are meant from where one stands', async () => {
  const folder = temporaryFolder();
  mkdirSync(path.join(folder, 'below'));
  const ran = [
    await runScript('sheet.mjs', [demoFile, 'letter.pdf'], folder),
    await runScript('sheet.mjs', [demoFile, 'below/a4.pdf', '--paper', 'a4'], folder),
  ];
  expect(ran.map(({ code, err }) => ({ code, err }))).toEqual(Array(2).fill({ code: 0, err: '' }));
  expect(ran.map(({ out }) => out.trimEnd().split('\n').at(-1))).toEqual([
    'Sheet written to letter.pdf',
    'Sheet written to below/a4.pdf',
  ]);
  const pages = ['letter.pdf', 'below/a4.pdf'].map((name) =>
    execFileSync(process.env.KEEPWORTH_PDFTOTEXT ?? 'pdftotext', [path.join(folder, name), '-'], {
      encoding: 'utf8',
    })
      .split('\f')
      .filter((page) => page.trim() !== ''),
  );
  expect(pages.map((texts) => texts.length)).toEqual([2, 2]);
  const boxes = ['letter.pdf', 'below/a4.pdf'].map((name) =>
    /MediaBox \[0 0 ([\d.]+) ([\d.]+)\]/.exec(readFileSync(path.join(folder, name), 'latin1')),
  );
  // US letter 8.5 x 11 in, A4 210 x 297 mm (ISO 216), in points of 1/72 in.
  expect(boxes.map((box) => [Math.round(Number(box?.[1])), Math.round(Number(box?.[2]))])).toEqual([
    [612, 792],
    [595, 842],
  ]);
});

test('wiring: bad input exits 2 and names field, value, limit and remedy of everything at once', async () => {
  const folder = temporaryFolder();
  const file = changed(folder, (visit) => {
    Object.assign(visit.runs[0] ?? {}, { suctionPsig: 3000, suctionLineF: 400, dischargeLineF: 'abc' });
  });
  const { code, out, err } = await runScript('sheet.mjs', [file, path.join(folder, 'out.pdf')]);
  expect({ code, out }).toEqual({ code: 2, out: '' });
  expect(err).toContain(`3 things to correct in ${file}:`);
  const groups = err.trimEnd().split('\n\n').slice(1);
  expect(groups.map((group) => group.split('\n')[0])).toEqual([
    'Suction pressure (runs.0.suctionPsig)',
    'Suction line temperature (runs.0.suctionLineF)',
    'Discharge line temperature (runs.0.dischargeLineF)',
  ]);
  expect(groups.map((group) => group.split('\n')[1]?.trim())).toEqual([
    'found:    3000',
    'found:    400',
    'found:    abc',
  ]);
  expect(groups.map((group) => group.split('\n')[2]?.trim())).toEqual([
    'allowed:  between 0 and 300 psig',
    'allowed:  between -40 and 130 °F',
    'allowed:  between 40 and 350 °F',
  ]);
  expect(groups.every((group) => /\n {2}to do: {4}[A-Z].*\.$/.test(group))).toBe(true);
  expect(readdirSync(folder)).not.toContain('out.pdf');
});

test('wiring: every kind of bad file exits 2 with a sentence on standard error and nothing on standard output', async () => {
  const folder = temporaryFolder();
  const text = (name: string, content: string) => {
    writeFileSync(path.join(folder, name), content);
    return path.join(folder, name);
  };
  const cases: readonly (readonly [what: string, file: string, says: RegExp])[] = [
    ['no such file', path.join(folder, 'nowhere.json'), /There is no such file: check its name and folder\./],
    ['a folder', folder, /Name the visit file itself/],
    ['not JSON', text('a.json', '{"schemaVersion": 1,'), /not readable as JSON/],
    ['empty', text('b.json', ''), /not readable as JSON/],
    [
      'a list',
      text('c.json', '[]'),
      /found: {4}a list\n {2}allowed: {2}one visit, as a JSON object.*\n.*Choose a visit file saved by Keepworth/,
    ],
    ['null', text('g.json', 'null'), /found: {4}null\n {2}allowed: {2}one visit, as a JSON object/],
    [
      'a newer version',
      text('d.json', '{"schemaVersion": 2}'),
      /found: {4}2\n.*version 1\n.*newer Keepworth/,
    ],
    ['no version', text('e.json', '{}'), /no version this program knows/],
    ['too big', text('f.json', ' '.repeat(5_000_001)), /5,000,001 bytes\n.*at most 5,000,000 bytes/],
  ];
  const told: unknown[] = [];
  for (const [what, file, says] of cases) {
    const { code, out, err } = await runScript('sheet.mjs', [file]);
    told.push({ what, code, out, said: says.test(err) || err, stack: / {4}at /.test(err) });
  }
  expect(told).toEqual(cases.map(([what]) => ({ what, code: 2, out: '', said: true, stack: false })));
  expect(told).toHaveLength(9);
});

test('wiring: a heating run on a cooling-only unit, a negative price, a loan of no months, a city unknown', async () => {
  const folder = temporaryFolder();
  const cases: readonly (readonly [change: (visit: AnyVisit) => void, says: RegExp])[] = [
    [
      (visit) => {
        visit.unit.kind = 'airConditioner';
        visit.runs.splice(0, visit.runs.length, { id: 'r', mode: 'heating' });
      },
      /Run 1 \(runs\.0\)\n.*heating\n.*cooling only, because the unit is an air conditioner/,
    ],
    [
      (visit) => {
        visit.choices = [
          {
            kind: 'repair',
            id: 'x',
            name: 'Repair',
            actions: [],
            priceLines: [{ kind: 'part', label: 'Part', amount: 1, unitPriceUsd: -3 }],
          },
        ];
      },
      /\(choices\.0\.priceLines\.0\.unitPriceUsd\)\n {2}found: {4}-3\n {2}allowed: {2}between 0 and /,
    ],
    [
      (visit) => {
        visit.choices = [
          {
            kind: 'repair',
            id: 'x',
            name: 'Repair',
            actions: [],
            priceLines: [],
            financing: { kind: 'levelLoan', rateFracPerYear: 0.1, termMonths: 0 },
          },
        ];
      },
      /\(choices\.0\.financing\.termMonths\)\n {2}found: {4}0\n {2}allowed: {2}between 1 and /,
    ],
    [
      (visit) => {
        visit.site = { climate: { kind: 'city', city: 'atlantis' } };
      },
      /Climate city \(site\.climate\.city\)\n {2}found: {4}atlantis\n {2}allowed: {2}one of the 29 listed cities\n.*atlanta-ga/,
    ],
  ];
  const told: unknown[] = [];
  for (const [change, says] of cases) {
    const { code, err } = await runScript('sheet.mjs', [changed(folder, change)]);
    told.push({ code, said: says.test(err) || err });
  }
  expect(told).toEqual(Array(4).fill({ code: 2, said: true }));
});

test('wiring: without arguments, or with wrong ones, the usage and exit code 2', async () => {
  const ran = [
    await runScript('sheet.mjs', []),
    await runScript('sheet.mjs', [demoFile, '--paper', 'legal']),
    await runScript('sheet.mjs', [demoFile, path.join(temporaryFolder(), 'not', 'there', 'out.pdf')]),
    await runScript('sheet.mjs', [demoFile, temporaryFolder()]),
  ];
  expect(ran.map(({ code, out }) => ({ code, out }))).toEqual(Array(4).fill({ code: 2, out: '' }));
  expect(ran[0]?.err).toMatch(/^Usage: npm run sheet/);
  expect(ran[1]?.err).toMatch(/^Paper must be letter or a4, not "legal"\.\n\nUsage: /);
  expect(ran[2]?.err).toMatch(
    /^The sheet cannot be written to .*out\.pdf \(there is no such folder\): name another file\.\n$/,
  );
  expect(ran[3]?.err).toMatch(
    /^The sheet cannot be written to .* \(it is a folder\): name another file\.\n$/,
  );
});
