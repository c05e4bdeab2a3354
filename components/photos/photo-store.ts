/** A photo as this device keeps it. */
export type KeptPhoto = {
  readonly id: string;
  readonly visitId: string;
  readonly blob: Blob;
  readonly takenAt: number;
};

const NAME = 'keepworth-photos';
const PHOTOS = 'photos';

let opened: Promise<IDBDatabase> | undefined;

function open(): Promise<IDBDatabase> {
  opened ??= new Promise<IDBDatabase>((resolve, reject) => {
    const request = indexedDB.open(NAME, 1);
    request.onupgradeneeded = () => {
      request.result.createObjectStore(PHOTOS, { keyPath: 'id' }).createIndex('visitId', 'visitId');
    };
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  }).catch((thrown: unknown) => {
    opened = undefined;
    throw thrown;
  });
  return opened;
}

async function run<T>(mode: IDBTransactionMode, work: (photos: IDBObjectStore) => IDBRequest<T>): Promise<T> {
  const db = await open();
  return new Promise((resolve, reject) => {
    const transaction = db.transaction(PHOTOS, mode);
    const request = work(transaction.objectStore(PHOTOS));
    transaction.oncomplete = () => resolve(request.result);
    transaction.onabort = () => reject(transaction.error);
  });
}

/** Keeps a photo on this device; rejects when the browser refuses or has no room. */
export async function keepPhoto(photo: KeptPhoto): Promise<void> {
  await run('readwrite', (photos) => photos.put(photo));
}

/** A photo of this device; `undefined` when it was taken on another. */
export function photoOf(id: string): Promise<KeptPhoto | undefined> {
  return run('readonly', (photos) => photos.get(id) as IDBRequest<KeptPhoto | undefined>);
}

/** Bytes of all photos of this device. */
export async function bytesKept(): Promise<number> {
  const all = await run('readonly', (photos) => photos.getAll() as IDBRequest<KeptPhoto[]>);
  return all.reduce((sum, { blob }) => sum + blob.size, 0);
}

/** What was removed stays this long, so that undo finds it. */
const UNDO_MS = 24 * 3_600_000;

/** Drops photos of a visit that nothing names any more and that no undo can ask for. */
export async function sweepPhotos(visitId: string, named: ReadonlySet<string>, now: number): Promise<void> {
  const own = await run(
    'readonly',
    (photos) => photos.index('visitId').getAll(visitId) as IDBRequest<KeptPhoto[]>,
  );
  for (const { id, takenAt } of own) {
    if (!named.has(id) && now - takenAt > UNDO_MS) await run('readwrite', (photos) => photos.delete(id));
  }
}
