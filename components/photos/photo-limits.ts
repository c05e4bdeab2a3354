/** Longer edge of a kept photo [pixels]: a nameplate stays readable. Our own limit. */
export const MAX_EDGE_PX = 1_600;

/** Quality of the JPEG, 0 to 1: artefacts stay below what one sees on a phone. Our own choice. */
export const JPEG_QUALITY = 0.8;

/** All photos of this device together [bytes]. Our own limit. */
export const DEVICE_BYTES = 200_000_000;

/**
 * Size of a picture shrunk to fit, its shape kept; a small one stays as it is.
 *
 * Check: tests/screens/photo-limits.test.ts
 */
export function fittedSize(
  width: number,
  height: number,
): { readonly width: number; readonly height: number } {
  const scale = Math.min(1, MAX_EDGE_PX / Math.max(width, height));
  return { width: Math.max(1, Math.round(width * scale)), height: Math.max(1, Math.round(height * scale)) };
}

/** Bytes as a person reads them: "340 kB", "1.2 MB". */
export function bytesWords(bytes: number): string {
  if (bytes < 1_000_000) return `${Math.max(1, Math.round(bytes / 1_000))} kB`;
  return `${(bytes / 1_000_000).toFixed(1)} MB`;
}
