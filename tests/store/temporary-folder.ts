import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { onTestFinished } from 'vitest';
import { openStore, type Store } from '@/lib/store/open-store';

/** A folder of its own for one test, removed when the test ends. */
export function temporaryFolder(): string {
  const folder = mkdtempSync(path.join(tmpdir(), 'keepworth-test-'));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
}

/** A store in the folder, closed when the test ends. */
export async function openIn(folder: string): Promise<Store> {
  const store = await openStore(folder);
  onTestFinished(() => store.close());
  return store;
}

/** A minute of an invented morning, as the caller's clock would give it. */
export function minute(n: number): string {
  return `2026-11-25T09:${String(n).padStart(2, '0')}:00Z`;
}
