import { fittedSize, JPEG_QUALITY } from './photo-limits';

/**
 * A picture as a JPEG that fits, upright, without what a camera writes along (place, time, device).
 *
 * @throws when the file is no picture that this browser can read
 */
export async function shrinkPhoto(file: Blob): Promise<Blob> {
  const bitmap = await createImageBitmap(file, { imageOrientation: 'from-image' });
  const { width, height } = fittedSize(bitmap.width, bitmap.height);
  const canvas = document.createElement('canvas');
  canvas.width = width;
  canvas.height = height;
  const context = canvas.getContext('2d');
  if (context === null) throw new Error('this browser does not draw');
  context.drawImage(bitmap, 0, 0, width, height);
  bitmap.close();
  const blob = await new Promise<Blob | null>((resolve) =>
    canvas.toBlob(resolve, 'image/jpeg', JPEG_QUALITY),
  );
  if (blob === null) throw new Error('this browser makes no JPEG');
  return blob;
}
