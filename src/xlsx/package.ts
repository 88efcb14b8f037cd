import JSZip from "jszip";
import { readDirectory, unpacked, type Entry } from "./directory";
import { Refused } from "./refused";
import { declaresDocumentType } from "./xml";

/** The parts of a workbook file. What is not put anew stays as it is, byte for byte. */
export interface Package {
  names(): string[];
  has(part: string): boolean;
  text(part: string): string;
  /** Whether a part holds the same bytes in another file. */
  same(part: string, other: Package): boolean;
  /** The bytes of a part as the file has it, unpacked. */
  content(part: string): Uint8Array;
  put(part: string, text: string): void;
  remove(part: string): void;
  /** The parts that were put or taken out since the file was opened. */
  touched(): ReadonlySet<string>;
  bytes(): Promise<Uint8Array>;
}

const OLE = [0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1];
const ZIP = [0x50, 0x4b];
const XML_PART = /\.(?:xml|rels|vml)$/i;

/** Opens a workbook file after looking at every part of it once; parts put later bear the time given here. */
export async function openPackage(bytes: Uint8Array, date: Date): Promise<Package> {
  const { entries, zip } = await openZip(bytes);
  const texts = new Map<string, string>();
  const touched = new Set<string>();
  const nameOf = new Map([...entries.keys()].map((name) => [name.toLowerCase(), name]));
  const stored = (part: string) => nameOf.get(part.toLowerCase()) ?? part;
  const content = (part: string): Uint8Array => {
    const known = texts.get(stored(part));
    const entry = entries.get(stored(part));
    if (known !== undefined) return new TextEncoder().encode(known);
    if (!entry) throw new Refused(`its part ${part} is missing`);
    return unpacked(bytes, entry);
  };
  return {
    content,
    same: (part, other) => Buffer.compare(content(part), other.content(part)) === 0,
    names: () => Object.keys(zip.files).filter((name) => !zip.files[name]?.dir),
    has: (part) => zip.files[stored(part)] !== undefined,
    text: (part) => texts.get(stored(part)) ?? decoded(content(part), part),
    put: (part, text) => {
      nameOf.set(part.toLowerCase(), stored(part));
      texts.set(stored(part), text);
      touched.add(stored(part));
      zip.file(stored(part), text, { createFolders: false, date });
    },
    remove: (part) => {
      zip.remove(stored(part));
      touched.add(stored(part));
    },
    touched: () => touched,
    bytes: () => zip.generateAsync({ type: "uint8array", compression: "DEFLATE" }),
  };
}

/** The files within a workbook file, each unpacked once within its bounds before a library reads any of them. */
export async function openZip(bytes: Uint8Array): Promise<{ entries: Map<string, Entry>; zip: JSZip }> {
  mustBeZip(bytes);
  const entries = new Map(readDirectory(bytes).map((entry) => [entry.name, entry]));
  for (const entry of entries.values()) mustBeSound(bytes, entry);
  const zip = await JSZip.loadAsync(bytes, { checkCRC32: true }).catch(() => {
    throw new Refused("it is damaged: a part of it does not fit its checksum");
  });
  // A zip may give a file a second name, under which nobody has looked at it.
  if (Object.keys(zip.files).some((name) => !entries.has(name)))
    throw new Refused("its parts have names that a workbook cannot have");
  return { entries, zip };
}

function mustBeZip(bytes: Uint8Array): void {
  const startsWith = (signs: number[]) => signs.every((sign, at) => bytes[at] === sign);
  if (bytes.length === 0) throw new Refused("it is empty");
  if (startsWith(OLE)) {
    const locked = Buffer.from(bytes).includes(Buffer.from("EncryptedPackage", "utf16le"));
    throw new Refused(
      locked
        ? "it is locked with a password: open it in Excel, take the password off and save it under another name"
        : "it is a workbook of the old kind (.xls): save it as .xlsx in Excel",
    );
  }
  if (!startsWith(ZIP)) throw new Refused("it is not an .xlsx workbook, whatever its name says");
}

/** Unpacks each part once: what is broken or declares entities is refused before anything is calculated. */
function mustBeSound(bytes: Uint8Array, entry: Entry): void {
  const content = unpacked(bytes, entry);
  if (XML_PART.test(entry.name) && declaresDocumentType(decoded(content, entry.name)))
    throw new Refused(`its part ${entry.name} declares a document type (DOCTYPE), which a workbook never needs`);
}

/** The text of a part, a byte order mark included, so that it goes back as it was. */
function decoded(content: Uint8Array, part: string): string {
  try {
    return new TextDecoder("utf-8", { fatal: true, ignoreBOM: true }).decode(content);
  } catch {
    throw new Refused(`its part ${part} is not written in UTF-8`);
  }
}
