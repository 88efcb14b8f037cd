import { createHash } from "node:crypto";
import { cellAt, placeOf } from "../formula/addresses";
import { hearXml, type XmlEvent } from "./events";
import { openPackage, type Package } from "./package";
import { Refused } from "./refused";
import { tailOf } from "./sheet-tail";

/** What was to change in a workbook file. Everything else must be as it was. */
export interface Intended {
  /** The cells that were to change, by the sheet's part: `row column`, counted from 0. */
  cells: ReadonlyMap<string, ReadonlySet<string>>;
  /** Other parts that were to change, and parts that are new or gone. */
  parts: ReadonlySet<string>;
}

/**
 * Reads back a workbook that was made from another and compares every part and cell that was not to change, with another
 * reader of XML than the one that edits: so no fault of the editor can reach a person's file. A difference is a refusal.
 */
export function mustKeepTheRest(before: Uint8Array, after: Uint8Array, intended: Intended, at: Date): void {
  const [old, made] = [openPackage(before, at), openPackage(after, at)];
  for (const part of old.names()) {
    if (made.has(part)) mustKeepPart(part, old, made, intended);
    else if (!intended.parts.has(part)) throw different(`its part ${part} is gone`);
  }
  const strange = made.names().find((part) => !old.has(part) && !intended.parts.has(part));
  if (strange !== undefined) throw different(`it has a part ${strange} that it was not to have`);
  for (const part of made.names()) if (!old.has(part)) mustBeXml(part, made.text(part));
}

function mustKeepPart(part: string, old: Package, made: Package, { cells, parts }: Intended): void {
  if (old.same(part, made)) return;
  const [before, after] = [old.text(part), made.text(part)];
  const own = cells.get(part);
  if (own) {
    if (!hasSameRest(part, before, after, own))
      throw different(`something in its part ${part} changed beside the cells that were to change`);
  } else if (parts.has(part)) mustHoldStill(part, before, after);
  else throw different(`its part ${part} changed`);
}

/**
 * Whether two sheets say the same beside some cells. What both begin and end with, sign for sign, is the same; only the
 * rows between are read. Where they cannot be read by themselves, the whole sheets are.
 */
function hasSameRest(part: string, before: string, after: string, changed: ReadonlySet<string>): boolean {
  const [oldTail, madeTail] = [tailOf(before), tailOf(after)];
  const rows = differingRows(before.slice(0, oldTail.start), after.slice(0, madeTail.start));
  if (rows) {
    try {
      const says = (xml: string) => restOfSheet(part, xml, changed);
      const [old, made] = rows.map((xml) => says(`<rows>${xml}</rows>`));
      if (old === made && says(oldTail.xml) === says(madeTail.xml)) return true;
    } catch {
      // A row that ends further down: then the whole is read.
    }
  }
  return restOfSheet(part, before, changed) === restOfSheet(part, after, changed);
}

/** The rows of two sheets from the first to the last that is written otherwise. */
function differingRows(before: string, after: string): [string, string] | undefined {
  if (before === after) return ["", ""];
  const shorter = Math.min(before.length, after.length);
  let same = 0;
  while (same < shorter && before.charCodeAt(same) === after.charCodeAt(same)) same++;
  const start = before.lastIndexOf(ROW_START, same - ROW_START.length);
  let sameEnd = 0;
  while (
    sameEnd < shorter - same &&
    before.charCodeAt(before.length - 1 - sameEnd) === after.charCodeAt(after.length - 1 - sameEnd)
  )
    sameEnd++;
  const end = before.indexOf(ROW_END, before.length - sameEnd);
  if (start < 0 || end < 0) return undefined;
  const behind = before.length - end - ROW_END.length;
  return [before.slice(start, before.length - behind), after.slice(start, after.length - behind)];
}

/** A row that says its number: those below it can be counted from there. */
const ROW_START = '<row r="';
const ROW_END = "</row>";

/** What a sheet says without the contents of some cells, in a few letters that are equal for equal sheets only. */
function restOfSheet(part: string, xml: string, changed: ReadonlySet<string>): string {
  const rest = createHash("sha256");
  const hear = restOfRows(changed, (event) => rest.update(said(event)));
  heardAs(part, xml, hear);
  return rest.digest("hex");
}

/** Elements whose text or place may change with a sheet's cells: rules that point at them, and where their notes are drawn. */
const POINTING = new Set(["formula", "formula1", "formula2", "legacyDrawing"]);

