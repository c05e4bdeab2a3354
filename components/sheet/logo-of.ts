import { logoLimits } from '@/lib/visit/logo-limits';

/** Largest file taken in: more is no logo. */
const mostFileBytes = 5_000_000;
const types = ['image/png', 'image/jpeg'];
/** Each try is drawn this much smaller than the one before. */
const shrinkBy = 0.8;
const tries = 8;

export type LogoMade =
  | { readonly ok: true; readonly dataUrl: string }
  | { readonly ok: false; readonly why: 'type' | 'size' | 'unreadable' };

/**
 * A logo file as a small PNG, drawn anew: nothing of the file but its picture is kept.
 *
 * @param file  as chosen by the user
 * @returns a data URL inside the visit's limits, or why there is none
 */
export async function logoOf(file: File): Promise<LogoMade> {
  if (!types.includes(file.type)) return { ok: false, why: 'type' };
  if (file.size > mostFileBytes) return { ok: false, why: 'size' };
  const picture = await createImageBitmap(file).catch(() => undefined);
  if (picture === undefined || picture.width === 0) return { ok: false, why: 'unreadable' };
  let scale = Math.min(1, logoLimits.widthPx / picture.width, logoLimits.heightPx / picture.height);
  for (let i = 0; i < tries; i++, scale *= shrinkBy) {
    const dataUrl = drawn(picture, scale);
    if (dataUrl !== undefined && dataUrl.length <= logoLimits.characters) return { ok: true, dataUrl };
  }
  return { ok: false, why: 'size' };
}

function drawn(picture: ImageBitmap, scale: number): string | undefined {
  const canvas = document.createElement('canvas');
  canvas.width = Math.max(1, Math.floor(picture.width * scale));
  canvas.height = Math.max(1, Math.floor(picture.height * scale));
  const context = canvas.getContext('2d');
  if (context === null) return undefined;
  context.drawImage(picture, 0, 0, canvas.width, canvas.height);
  return canvas.toDataURL('image/png');
}
