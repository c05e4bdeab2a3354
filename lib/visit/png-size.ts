const alphabet = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/';
const signature = [137, 80, 78, 71, 13, 10, 26, 10];
/** Signature, length and name of the first chunk, width and height. */
const headBytes = 24;

/**
 * Size of a PNG picture given as a data URL.
 *
 * @returns width and height in dots, or `undefined` when it is no PNG
 * Source: W3C, PNG specification, sections 5.2 and 11.2.1, status memory
 * Check: tests/visit/company.test.ts
 */
export function pngSize(
  dataUrl: string,
): { readonly widthPx: number; readonly heightPx: number } | undefined {
  const bytes = bytesOf(dataUrl.slice(dataUrl.indexOf(',') + 1), headBytes);
  const header = String.fromCharCode(...bytes.slice(12, 16));
  if (bytes.length < headBytes || header !== 'IHDR' || signature.some((byte, i) => bytes[i] !== byte)) {
    return undefined;
  }
  return { widthPx: wordAt(bytes, 16), heightPx: wordAt(bytes, 20) };
}

/** The first bytes of a base64 text. */
function bytesOf(base64: string, count: number): number[] {
  const bits = [...base64.slice(0, Math.ceil((count * 4) / 3))].map((letter) => alphabet.indexOf(letter));
  return Array.from({ length: Math.min(count, Math.floor((bits.length * 3) / 4)) }, (_, i) => {
    const at = Math.floor((i * 4) / 3);
    const [first = 0, second = 0] = [bits[at], bits[at + 1]];
    const shift = (i % 3) * 2;
    return ((first << (2 + shift)) | (second >> (4 - shift))) & 255;
  });
}

function wordAt(bytes: readonly number[], at: number): number {
  return bytes.slice(at, at + 4).reduce((sum, byte) => sum * 256 + byte, 0);
}
