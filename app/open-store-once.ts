import { dataFolder } from '@/lib/store/data-folder';
import { openStore, type Store } from '@/lib/store/open-store';

/** Kept on the process, so that a reload of the code in development does not open the database twice. */
const held = globalThis as { keepworthStore?: Promise<Store> };

/** The one store of this server; a failed opening is tried again at the next request. */
export function store(): Promise<Store> {
  held.keepworthStore ??= openStore(dataFolder(process.env, process.cwd())).catch((thrown: unknown) => {
    delete held.keepworthStore;
    throw thrown;
  });
  return held.keepworthStore;
}
