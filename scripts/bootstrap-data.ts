// Makes the database and, the first time, loads the invented visits of data-demo. Prints what it did.
import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { dataFolder } from '../lib/store/data-folder';
import { openStore } from '../lib/store/open-store';
import { StoreError } from '../lib/store/store-error';

/** The invented visits; each file's `id` is the visit's. */
function demoVisits(folder: string): { id: string; draft: unknown }[] {
  return readdirSync(folder)
    .filter((name) => name.endsWith('.json'))
    .sort()
    .map((name) => {
      const draft: unknown = JSON.parse(readFileSync(path.join(folder, name), 'utf8'));
      return { id: String((draft as { id?: unknown }).id), draft };
    });
}

async function prepareData(): Promise<number> {
  const folder = dataFolder(process.env, process.cwd());
  try {
    const store = await openStore(folder);
    const demo = await store.loadDemo({
      visits: demoVisits(path.resolve(import.meta.dirname, '../data-demo')),
      savedBy: 'Keepworth demo',
      savedAt: new Date().toISOString(),
    });
    await store.close();
    if (!demo.ok) {
      console.error(`The demo was not loaded: ${demo.issues.map((i) => `${i.label}: ${i.fix}`).join(' ')}`);
    } else if (demo.loaded > 0) {
      console.log(`Loaded ${demo.loaded} invented visits to look at.`);
    }
    return demo.ok ? 0 : 1;
  } catch (thrown) {
    console.error(thrown instanceof StoreError ? thrown.message : thrown);
    return 1;
  }
}

process.exitCode = await prepareData();
