import { mkdirSync, renameSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { expect, test } from 'vitest';
import { sourceHash } from '@/scripts/bootstrap-build.mjs';
import { installReason } from '@/scripts/bootstrap-install.mjs';
import { findProgram } from '@/scripts/bootstrap-tools.mjs';
import { wantedPort } from '@/scripts/start-keepworth.mjs';
import { temporaryFolder } from './run-script';

type Packages = Record<string, { version?: string; optional?: boolean }>;

/** A project folder whose lock file and installed packages are as given. */
function project(locked: Packages, installed: Packages | undefined): string {
  const root = temporaryFolder();
  writeFileSync(path.join(root, 'package-lock.json'), JSON.stringify({ packages: locked }));
  mkdirSync(path.join(root, 'node_modules'));
  if (installed !== undefined) {
    const file = path.join(root, 'node_modules/.package-lock.json');
    writeFileSync(file, JSON.stringify({ packages: installed }));
  }
  return root;
}

test('wiring: packages are installed when they are not there as locked, and only then', () => {
  const locked: Packages = {
    '': { version: '0.1.0' },
    'node_modules/a': { version: '1.0.0' },
    'node_modules/a/node_modules/b': { version: '2.0.0' },
    'node_modules/for-mac': { version: '3.0.0', optional: true },
  };
  const { 'node_modules/for-mac': _mac, '': _root, ...asLocked } = locked;
  const older = { ...asLocked, 'node_modules/a': { version: '0.9.0' } };
  const { 'node_modules/a/node_modules/b': _b, ...missing } = asLocked;
  const wrongOptional = { ...asLocked, 'node_modules/for-mac': { version: '2.9.0', optional: true } };
  const reasons = [undefined, asLocked, older, missing, wrongOptional].map((installed) =>
    installReason(project(locked, installed)),
  );
  expect(reasons).toEqual([
    'none are installed yet',
    '',
    '1 not as in package-lock.json (a)',
    '1 not as in package-lock.json (b)',
    '1 not as in package-lock.json (for-mac)',
  ]);
});

test('wiring: packages made for another Node are installed again', () => {
  const root = project(
    { 'node_modules/a': { version: '1.0.0' } },
    { 'node_modules/a': { version: '1.0.0' } },
  );
  const stamp = path.join(root, 'node_modules/.keepworth-install.json');
  const here = { abi: process.versions.modules, platform: process.platform, arch: process.arch };
  writeFileSync(stamp, JSON.stringify(here));
  expect(installReason(root)).toBe('');
  writeFileSync(stamp, JSON.stringify({ ...here, abi: '1' }));
  expect(installReason(root)).toBe('they were made for another Node.js or another system');
});

test('wiring: a build is known by the names and contents of its sources', () => {
  const root = temporaryFolder();
  mkdirSync(path.join(root, 'app'));
  const write = (name: string, content: string) => writeFileSync(path.join(root, name), content);
  write('app/page.tsx', 'one');
  const first = sourceHash(root);
  write('app/page.tsx', 'one');
  write('README.md', 'not a source');
  expect(sourceHash(root)).toBe(first);
  write('app/page.tsx', 'two');
  const second = sourceHash(root);
  write('app/other.tsx', '');
  const third = sourceHash(root);
  renameSync(path.join(root, 'app/other.tsx'), path.join(root, 'app/moved.tsx'));
  const fourth = sourceHash(root);
  expect(new Set([first, second, third, fourth]).size).toBe(4);
});

test('wiring: the port is the one asked for, else from the environment, else 3000; anything else is refused', () => {
  const asked: readonly (readonly [args: readonly string[], env: Record<string, string>])[] = [
    [[], {}],
    [['--port', '4000'], { KEEPWORTH_PORT: '5000' }],
    [['--port=4001'], {}],
    [[], { KEEPWORTH_PORT: '5000', PORT: '6000' }],
    [[], { PORT: '6000' }],
    [['--port', '1'], {}],
    [['--port', '65535'], {}],
  ];
  expect(asked.map(([args, env]) => wantedPort(args, env))).toEqual([3000, 4000, 4001, 5000, 6000, 1, 65535]);
  const given = ['0', '65536', 'http', '3000.5', '', '-1'];
  const refused = [...given.map((text) => wantedPort(['--port', text], {})), wantedPort([], { PORT: 'x' })];
  expect(refused).toEqual(
    [...given, 'x'].map((text) => `The port must be a whole number from 1 to 65535, not "${text}".`),
  );
  expect(wantedPort(['--port'], {})).toBe('The port must be a whole number from 1 to 65535, not "".');
  const odd = [['4000'], ['--port', '4000', '--host'], ['--port=4000', 'x'], ['--open', '--port', '1']];
  expect(odd.map((args) => wantedPort(args, {}))).toEqual(
    ['4000', '--host', 'x', '--open'].map((extra) => `There is no option "${extra}".`),
  );
});

test('wiring: programs are found on the path, or not', () => {
  expect(findProgram('sh')).toMatch(/\/sh$/);
  expect(findProgram('no-program-of-this-name')).toBeUndefined();
});
