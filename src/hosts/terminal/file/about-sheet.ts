import { freeSheetName } from "../../../sheets/ready/free-name";
import { addSheet, sheetNamesOf } from "../../../xlsx/add-sheet";
import type { Workbook } from "./workbook";
import { escapedCellText } from "../../../xlsx/xml";
import { HEADING, wordsOf } from "../../../xlsx/namespaces";

const NAME = "About this copy";

/** A line of the sheet: text across it, or a label with a figure beside it. */
export type Line = string | [label: string, figure: number | string];

/** Adds a sheet of plain lines behind the last one. */
export function addAboutSheet({ file, part }: Workbook, lines: readonly Line[]): void {
  const name = freeSheetName(NAME, sheetNamesOf(file, part));
  addSheet(file, part, name, sheetXml(lines.flatMap(folded), wordsOf(file).main));
}

/** Characters of a line that a page of paper is wide enough for. */
const LONGEST_LINE = 95;

/** A long text as lines that a printed page does not cut. */
function folded(line: Line): Line[] {
  if (typeof line !== "string") return [line];
  const lines = [""];
  for (const word of line.split(" ")) {
    const longer = lines.at(-1) ? `${lines.at(-1)} ${word}` : word;
    if (longer.length <= LONGEST_LINE) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines;
}

function sheetXml(lines: readonly Line[], namespace: string): string {
  const rows = lines.map((line, at) => {
    const cells = typeof line === "string" ? [line] : line;
    return `<row r="${at + 1}">${cells.map((cell, column) => cellXml(cell, "AB"[column]! + (at + 1))).join("")}</row>`;
  });
  return (
    `${HEADING}<worksheet xmlns="${namespace}">` +
    '<cols><col min="1" max="1" width="44" customWidth="1"/><col min="2" max="2" width="20" customWidth="1"/></cols>' +
    `<sheetData>${rows.join("")}</sheetData></worksheet>`
  );
}

function cellXml(cell: string | number, address: string): string {
  if (typeof cell === "number") return `<c r="${address}"><v>${cell}</v></c>`;
  if (cell === "") return "";
  return `<c r="${address}" t="inlineStr"><is><t xml:space="preserve">${escapedCellText(cell)}</t></is></c>`;
}
