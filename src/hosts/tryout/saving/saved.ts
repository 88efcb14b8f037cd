import { placeOf } from "../../../formula/addresses";
import { addSheet, sheetNamesOf } from "../../../xlsx/add-sheet";
import { addedLooks, type AddedLooks } from "../../../xlsx/added-looks";
import { dropCalculationOrder } from "../../../xlsx/calculation-order";
import { dynamicArrayMark } from "../../../xlsx/dynamic-array-mark";
import { MAIN, OFFICE, wordsOf } from "../../../xlsx/namespaces";
import { openPackage, type Package } from "../../../xlsx/package";
import { readParts } from "../../../xlsx/parts";
import { Refused } from "../../../xlsx/refused";
import { relationsOf } from "../../../xlsx/relations";
import { withCells } from "../../../xlsx/sheet-edit";
import { readBack, type Made, type Unread } from "../../terminal/file/made";
import { counted, few } from "../../terminal/file/words";
import type { Changes } from "./changes";
import { editsOf, type EditTools } from "./edits";
import { newSheetXml } from "./new-sheet";
import { mustKeepHeadings } from "./table-headings";

/** The workbook with what was typed into the page. What was not changed stays as it is, byte for byte. */
export function saved(bytes: Uint8Array, changes: Changes, at: Date): Made {
  return readBack(bytes, withTyped(bytes, changes, at), at);
}

function withTyped(bytes: Uint8Array, { cells: changed, added, left }: Changes, at: Date): Unread {
  const file = openPackage(bytes, at);
  const workbook = readParts(file);
  const { part, sheets } = workbook;
  const looks = looksIn(file, part);
  const tools: EditTools = { mark: () => dynamicArrayMark(file, part), lookWith: looks.added.withFormat };
  const cells = new Map<string, ReadonlySet<string>>();
  const unanswered: string[] = [];
  let formulasMove = false;
  for (const { sheet: name, cells: own } of changed) {
    const sheet = sheets.find((one) => one.name === name);
    if (!sheet) throw new Refused(`it has no sheet ${name}, on which something was typed`);
    mustKeepHeadings(name, own, workbook.tables);
    const edits = editsOf(sheet, own, tools);
    file.put(sheet.part, withCells(sheet.xml, edits.changes));
    cells.set(sheet.part, new Set(edits.changes.map(placeOf)));
    unanswered.push(...edits.unanswered);
    formulasMove ||= edits.formulasMove;
  }
  const taken = new Set(sheetNamesOf(file, part).map((name) => name.toLowerCase()));
  for (const sheet of added) {
    if (taken.has(sheet.name.toLowerCase())) throw new Refused(`it has two sheets called ${sheet.name}: rename one`);
    taken.add(sheet.name.toLowerCase());
    const { xml, edits } = newSheetXml(sheet, looks.added, tools);
    addSheet(file, part, sheet.name, inWordsOf(file, xml));
    unanswered.push(...edits.unanswered);
    formulasMove ||= edits.formulasMove;
  }
  const styles = looks.added.xml();
  if (styles !== undefined) file.put(looks.part, styles);
  if (formulasMove) dropCalculationOrder(file, part);
  const typed = changed.reduce((sum, { cells: own }) => sum + own.length, 0);
  const sentences = [
    `${counted(typed, "cell")} of the workbook changed`,
    added.length > 0 && `${counted(added.length, "sheet")} added: ${few(added.map(({ name }) => name))}`,
    unanswered.length > 0 &&
      `${counted(unanswered.length, "formula")} without an answer here until Excel calculates: ${few(unanswered)}`,
    left.length > 0 && `Left out: ${left.join("; ")}`,
  ];
  return {
    bytes: file.bytes(),
    intended: { cells, parts: new Set([...file.touched()].filter((one) => !cells.has(one))) },
    macros: workbook.macros,
    summary: sentences.filter(Boolean).join(". "),
  };
}

/** The part of the looks, and what is added to it. A workbook without one shows everything in the usual way. */
function looksIn(file: Package, workbookPart: string): { part: string; added: AddedLooks } {
  const part = relationsOf(file, workbookPart).find(({ type }) => type === "styles")?.target;
  if (part && file.has(part)) return { part, added: addedLooks(file.text(part)) };
  return { part: "", added: { numberOf: () => 0, withFormat: (look) => look, xml: () => undefined } };
}

function inWordsOf(file: Package, xml: string): string {
  const { main, office } = wordsOf(file);
  return xml.replace(`"${MAIN}"`, `"${main}"`).replace(`"${OFFICE}"`, `"${office}"`);
}
