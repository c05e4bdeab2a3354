import { t } from '@/components/words/words';
import { MAX_PHOTOS } from '@/lib/visit/max-photos';
import { bytesWords, DEVICE_BYTES } from './photo-limits';
import { bytesKept, keepPhoto } from './photo-store';
import { shrinkPhoto } from './shrink-photo';

export type Added = { readonly ids: readonly string[]; readonly words: string };

/**
 * Shrinks and keeps pictures for an observation, as far as its limits go.
 *
 * @param has how many it has already
 * @returns names of those kept, and in words what was not
 */
export async function addPhotos(visitId: string, files: readonly File[], has: number): Promise<Added> {
  const ids: string[] = [];
  const words: string[] = [];
  const room = Math.max(0, MAX_PHOTOS - has);
  if (files.length > room) words.push(t('photo.tooMany', { n: MAX_PHOTOS }));
  for (const file of files.slice(0, room)) {
    const blob = await shrinkPhoto(file).catch(() => undefined);
    if (blob === undefined) {
      words.push(t('photo.unreadable', { name: file.name }));
      continue;
    }
    const id = `photo-${crypto.getRandomValues(new Uint32Array(3)).join('-')}`;
    try {
      if ((await bytesKept()) + blob.size > DEVICE_BYTES) {
        words.push(t('photo.full', { size: bytesWords(DEVICE_BYTES) }));
        break;
      }
      await keepPhoto({ id, visitId, blob, takenAt: Date.now() });
      ids.push(id);
    } catch {
      words.push(t('photo.notKept'));
      break;
    }
  }
  return { ids, words: words.join(' ') };
}
