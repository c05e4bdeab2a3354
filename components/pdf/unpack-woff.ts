import { inflateSync } from 'node:zlib';

const headerBytes = 44;
const entryBytes = 20;
const sfntHeaderBytes = 12;
const sfntEntryBytes = 16;

/**
 * A WOFF 1 font as the plain TrueType file it was packed from. The PDF library unpacks each table anew at every use,
 * which takes a third of its time; a plain font spares that.
 *
 * @param woff  bytes of the file
 * @throws when it is not WOFF 1
 * Source: W3C, WOFF File Format 1.0, sections 3-5, status memory
 * Check: tests/pdf/unpack-woff.test.ts
 */
export function unpackWoff(woff: Buffer): Buffer {
  if (woff.toString('latin1', 0, 4) !== 'wOFF') throw new Error('not a WOFF 1 font');
  const count = woff.readUInt16BE(12);
  const entries = Array.from({ length: count }, (_, i) => entryAt(woff, headerBytes + i * entryBytes));
  const directory = Buffer.alloc(sfntHeaderBytes + count * sfntEntryBytes);
  writeHeader(directory, woff.readUInt32BE(4), count);
  const parts: Buffer[] = [directory];
  let offset = directory.length;
  entries.forEach((entry, i) => {
    const table = tableOf(woff, entry);
    const at = sfntHeaderBytes + i * sfntEntryBytes;
    directory.write(entry.tag, at, 'latin1');
    directory.writeUInt32BE(entry.checksum, at + 4);
    directory.writeUInt32BE(offset, at + 8);
    directory.writeUInt32BE(table.length, at + 12);
    const padded = Buffer.concat([table, Buffer.alloc((4 - (table.length % 4)) % 4)]);
    parts.push(padded);
    offset += padded.length;
  });
  return Buffer.concat(parts);
}

type Entry = {
  readonly tag: string;
  readonly offset: number;
  readonly packedBytes: number;
  readonly plainBytes: number;
  readonly checksum: number;
};

function entryAt(woff: Buffer, at: number): Entry {
  return {
    tag: woff.toString('latin1', at, at + 4),
    offset: woff.readUInt32BE(at + 4),
    packedBytes: woff.readUInt32BE(at + 8),
    plainBytes: woff.readUInt32BE(at + 12),
    checksum: woff.readUInt32BE(at + 16),
  };
}

function tableOf(woff: Buffer, { offset, packedBytes, plainBytes }: Entry): Buffer {
  const packed = woff.subarray(offset, offset + packedBytes);
  return packedBytes === plainBytes ? Buffer.from(packed) : inflateSync(packed);
}

/** The directory's search fields follow from the number of tables. */
function writeHeader(directory: Buffer, flavour: number, count: number): void {
  const power = Math.floor(Math.log2(count));
  directory.writeUInt32BE(flavour, 0);
  directory.writeUInt16BE(count, 4);
  directory.writeUInt16BE(16 * 2 ** power, 6);
  directory.writeUInt16BE(power, 8);
  directory.writeUInt16BE(16 * (count - 2 ** power), 10);
}
