import { columnLetters } from "../../src/formula/addresses";
import { tinyParts } from "../hosts/terminal/file/tiny";
import { packedFile, zipOf } from "../../src/xlsx/zip";

const LAST = 1_048_576;
const DAY = new Date("2026-01-01");

/** Workbooks that are large in one way each; their numbers are invented. */
export const LARGE: Readonly<Record<string, () => Uint8Array>> = {
  "100,000 BOLE formulas": () =>
    workbook(100_000, (row) => `${number("A", row, 8 + (row % 20))}${number("B", row, 8)}${scale("C", row)}`),
  "one formula on a full sheet": () =>
    workbook(
      LAST,
      (row) => number("A", row, 8 + (row % 20)) + (row === 1 ? `${number("B", 1, 8)}${scale("C", 1)}` : ""),
    ),
  "two formulas in opposite corners": () =>
    workbook(LAST, (row) => (row === 1 ? own("A", 1) : row === LAST ? own("XFD", LAST) : ""), true),
  "200,000 texts": () =>
    workbook(20_000, (row) => {
      const texts = Array.from({ length: 10 }, (_, at) =>
        text(columnLetters(at + 3), row, `Log ${row} of lot ${at}, white oak`),
      );
      return `${number("A", row, 20)}${number("B", row, 8)}${row === 1 ? scale("C", 1) : ""}${texts.slice(1).join("")}`;
    }),
};

function workbook(rows: number, cells: (row: number) => string, skipEmpty = false): Uint8Array {
  const lines: string[] = [];
  for (let row = 1; row <= rows; row++) {
    const inside = cells(row);
    if (inside || !skipEmpty) lines.push(`<row r="${row}">${inside}</row>`);
  }
  const parts = Object.entries(tinyParts({ sheets: { Logs: lines.join("") } }));
  return zipOf(parts.map(([name, content]) => packedFile(name, new TextEncoder().encode(content), DAY)));
}

const number = (column: string, row: number, value: number) => `<c r="${column}${row}"><v>${value}</v></c>`;
const text = (column: string, row: number, held: string) =>
  `<c r="${column}${row}" t="inlineStr"><is><t>${held}</t></is></c>`;
const scale = (column: string, row: number) =>
  `<c r="${column}${row}"><f>_xldudf_BOLE_LOGSCALE(A${row},B${row},"Doyle")</f><v>0</v></c>`;
const own = (column: string, row: number) =>
  `<c r="${column}${row}"><f>_xldudf_BOLE_LOGSCALE(20,8,"Doyle")</f><v>0</v></c>`;
