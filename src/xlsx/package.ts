import { readDirectory, packedBytes, unpacked, type Entry } from "./directory";
import { decoded, encoded, encodingOf } from "./encoding";
import { Refused } from "./refused";
import { declaresDocumentType } from "./xml";
import { packedFile, zipOf } from "./zip";

/** The parts of a workbook file. What is not put anew stays as it is, byte for byte. */
export interface Package {
  names(): string[];
  has(part: string): boolean;
  text(part: string): string;
  /** Whether a part holds the same bytes in another file. */
  same(part: string, other: Package): boolean;
  /** The bytes of a part, unpacked. */
  content(part: string): Uint8Array;
  /** How many bytes a part of the file unpacks to. */
  size(part: string): number;
  put(part: string, text: string): void;
  remove(part: string): void;
  /** The parts that were put or taken out since the file was opened. */
  touched(): ReadonlySet<string>;
  bytes(): Uint8Array;
}

const OLE = [0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1];
const ZIP = [0x50, 0x4b];
const XML_PART = /\.(?:xml|rels|vml)$/i;

/** Opens a workbook file after looking at every part of it once; parts put later bear the hour given here. */
export function openPackage(bytes: Uint8Array, at: Date): Package {
  mustBeZip(bytes);
  const entries = new Map(readDirectory(bytes).map((entry) => [entry.name, entry]));
  for (const entry of entries.values()) mustBeSound(bytes, entry);
  const put = new Map<string, string>();
  const touched = new Set<string>();
  // A part is called in any case; it keeps the one it has.
  const nameOf = new Map([...entries.keys()].map((name) => [name.toLowerCase(), name]));
  const stored = (part: string) => nameOf.get(part.toLowerCase()) ?? part;
  const inFile = (part: string): Uint8Array => {
    const entry = entries.get(stored(part));
    if (!entry) throw new Refused(`its part ${part} is missing`);
    return unpacked(bytes, entry);
  };
  const content = (part: string): Uint8Array => {
    const text = put.get(stored(part));
    if (text === undefined) return inFile(part);
    return encoded(text, entries.has(stored(part)) ? encodingOf(inFile(part)) : "utf-8");
  };
  const file: Package = {
    content,
    size: (part) => entries.get(stored(part))?.size ?? content(part).length,
    names: () => [...nameOf.values()].filter((name) => !name.endsWith("/")),
    has: (part) => nameOf.has(part.toLowerCase()),
    text: (part) => put.get(stored(part)) ?? decoded(inFile(part), part),
    same: (part, other) => Buffer.compare(content(part), other.content(part)) === 0,
    put: (part, text) => {
      nameOf.set(part.toLowerCase(), stored(part));
      put.set(stored(part), text);
      touched.add(stored(part));
    },
    remove: (part) => {
      touched.add(stored(part));
      put.delete(stored(part));
      nameOf.delete(part.toLowerCase());
    },
    touched: () => touched,
    bytes: () =>
      zipOf(
        [...nameOf.values()].map((name) => {
          const entry = entries.get(name);
          if (entry && !put.has(name)) return { ...entry, packed: packedBytes(bytes, entry) };
          return {
            ...packedFile(name, content(name), at),
            ...(entry ? { spelled: entry.spelled, utf8: entry.utf8 } : {}),
          };
        }),
      ),
  };
  return file;
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
  if (XML_PART.test(entry.name) && declaresDocumentType(readableStart(content)))
    throw new Refused(`its part ${entry.name} declares a document type (DOCTYPE), which a workbook never needs`);
}

/** The text of a part that may be read by nobody here, whatever is wrong with its letters. */
function readableStart(content: Uint8Array): string {
  return new TextDecoder(encodingOf(content)).decode(content);
}
