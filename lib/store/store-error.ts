/**
 * Why the store could not do its work. Recovery, by code:
 * - `folder`   the data folder cannot be made or written: the owner changes its rights or `KEEPWORTH_DATA`
 * - `damaged`  the file is not a database or is broken: put a backup or an export back
 * - `newer`    a newer Keepworth wrote it: update this one
 * - `busy`     another program held it too long: try again
 * - `full`     no room left on the disk: make room, then try again; nothing was half written
 * - `closed`   our own slip: used after `close()`
 * - `other`    anything else; `cause` has it
 */
export type StoreErrorCode = 'folder' | 'damaged' | 'newer' | 'busy' | 'full' | 'closed' | 'other';

const SENTENCES: Readonly<Record<StoreErrorCode, string>> = {
  folder: 'The data folder cannot be written. Check its rights, or name another folder in KEEPWORTH_DATA.',
  damaged: 'The database file cannot be read. Put a backup or an export back in its place.',
  newer: 'The database was written by a newer Keepworth. Update this one before opening it.',
  busy: 'Another program is using the database. Nothing was changed: try again.',
  full: 'The disk is full. Nothing was changed: make room, then try again.',
  closed: 'The database is already closed.',
  other: 'The database refused the work. Nothing was changed.',
};

/** The one error the store throws. Its message is a sentence fit to be shown. */
export class StoreError extends Error {
  readonly code: StoreErrorCode;
  constructor(code: StoreErrorCode, detail?: string, cause?: unknown) {
    super(detail === undefined ? SENTENCES[code] : `${SENTENCES[code]} (${detail})`, { cause });
    this.name = 'StoreError';
    this.code = code;
  }
}

const CODES: readonly (readonly [prefix: string, code: StoreErrorCode])[] = [
  ['SQLITE_BUSY', 'busy'],
  ['SQLITE_LOCKED', 'busy'],
  ['SQLITE_FULL', 'full'],
  ['SQLITE_READONLY', 'folder'],
  ['SQLITE_CANTOPEN', 'folder'],
  ['SQLITE_PERM', 'folder'],
  ['SQLITE_IOERR', 'folder'],
  ['SQLITE_NOTADB', 'damaged'],
  ['SQLITE_CORRUPT', 'damaged'],
  ['EACCES', 'folder'],
  ['EPERM', 'folder'],
  ['EROFS', 'folder'],
  ['ENOTDIR', 'folder'],
  ['EEXIST', 'folder'],
  ['ENOSPC', 'full'],
];

/**
 * Any thrown thing as a StoreError, keeping its cause.
 *
 * @param thrown what was caught
 * @param detail shown in brackets after the sentence, for example the folder
 * Check: tests/store/open-store.test.ts
 */
export function storeErrorFrom(thrown: unknown, detail?: string): StoreError {
  if (thrown instanceof StoreError) return thrown;
  const code = thrown instanceof Error && 'code' in thrown ? String(thrown.code) : '';
  const message = thrown instanceof Error ? thrown.message : String(thrown);
  if (/driver has already been destroyed|connection is not open/.test(message)) {
    return new StoreError('closed', undefined, thrown);
  }
  const known = CODES.find(([prefix]) => code.startsWith(prefix));
  return known === undefined
    ? new StoreError('other', detail ?? message, thrown)
    : new StoreError(known[1], detail, thrown);
}
