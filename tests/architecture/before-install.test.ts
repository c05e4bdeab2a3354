import { readdirSync } from 'node:fs';
import path from 'node:path';
import { expect, test } from 'vitest';
import { ROOT, textOf } from './source-files';

/** What runs before the packages are there may import only Node's own modules and its like. */
const AFTER_INSTALL = new Set(['start-server.mjs']);

test('wiring: the commands run before anything is installed', () => {
  const scripts = readdirSync(path.join(ROOT, 'scripts')).filter((name) => name.endsWith('.mjs'));
  const early = scripts.filter((name) => !AFTER_INSTALL.has(name));
  expect(early).toEqual(expect.arrayContaining(['bench.mjs', 'sheet.mjs', 'start.mjs', 'test.mjs']));
  const imports = early.flatMap((name) =>
    [...textOf(`scripts/${name}`).matchAll(/^(?:import|export) .*?from '([^']+)'|^import '([^']+)'/gm)].map(
      (match) => ({ name, from: match[1] ?? match[2] ?? '' }),
    ),
  );
  expect(imports.length).toBeGreaterThan(10);
  expect(imports.filter(({ from }) => !from.startsWith('node:') && !/^\.\/.*\.mjs$/.test(from))).toEqual([]);
  expect(imports.filter(({ from }) => AFTER_INSTALL.has(from.replace('./', '')))).toEqual([]);
});

test('wiring: an old Node can read the first file of every command', () => {
  const first = ['start.mjs', 'test.mjs', 'sheet.mjs', 'bench.mjs', 'bootstrap-node.mjs'];
  const newer = first.flatMap((name) =>
    textOf(`scripts/${name}`)
      .split('\n')
      .filter((line) => !line.trimStart().startsWith('//') && !line.trimStart().startsWith('*'))
      .filter((line) => /\?\?|\?\.[a-z[(]|^\s*await |\.at\(|from 'node:/.test(line))
      .map((line) => `${name}: ${line}`),
  );
  expect(newer).toEqual([]);
  // Each asks for a new enough Node before it loads the rest.
  const asks = first.slice(0, 4).map((name) => textOf(`scripts/${name}`));
  expect(asks.map((code) => code.indexOf('requireNode();') < code.indexOf('import('))).toEqual([
    true,
    true,
    true,
    true,
  ]);
});

test('wiring: the oldest Node named is the same everywhere', async () => {
  const { engines } = JSON.parse(textOf('package.json')) as { engines: { node: string } };
  const { OLDEST_NODE, nodeProblem } = await import('@/scripts/bootstrap-node.mjs');
  expect(engines.node).toBe(`>=${OLDEST_NODE}`);
  const fine = ['20.19.0', '20.20.2', '22.0.0', '24.1.0', '100.0.0'].map(nodeProblem);
  expect(fine).toEqual(['', '', '', '', '']);
  const old = ['20.18.3', '18.20.4', '14.0.0', '8.17.0', '0.12.18'].map(nodeProblem);
  expect(
    old.map((problem) => problem.startsWith('Keepworth needs Node.js 20.19 or newer; this is ')),
  ).toEqual(Array(5).fill(true));
});
