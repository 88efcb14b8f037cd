import { Refused } from "./refused";

/** How a part of the file spells its letters. Excel writes UTF-8; other programs may write UTF-16, with a mark in front. */
export type Encoding = "utf-8" | "utf-16le" | "utf-16be";

export function encodingOf(content: Uint8Array): Encoding {
  if (content[0] === 0xff && content[1] === 0xfe) return "utf-16le";
  if (content[0] === 0xfe && content[1] === 0xff) return "utf-16be";
  return "utf-8";
}

/** The text of a part, a byte order mark included, so that it goes back as it was. */
export function decoded(content: Uint8Array, part: string): string {
  const encoding = encodingOf(content);
  try {
    return new TextDecoder(encoding, { fatal: true, ignoreBOM: true }).decode(content);
  } catch {
    throw new Refused(`its part ${part} is not written in ${encoding.toUpperCase().slice(0, 6).replace(/-$/, "")}`);
  }
}

/** The bytes of a text in the encoding that its part was written in. */
export function encoded(text: string, encoding: Encoding): Uint8Array {
  if (encoding === "utf-8") return new TextEncoder().encode(text);
  const bytes = Buffer.from(text, "utf16le");
  return encoding === "utf-16be" ? bytes.swap16() : bytes;
}
