import { execFileSync, spawnSync } from 'node:child_process';
import { mkdirSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { expect, test } from 'vitest';
import { closingLine, countOf } from '@/scripts/test-stages.mjs';
import { ROOT, runScript, temporaryFolder } from './run-script';

test('wiring: the counts are those of a real report: passed, failed and skipped', () => {
  const folder = temporaryFolder();
  mkdirSync(path.join(folder, 'tests'));
  writeFileSync(
    path.join(folder, 'tests/some.test.js'),
    `globalThis.test('a', () => {}); globalThis.test('b', () => {});
     globalThis.test('c', () => { throw new Error('c'); });
     globalThis.test['sk' + 'ip']('d', () => {}); globalThis.test['to' + 'do']('e');`,
  );
  const report = path.join(folder, 'report.json');
  const vitest = path.join(ROOT, 'node_modules/vitest/vitest.mjs');
  const args = [vitest, 'run', '--globals', '--root', folder, '--reporter=json', `--outputFile=${report}`];
  const { status } = spawnSync(process.execPath, args, { stdio: 'ignore' });
  expect(status).toBe(1);
  expect(countOf(report)).toEqual({ passed: 2, failed: 1, skipped: 2 });
  expect(countOf(path.join(folder, 'no-report.json'))).toEqual({ passed: 0, failed: 0, skipped: 0 });
});

test('wiring: the closing line never claims success for a stage that failed', () => {
  const lines = [
    closingLine({ passed: 12, failed: 0 }, false),
    closingLine({ passed: 12, failed: 3 }, true),
    closingLine({ passed: 0, failed: 0 }, true),
  ];
  expect(lines).toEqual(['12 passed, 0 failed', '12 passed, 3 failed', '0 passed, 1 failed']);
});

test('wiring: a stage that is none is named, with those there are', async () => {
  const { code, err } = await runScript('test.mjs', ['units']);
  expect(code).toBe(2);
  expect(err).toBe('No such stage: units. There are: lint, types, imports, unit, build, e2e.\n');
});

test('wiring: what CI runs is npm test and nothing else', () => {
  const script = execFileSync('cat', [path.join(ROOT, '.ci/run')], { encoding: 'utf8' });
  const lines = script.split('\n').filter((line) => line !== '' && !line.startsWith('#'));
  expect(lines).toEqual(['set -euo pipefail', 'cd "$(dirname "$0")/.."', 'npm test']);
});
