import { freeSheetName } from "../../../sheets/ready/free-name";
import { declarePart, freePart, relate, withLast } from "../../../xlsx/relations";
import type { Workbook } from "./workbook";
import { attribute, elements, escaped, escapedCellText, prefixOf } from "../../../xlsx/xml";
import { HEADING, wordsOf } from "../../../xlsx/namespaces";

const SHEET_TYPE = "application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml";
const NAME = "About this copy";

/** A line of the sheet: text across it, or a label with a figure beside it. */
export type Line = string | [label: string, figure: number | string];

/** Adds a sheet of plain lines behind the last one. */
export function addAboutSheet({ file, part }: Workbook, lines: readonly Line[]): void {
  const xml = file.text(part);
  const sheets = elements(xml, "sheet").filter(({ depth }) => depth === 2);
  const taken = sheets.map(({ attributes }) => attribute(attributes, "name") ?? "");
  const ids = sheets.map(({ attributes }) => Number(attribute(attributes, "sheetId") ?? 0));
  const folder = part.slice(0, part.lastIndexOf("/") + 1);
  const home = freePart(file, `${folder}worksheets/sheet`, ".xml");
  const words = wordsOf(file);
  file.put(home, sheetXml(lines.flatMap(folded), words.main));
  declarePart(file, home, SHEET_TYPE);
  const relation = relate(file, part, "worksheet", home);
  const id = Math.max(0, ...ids) + 1;
  const entry = `<${prefixOf(xml)}sheet xmlns:r="${words.office}" name="${escaped(freeSheetName(NAME, taken))}" sheetId="${id}" r:id="${relation}"/>`;
  file.put(part, withLast(xml, "sheets", entry));
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
