import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import path from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import { minute, openIn, temporaryFolder } from './temporary-folder';

/** Another program at the same data folder: saves until it is told not to, or is killed. */
function saver(folder: string, ...args: readonly string[]): ChildProcess {
  const script = path.join(import.meta.dirname, 'saver.ts');
  const child = spawn(process.execPath, ['--import', 'tsx', script, folder, ...args], {
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  onTestFinished(() => void child.kill('SIGKILL'));
  return child;
}

async function linesOf(child: ChildProcess): Promise<string[]> {
  let text = '';
  child.stdout?.on('data', (chunk) => {
    text += String(chunk);
  });
  await once(child, 'close');
  return text.split('\n').slice(0, -1);
}

test('wiring: of two connections saving on one base, exactly one wins and the other sees both', async () => {
  const folder = temporaryFolder();
  const stores = await Promise.all([openIn(folder), openIn(folder)]);
  const outcomes: string[] = [];
  for (let round = 0; round < 25; round++) {
    const results = await Promise.all(
      stores.map((store, who) =>
        store.saveVisit({
          id: 'v',
          baseRevision: round,
          savedAt: minute(round),
          savedBy: `Saver ${who}`,
          draft: { round, who },
        }),
      ),
    );
    const won = results.findIndex((r) => r.ok);
    expect(results[won]).toEqual({ ok: true, revision: round + 1 });
    expect(results[1 - won]).toMatchObject({
      ok: false,
      kind: 'stale',
      current: { revision: round + 1, savedBy: `Saver ${won}`, draft: { round, who: won } },
      yours: { round, who: 1 - won },
    });
    outcomes.push('one won');
  }
  expect(outcomes).toHaveLength(25);
  expect(await stores[0]?.listRevisions('v')).toHaveLength(25);
});

test('wiring: three programs adding to one visit lose no save and leave no gap', async () => {
  const folder = temporaryFolder();
  const each = 40;
  const told = await Promise.all(['1', '2', '3'].map((who) => linesOf(saver(folder, who, String(each)))));
  expect(told.map((lines) => lines.length)).toEqual([each, each, each]);
  const store = await openIn(folder);
  const revisions = await store.listRevisions('v');
  expect(revisions.map((r) => r.revision)).toEqual(Array.from({ length: 3 * each }, (_, i) => 3 * each - i));
  // Each program was told the numbers it got: together they are all numbers, each once.
  expect(
    told
      .flat()
      .map(Number)
      .sort((a, b) => a - b),
  ).toEqual(Array.from({ length: 3 * each }, (_, i) => i + 1));
  const notes = await Promise.all(revisions.map((r) => store.loadRevision('v', r.revision)));
  expect(new Set(notes.map((r) => JSON.stringify(r?.draft))).size).toBe(3 * each);
});

test('wiring: what a program was told is saved survives its being killed', async () => {
  const folder = temporaryFolder();
  const child = saver(folder, '1', '1000000');
  let text = '';
  child.stdout?.on('data', (chunk) => {
    text += String(chunk);
    // Killed in the middle of its work, without a chance to close anything.
    if (text.split('\n').length > 60) child.kill('SIGKILL');
  });
  const [, signal] = await once(child, 'close');
  expect(signal).toBe('SIGKILL');
  const told = text.split('\n').slice(0, -1).map(Number);
  expect(told.length).toBeGreaterThanOrEqual(60);
  const store = await openIn(folder);
  const kept = (await store.listRevisions('v')).map((r) => r.revision);
  expect(told.filter((revision) => !kept.includes(revision))).toEqual([]);
  // At most the one save in flight was not answered yet.
  expect(kept.length - told.length).toBeLessThanOrEqual(2);
  expect(await store.loadVisit('v')).toMatchObject({ revision: kept.length });
  expect(
    await store.saveVisit({
      id: 'v',
      baseRevision: kept.length,
      savedAt: minute(0),
      savedBy: 'Ada',
      draft: 'after the crash',
    }),
  ).toEqual({ ok: true, revision: kept.length + 1 });
});

test('wiring: programs opening a fresh folder together all get a working store', async () => {
  const folder = temporaryFolder();
  const told = await Promise.all(['1', '2', '3', '4'].map((who) => linesOf(saver(folder, who, '1'))));
  expect(told.flat().map(Number).sort()).toEqual([1, 2, 3, 4]);
});
