import { setTimeout as sleep } from 'node:timers/promises';
import { type StoreError, storeErrorFrom } from './store-error';

/**
 * How long one statement waits inside SQLite. Short, since that wait stops this whole program: another connection of
 * the same program could never finish its save meanwhile.
 */
export const STATEMENT_WAIT_MS = 20;

/** Between two tries this program goes on with its other work. */
const PAUSE_MS = 30;

/** Together with the pauses: a save waits about five seconds for another one to end. */
const MAX_TRIES = 100;

/**
 * Does the work, again and again while another program holds the database.
 *
 * @param work    one transaction or one reading: when it fails, it has changed nothing
 * @param detail  shown in the message when it fails in the end
 * @throws StoreError: `busy` after about five seconds, any other at once
 * Check: tests/store/racing-saves.test.ts
 */
export async function retryWhenBusy<T>(work: () => T | Promise<T>, detail?: string): Promise<T> {
  for (let attempt = 1; ; attempt++) {
    try {
      return await work();
    } catch (thrown) {
      const error: StoreError = storeErrorFrom(thrown, detail);
      if (error.code !== 'busy' || attempt === MAX_TRIES) throw error;
      await sleep(PAUSE_MS);
    }
  }
}
