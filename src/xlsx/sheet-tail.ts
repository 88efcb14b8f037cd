import { prefixOf } from "./xml";

/** What stands behind the rows of a sheet. */
export interface SheetTail {
  /** A small sheet of its own, so that it can be read without the rows. */
  xml: string;
  /** Where it begins in the whole one. */
  start: number;
  /** Where a place of that small sheet lies in the whole one. */
  inWhole(at: number): number;
}

/** The whole sheet where its rows have no end of their own. */
export function tailOf(sheetXml: string): SheetTail {
  const prefix = prefixOf(sheetXml);
  const closing = `</${prefix}sheetData>`;
  const end = sheetXml.lastIndexOf(closing);
  if (end < 0) return { xml: sheetXml, start: 0, inWhole: (at) => at };
  const start = end + closing.length;
  const opening = `<${prefix}worksheet>`;
  return { xml: opening + sheetXml.slice(start), start, inWhole: (at) => at - opening.length + start };
}
