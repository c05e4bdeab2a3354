import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { expect, inject, onTestFinished, test } from 'vitest';

/** `npm start` once more, beside the app that is running, with a data folder of its own. */
function start(args: readonly string[], env: Record<string, string> = {}) {
  const folder = mkdtempSync(path.join(tmpdir(), 'keepworth-start-'));
  const child = spawn(process.execPath, ['scripts/start.mjs', ...args], {
    env: { ...process.env, KEEPWORTH_DATA: folder, ...env },
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  onTestFinished(() => {
    child.kill('SIGKILL');
    rmSync(folder, { recursive: true, force: true });
  });
  const told = { text: '' };
  for (const stream of [child.stdout, child.stderr]) {
    stream.on('data', (chunk) => {
      told.text += String(chunk);
    });
  }
  return { child, told, folder };
}

async function until(told: { text: string }, pattern: RegExp, child: ChildProcess): Promise<void> {
  while (!pattern.test(told.text)) {
    if (child.exitCode !== null) throw new Error(`ended early:\n${told.text}`);
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
}

test('wiring: a taken port is said, the next free one taken, nothing built again, an interrupt ends it cleanly', async () => {
  const taken = Number(new URL(inject('address')).port);
  const { child, told, folder } = start([], { KEEPWORTH_PORT: String(taken) });
  await until(told, /Keepworth is ready: /, child);
  expect(told.text).toContain(`Port ${taken} is taken by another program; trying ${taken + 1}.`);
  expect(told.text).toMatch(/Loaded \d+ invented visits to look at\./);
  expect(told.text).not.toMatch(/Installing|Building/);
  const port = Number(/Keepworth is ready: http:\/\/127\.0\.0\.1:(\d+)/.exec(told.text)?.[1]);
  expect(port).toBeGreaterThan(taken);
  expect((await fetch(`http://127.0.0.1:${port}/`)).status).toBe(200);
  expect(existsSync(path.join(folder, 'keepworth.db'))).toBe(true);
  const ended = once(child, 'close');
  child.kill('SIGINT');
  expect(await ended).toEqual([0, null]);
  expect(told.text.trimEnd()).toMatch(/Stopping\.$/);
});

test('wiring: started again on the same data, the demo is not loaded twice', async () => {
  const { child, told } = start(['--port', '4790'], { KEEPWORTH_DATA: inject('dataFolder') });
  await until(told, /Keepworth is ready: /, child);
  expect(told.text).not.toContain('Loaded');
  const ended = once(child, 'close');
  child.kill('SIGTERM');
  expect(await ended).toEqual([0, null]);
});

test('wiring: a port that is none, or a data folder that cannot be, is said in a sentence', async () => {
  const wrong = start(['--port', 'eighty']);
  expect(await once(wrong.child, 'close')).toEqual([2, null]);
  expect(wrong.told.text).toMatch(
    /^The port must be a whole number from 1 to 65535, not "eighty"\.\nUsage: npm start/,
  );
  const blocked = start([], { KEEPWORTH_DATA: path.resolve('package.json') });
  expect(await once(blocked.child, 'close')).toEqual([1, null]);
  expect(blocked.told.text).toContain('The data folder cannot be written.');
  expect(blocked.told.text).not.toMatch(/ {4}at /);
});
