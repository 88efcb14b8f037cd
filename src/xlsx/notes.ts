import { addressOf } from "../formula/addresses";
import type { Package } from "./package";
import { declareEnding, declarePart, freePart, relate, relationsOf, withLast } from "./relations";
import { tailOf } from "./sheet-tail";
import { withNoteShapes } from "./note-shapes";
import { attribute, elements, escapedCellText, patched, prefixOf, tags, type Patch } from "./xml";
import { HEADING, wordsOf } from "./namespaces";

/** A remark that hangs on a cell. */
export interface Note {
  row: number;
  column: number;
  text: string;
}

const AUTHOR = "Bole";
const COMMENTS_TYPE = "application/vnd.openxmlformats-officedocument.spreadsheetml.comments+xml";
const DRAWING_TYPE = "application/vnd.openxmlformats-officedocument.vmlDrawing";

/** What stands in a sheet's XML before the pointer to its notes' drawing, by the standard's order. */
const BEFORE_DRAWING = new Set(
  (
    "sheetPr dimension sheetViews sheetFormatPr cols sheetData sheetCalcPr sheetProtection protectedRanges scenarios " +
    "autoFilter sortState dataConsolidate customSheetViews mergeCells phoneticPr conditionalFormatting dataValidations " +
    "hyperlinks printOptions pageMargins pageSetup headerFooter rowBreaks colBreaks customProperties cellWatches " +
    "ignoredErrors smartTags drawing"
  ).split(" "),
);

/**
 * Hangs notes on cells of a sheet, beside those that are there. Answers the sheet's XML, which points at them, and the
 * notes for which there is no room because people talk to each other in a thread on that cell.
 */
export function withNotes(file: Package, part: string, sheetXml: string, notes: readonly Note[]) {
  const threads = new Set(
    relationsOf(file, part)
      .filter(({ type }) => type === "threadedComment")
      .flatMap(({ target }) => elements(file.text(target), "threadedComment"))
      .map(({ attributes }) => attribute(attributes, "ref")),
  );
  const crowded = notes.filter((note) => threads.has(addressOf(note.row, note.column)));
  const placed = notes.filter((note) => !crowded.includes(note));
  if (placed.length === 0) return { xml: sheetXml, crowded };
  const drawn = putTexts(file, part, placed);
  return { xml: putDrawing(file, part, sheetXml, drawn), crowded };
}

/** Writes the texts and answers the notes that need a shape of their own. */
function putTexts(file: Package, part: string, notes: readonly Note[]): Note[] {
  const known = relationsOf(file, part).find(({ type }) => type === "comments")?.target;
  const home = known ?? freePart(file, `${folderAbove(part)}comments`, ".xml");
  if (!known) {
    relate(file, part, "comments", home);
    declarePart(file, home, COMMENTS_TYPE);
  }
  const empty = `${HEADING}<comments xmlns="${wordsOf(file).main}"><authors></authors><commentList></commentList></comments>`;
  const xml = known ? file.text(home) : empty;
  const prefix = prefixOf(xml);
  const authors = elements(xml, "author").length;
  const hanging = new Map(elements(xml, "comment").map((one) => [attribute(one.attributes, "ref"), one]));
  const patches: Patch[] = [];
  const added: string[] = [];
  const drawn: Note[] = [];
  for (const note of notes) {
    const there = hanging.get(addressOf(note.row, note.column));
    if (there) patches.push(...extended(xml, there.start, there.after, note, prefix));
    else {
      added.push(commentXml(note, authors, prefix));
      drawn.push(note);
    }
  }
  const withAuthor = withLast(patched(xml, patches), "authors", `<${prefix}author>${AUTHOR}</${prefix}author>`);
  file.put(home, withLast(withAuthor, "commentList", added.join("")));
  return drawn;
}

function commentXml({ row, column, text }: Note, author: number, prefix: string): string {
  const run = `<${prefix}r><${prefix}t xml:space="preserve">${escapedCellText(text)}</${prefix}t></${prefix}r>`;
  return `<${prefix}comment ref="${addressOf(row, column)}" authorId="${author}"><${prefix}text>${run}</${prefix}text></${prefix}comment>`;
}

/** Adds the text below that of a note which hangs there already. */
function extended(xml: string, start: number, end: number, note: Note, prefix: string): Patch[] {
  const whole = xml.slice(start, end);
  const [text] = elements(whole, "text");
  if (!text) return [];
  const below = escapedCellText(`\n${note.text}`);
  const runs = elements(text.inside, "r").filter(({ depth }) => depth === 0);
  const [plain] = elements(text.inside, "t").filter(({ depth }) => depth === 0);
  const at = start + text.insideStart;
  if (runs.length > 0 || !plain) {
    const last = at + (runs.at(-1)?.after ?? 0);
    return [
      {
        start: last,
        end: last,
        text: `<${prefix}r><${prefix}t xml:space="preserve">${below}</${prefix}t></${prefix}r>`,
      },
    ];
  }
  const kept = `<${prefix}t xml:space="preserve">${plain.inside}${below}</${prefix}t>`;
  return [{ start: at + plain.start, end: at + plain.after, text: kept }];
}

function putDrawing(file: Package, part: string, sheetXml: string, notes: readonly Note[]): string {
  if (notes.length === 0) return sheetXml;
  const tail = tailOf(sheetXml);
  // One that stands deeper is written twice, for readers of two kinds, and both point at the same drawing.
  const [pointer] = elements(tail.xml, "legacyDrawing").sort((a, b) => a.depth - b.depth);
  const id = pointer && attribute(pointer.attributes, "id");
  const known = relationsOf(file, part).find((relation) => relation.id === id && id !== undefined)?.target;
  const home = known ?? freePart(file, `${folderAbove(part)}drawings/vmlDrawing`, ".vml");
  const others = file.names().filter((name) => name.toLowerCase().endsWith(".vml"));
  const drawings = others.map((name) => file.text(name));
  file.put(home, withNoteShapes(known && file.text(home), notes, drawings));
  if (known) return sheetXml;
  declareEnding(file, "vml", DRAWING_TYPE);
  const relation = relate(file, part, "vmlDrawing", home);
  let at = tail.inWhole(tail.xml.indexOf(">") + 1);
  for (const { name, depth, kind, end } of tags(tail.xml))
    if (depth === 1 && kind !== "open" && BEFORE_DRAWING.has(name)) at = tail.inWhole(end);
  const text = `<${prefixOf(sheetXml)}legacyDrawing xmlns:r="${wordsOf(file).office}" r:id="${relation}"/>`;
  return patched(sheetXml, [{ start: at, end: at, text }]);
}

/** `xl/worksheets/sheet1.xml` to `xl/`. */
function folderAbove(part: string): string {
  return part
    .split("/")
    .slice(0, -2)
    .map((step) => `${step}/`)
    .join("");
}