/** Passes on what stands in a sheet, but for the contents of the changed cells and rows that hold nothing else. */
function restOfRows(changed: ReadonlySet<string>, pass: (event: XmlEvent) => void): (event: XmlEvent) => void {
  let place = { row: -1, column: -1 };
  let waiting: XmlEvent[] = [];
  let skipping = "";
  return (event) => {
    if (skipping) {
      if (event.kind === "close" && event.name === skipping) skipping = "";
      return;
    }
    if (event.kind === "open" && event.name === "row") place = startOfRow(event.attributes, place.row);
    if (event.kind === "open" && event.name === "c") {
      place = placeOfCell(event.attributes, place);
      if (changed.has(placeOf(place))) skipping = "c";
    }
    if (event.kind === "open" && POINTING.has(event.name)) skipping = event.name;
    if (skipping) return;
    if (event.kind === "open" && event.name === "row") waiting = [event];
    else if (waiting.length > 0 && event.kind === "text" && event.text.trim() === "") return;
    else if (waiting.length > 0 && event.kind === "close" && event.name === "row" && isBare(waiting[0]!)) waiting = [];
    else {
      for (const earlier of waiting) pass(earlier);
      waiting = [];
      pass(event);
    }
  };
}

/** A row that says nothing but its number may come with its first cell. */
function isBare(row: XmlEvent): boolean {
  return row.kind === "open" && Object.keys(row.attributes).every((name) => name === "r");
}

function startOfRow(attributes: Readonly<Record<string, string>>, before: number) {
  return { row: attributes.r ? Number(attributes.r) - 1 : before + 1, column: -1 };
}

function placeOfCell(attributes: Readonly<Record<string, string>>, { row, column }: { row: number; column: number }) {
  return attributes.r ? cellAt(attributes.r) : { row, column: column + 1 };
}

/** What may go from a part beside the sheets when formulas become values: what mentions the order of calculation, a column's formula, and an add-in's pane. */
const MAY_GO = new Set(["Override", "Relationship", "calculatedColumnFormula", "totalsRowFormula", "taskpane"]);

/** Elements and attributes that may read otherwise afterwards; a drawing of notes counts its shapes in its idmap. */
const MAY_DIFFER = new Set(["definedName", "totalsRowFunction", "idmap"]);

/** How many children an element has may grow with them. */
const MAY_GROW = new Set([...MAY_DIFFER, "count"]);

/** Everything that a part said before, it must say still, in the same order; it may say more. */
function mustHoldStill(part: string, before: string, after: string): void {
  const [old, made] = [sayings(part, before), sayings(part, after)];
  let at = 0;
  for (const saying of old) {
    while (at < made.length && !made[at]!.startsWith(saying)) at++;
    if (at === made.length) throw different(`its part ${part} lost something`);
    at++;
  }
}

function sayings(part: string, xml: string): string[] {
  const found: string[] = [];
  let skipping = "";
  heardAs(part, xml, (event) => {
    if (skipping && event.kind === "close" && event.name === skipping) skipping = "";
    else if (!skipping && event.kind === "open" && (MAY_GO.has(event.name) || MAY_DIFFER.has(event.name)))
      skipping = event.name;
    else if (!skipping && event.kind !== "close" && said(event, MAY_GROW).trim() !== "")
      found.push(said(event, MAY_GROW));
  });
  return found;
}

function mustBeXml(part: string, text: string): void {
  if (/\.(?:xml|rels|vml)$/i.test(part)) heardAs(part, text, () => undefined);
}

function heardAs(part: string, xml: string, hear: (event: XmlEvent) => void): void {
  try {
    hearXml(xml, hear);
  } catch {
    throw different(`its part ${part} cannot be read`);
  }
}

/** An event in letters. Attributes stand in the order of their names, since XML gives their order no meaning. */
function said(event: XmlEvent, except: ReadonlySet<string> = MAY_DIFFER): string {
  if (event.kind === "text") return event.text;
  if (event.kind === "close") return `\n</${event.name}>`;
  const attributes = Object.entries(event.attributes).filter(([name]) => !except.has(name));
  return `\n<${event.name} ${JSON.stringify(attributes.sort(([a], [b]) => (a < b ? -1 : 1)))}>`;
}

function different(what: string): Refused {
  return new Refused(`what was made of it does not read back as it should: ${what}; please report it`);
}
