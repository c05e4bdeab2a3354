// A program of its own for racing-saves.test.ts: adds revisions to one visit and prints the number of each.
import { writeSync } from 'node:fs';
import { openStore } from '../../lib/store/open-store';

const [folder = '', who = '', count = '0'] = process.argv.slice(2);
const store = await openStore(folder);
let base = 0;
for (let saved = 0; saved < Number(count); ) {
  const result = await store.saveVisit({
    id: 'v',
    baseRevision: base,
    savedBy: `Program ${who}`,
    savedAt: '2026-11-25T09:00:00Z',
    draft: { who, saved },
  });
  if (result.ok) {
    base = result.revision;
    saved += 1;
    writeSync(1, `${result.revision}\n`);
  } else if (result.kind === 'stale') {
    base = result.current.revision;
  } else {
    throw new Error(JSON.stringify(result));
  }
}
await store.close();
