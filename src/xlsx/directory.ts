import { crc32, inflateRawSync } from "node:zlib";
import { Refused } from "./refused";

/** A file within a zip, as the zip's directory at its end describes it. */
export interface Entry {
  /** With forward slashes, whatever the zip has. */
  name: string;
  /** The name as the zip spells it, in its bytes. */
  spelled: Uint8Array;
  /** Whether those bytes are UTF-8. */
  utf8: boolean;
  /** Hour and day as zips write them. */
  time: number;
  crc: number;
  method: number;
  compressed: number;
  size: number;
  /** Where the entry's own heading starts. */
  offset: number;
}

/** More than any workbook that a person keeps by hand. */
const MOST_BYTES = 512 * 1024 * 1024;
const MOST_ENTRIES = 20_000;

/** Even 50,000 equal rows shrink to no less than a two-hundredth. */
const ODD_RATIO = 400;
const ODD_FROM_BYTES = 10 * 1024 * 1024;

export const END = 0x06054b50;
const END_LENGTH = 22;
const LONGEST_COMMENT = 0xffff;
export const DIRECTORY_ENTRY = 0x02014b50;
export const LOCAL_ENTRY = 0x04034b50;
export const STORED = 0;
export const DEFLATED = 8;
const SECOND_NAME = 0x7075;
const LOCKED = 1;
export const UTF8 = 0x0800;
const IN_ZIP64 = 0xffffffff;

/**
 * Reads the directory of a zip and refuses what would unpack to an absurd size, before anything is unpacked. The
 * directory must end where the zip's end says and hold no more than that: another reader would find what is hidden
 * behind a wrong count or place.
 */
export function readDirectory(bytes: Uint8Array): Entry[] {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const end = endOfDirectory(view);
  const count = view.getUint16(end + 10, true);
  if (count > MOST_ENTRIES) throw new Refused(`it holds ${count} files, more than any workbook`);
  const entries: Entry[] = [];
  const start = view.getUint32(end + 16, true);
  const inOnePiece = view.getUint32(end + 4, true) === 0 && view.getUint16(end + 8, true) === count;
  if (!inOnePiece || start + view.getUint32(end + 12, true) !== end) throw damaged();
  let at = start;
  for (let i = 0; i < count; i++) {
    if (at + 46 > end || view.getUint32(at, true) !== DIRECTORY_ENTRY) throw damaged();
    entries.push(entryAt(view, bytes, at));
    at += 46 + view.getUint16(at + 28, true) + view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
  }
  if (at !== end) throw damaged();
  mustBeSane(entries);
  return entries;
}

function endOfDirectory(view: DataView): number {
  const last = view.byteLength - END_LENGTH;
  for (let at = last; at >= Math.max(0, last - LONGEST_COMMENT); at--) if (view.getUint32(at, true) === END) return at;
  throw damaged();
}

function entryAt(view: DataView, bytes: Uint8Array, at: number): Entry {
  const flags = view.getUint16(at + 8, true);
  const spelled = bytes.subarray(at + 46, at + 46 + view.getUint16(at + 28, true));
  if (flags & LOCKED) throw new Refused("its zip is locked with a password");
  const extra = bytes.subarray(at + 46 + spelled.length, at + 46 + spelled.length + view.getUint16(at + 30, true));
  // A zip may give a file a second name, under which another program would read it and nobody has looked at it.
  if (hasSecondName(extra)) throw new Refused("its parts have names that a workbook cannot have");
  const entry = {
    name: new TextDecoder().decode(spelled).replaceAll("\\", "/"),
    spelled,
    utf8: (flags & UTF8) !== 0,
    time: view.getUint32(at + 12, true),
    crc: view.getUint32(at + 16, true),
    method: view.getUint16(at + 10, true),
    compressed: view.getUint32(at + 20, true),
    size: view.getUint32(at + 24, true),
    offset: view.getUint32(at + 42, true),
  };
  if ([entry.compressed, entry.size, entry.offset].includes(IN_ZIP64))
    throw new Refused("its zip uses the form for files of more than 4 GB");
  if (entry.method !== STORED && entry.method !== DEFLATED)
    throw new Refused("its zip is packed in a way that workbooks are not");
  return entry;
}

/** Further facts about a file stand as a kind and a length, two bytes each, and what is said. */
function hasSecondName(extra: Uint8Array): boolean {
  const view = new DataView(extra.buffer, extra.byteOffset, extra.byteLength);
  for (let at = 0; at + 4 <= extra.length; at += 4 + view.getUint16(at + 2, true))
    if (view.getUint16(at, true) === SECOND_NAME) return true;
  return false;
}

function mustBeSane(entries: readonly Entry[]): void {
  const total = entries.reduce((sum, { size }) => sum + size, 0);
  if (total > MOST_BYTES)
    throw new Refused(`it would unpack to ${megabytes(total)} MB; the limit is ${megabytes(MOST_BYTES)} MB`);
  const odd = entries.find(({ size, compressed }) => size > ODD_FROM_BYTES && size > compressed * ODD_RATIO);
  if (odd)
    throw new Refused(`its part ${odd.name} would unpack to ${Math.round(odd.size / odd.compressed)} times its size`);
  const names = new Set<string>();
  for (const { name } of entries) {
    if (/^\/|(?:^|\/)\.\.?(?:\/|$)|\0/.test(name))
      throw new Refused("its parts have names that a workbook cannot have");
    if (names.has(name.toLowerCase())) throw new Refused(`it holds the part ${name} twice`);
    names.add(name.toLowerCase());
  }
}

/** Unpacks an entry; never more than the directory said, and only what fits its checksum. */
export function unpacked(bytes: Uint8Array, entry: Entry): Uint8Array {
  const packed = packedBytes(bytes, entry);
  const content = entry.method === STORED || entry.compressed === 0 ? packed : inflated(packed, entry.size);
  if (content.length !== entry.size) throw damaged();
  if (crc32(content) !== entry.crc) throw new Refused("it is damaged: a part of it does not fit its checksum");
  return content;
}

/** An entry as it lies in the zip. */
export function packedBytes(bytes: Uint8Array, { offset, compressed }: Entry): Uint8Array {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (offset + 30 > bytes.length || view.getUint32(offset, true) !== LOCAL_ENTRY) throw damaged();
  const start = offset + 30 + view.getUint16(offset + 26, true) + view.getUint16(offset + 28, true);
  if (start + compressed > bytes.length) throw damaged();
  return bytes.subarray(start, start + compressed);
}

function inflated(packed: Uint8Array, size: number): Uint8Array {
  try {
    return inflateRawSync(packed, { maxOutputLength: Math.max(1, size) });
  } catch {
    throw damaged();
  }
}

function damaged(): Refused {
  return new Refused("it is damaged or cut short: its zip cannot be unpacked");
}

function megabytes(bytes: number): number {
  return Math.round(bytes / 1024 / 1024);
}
