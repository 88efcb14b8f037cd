import { crc32, deflateRawSync } from "node:zlib";
import { DEFLATED, DIRECTORY_ENTRY, END, LOCAL_ENTRY, UTF8 } from "./directory";

/** A file within a zip, packed and ready to be written. */
export interface PackedFile {
  /** The name in its bytes. */
  spelled: Uint8Array;
  utf8: boolean;
  /** Hour and day as zips write them. */
  time: number;
  method: number;
  crc: number;
  size: number;
  packed: Uint8Array;
}

/** The version of the zip format that can do all that is done here. */
const VERSION = 20;

/**
 * A zip of files that are packed already. A zip library would pack them all again; here a part that nobody has changed
 * stays as it lies in the old file, byte for byte.
 */
export function zipOf(files: readonly PackedFile[]): Uint8Array {
  const pieces: Uint8Array[] = [];
  const directory: Uint8Array[] = [];
  let offset = 0;
  for (const file of files) {
    const local = [localHeading(file), file.spelled, file.packed];
    directory.push(directoryEntry(file, offset), file.spelled);
    pieces.push(...local);
    offset += lengthOf(local);
  }
  return joined([...pieces, ...directory, endOf(files.length, lengthOf(directory), offset)]);
}

/** A file packed anew, under the hour given. */
export function packedFile(name: string, content: Uint8Array, at: Date): PackedFile {
  return {
    spelled: new TextEncoder().encode(name),
    utf8: true,
    time: timeOf(at),
    method: DEFLATED,
    crc: crc32(content),
    size: content.length,
    packed: deflateRawSync(content),
  };
}

/** Zips count years from 1980 and seconds in twos. */
function timeOf(at: Date): number {
  const day = ((at.getUTCFullYear() - 1980) << 9) | ((at.getUTCMonth() + 1) << 5) | at.getUTCDate();
  const hour = (at.getUTCHours() << 11) | (at.getUTCMinutes() << 5) | (at.getUTCSeconds() >> 1);
  return ((day << 16) | hour) >>> 0;
}

function localHeading(file: PackedFile): Uint8Array {
  return written(30, (view) => {
    view.setUint32(0, LOCAL_ENTRY, true);
    writeFacts(view, 4, file);
  });
}

function directoryEntry(file: PackedFile, offset: number): Uint8Array {
  return written(46, (view) => {
    view.setUint32(0, DIRECTORY_ENTRY, true);
    view.setUint16(4, VERSION, true);
    writeFacts(view, 6, file);
    view.setUint32(42, offset, true);
  });
}

/** What the heading and the directory both say of a file. */
function writeFacts(view: DataView, at: number, { utf8, method, time, crc, packed, size, spelled }: PackedFile): void {
  view.setUint16(at, VERSION, true);
  view.setUint16(at + 2, utf8 ? UTF8 : 0, true);
  view.setUint16(at + 4, method, true);
  view.setUint32(at + 6, time, true);
  view.setUint32(at + 10, crc, true);
  view.setUint32(at + 14, packed.length, true);
  view.setUint32(at + 18, size, true);
  view.setUint16(at + 22, spelled.length, true);
}

function endOf(count: number, length: number, start: number): Uint8Array {
  return written(22, (view) => {
    view.setUint32(0, END, true);
    view.setUint16(8, count, true);
    view.setUint16(10, count, true);
    view.setUint32(12, length, true);
    view.setUint32(16, start, true);
  });
}

function written(length: number, write: (view: DataView) => void): Uint8Array {
  const bytes = new Uint8Array(length);
  write(new DataView(bytes.buffer));
  return bytes;
}

function lengthOf(pieces: readonly Uint8Array[]): number {
  return pieces.reduce((sum, piece) => sum + piece.length, 0);
}

function joined(pieces: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(lengthOf(pieces));
  let at = 0;
  for (const piece of pieces) {
    whole.set(piece, at);
    at += piece.length;
  }
  return whole;
}
