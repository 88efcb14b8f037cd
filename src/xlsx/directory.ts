import { inflateRawSync } from "node:zlib";
import { Refused } from "./refused";

/** A file within a zip, as the zip's directory at its end describes it. */
export interface Entry {
  name: string;
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

const END = 0x06054b50;
const END_LENGTH = 22;
const LONGEST_COMMENT = 0xffff;
const DIRECTORY_ENTRY = 0x02014b50;
const LOCAL_ENTRY = 0x04034b50;
const STORED = 0;
const DEFLATED = 8;
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
  const name = new TextDecoder().decode(bytes.subarray(at + 46, at + 46 + view.getUint16(at + 28, true)));
  if (flags & 1) throw new Refused("its zip is locked with a password");
  const entry = {
    name,
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

function mustBeSane(entries: readonly Entry[]): void {
  const total = entries.reduce((sum, { size }) => sum + size, 0);
  if (total > MOST_BYTES)
    throw new Refused(`it would unpack to ${megabytes(total)} MB; the limit is ${megabytes(MOST_BYTES)} MB`);
  const odd = entries.find(({ size, compressed }) => size > ODD_FROM_BYTES && size > compressed * ODD_RATIO);
  if (odd)
    throw new Refused(`its part ${odd.name} would unpack to ${Math.round(odd.size / odd.compressed)} times its size`);
  const names = new Set<string>();
  for (const { name } of entries) {
    if (/\\|^\/|(?:^|\/)\.\.?(?:\/|$)|\0/.test(name))
      throw new Refused("its parts have names that a workbook cannot have");
    if (names.has(name.toLowerCase())) throw new Refused(`it holds the part ${name} twice`);
    names.add(name.toLowerCase());
  }
}

/** Unpacks an entry; never more than the directory said. */
export function unpacked(bytes: Uint8Array, entry: Entry): Uint8Array {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const { offset, compressed, size } = entry;
  if (offset + 30 > bytes.length || view.getUint32(offset, true) !== LOCAL_ENTRY) throw damaged();
  const start = offset + 30 + view.getUint16(offset + 26, true) + view.getUint16(offset + 28, true);
  if (start + compressed > bytes.length) throw damaged();
  const packed = bytes.subarray(start, start + compressed);
  const content = entry.method === STORED ? packed : inflated(packed, size);
  if (content.length !== size) throw damaged();
  return content;
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
