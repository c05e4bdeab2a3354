import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { expect, test } from 'vitest';
import { unpackWoff } from '@/components/pdf/unpack-woff';

const require = createRequire(import.meta.url);
const packed = readFileSync(
  require.resolve('@fontsource/atkinson-hyperlegible/files/atkinson-hyperlegible-latin-400-normal.woff'),
);

/** TrueType checksum: sum of big-endian words, modulo 2^32. Source: OpenType specification, table directory, memory. */
function checksum(table: Buffer): number {
  const padded = Buffer.concat([table, Buffer.alloc((4 - (table.length % 4)) % 4)]);
  let sum = 0;
  for (let i = 0; i < padded.length; i += 4) sum = (sum + padded.readUInt32BE(i)) >>> 0;
  return sum;
}

test('outside: every table unpacked has the checksum that the font\u2019s maker wrote into its directory', () => {
  const font = unpackWoff(packed);
  const count = font.readUInt16BE(4);
  expect(count).toBe(packed.readUInt16BE(12));
  expect(count).toBeGreaterThan(8);
  const wrong: string[] = [];
  for (let i = 0; i < count; i++) {
    const at = 12 + i * 16;
    const tag = font.toString('latin1', at, at + 4);
    const start = font.readUInt32BE(at + 8);
    // Tables must begin at a multiple of four (OpenType, table directory).
    if (start % 4 !== 0) wrong.push(`${tag} at ${start}`);
    const table = Buffer.from(font.subarray(start, start + font.readUInt32BE(at + 12)));
    // The head table's checksum is taken with its own adjustment field as zero.
    if (tag === 'head') table.writeUInt32BE(0, 8);
    if (checksum(table) !== font.readUInt32BE(at + 4)) wrong.push(tag);
  }
  expect(wrong).toEqual([]);
});

test('identity: refuses what is no WOFF', () => {
  expect(() => unpackWoff(Buffer.from('wOF2 and more'))).toThrow(/WOFF/);
});
