import type { Draft } from "../../draft";
import { entry, figure } from "../../drawing/cells";
import {
  caution,
  heading,
  link,
  type Page,
  prose,
  put,
  startPage,
  setHeight,
  setLook,
  merge,
} from "../../drawing/page";
import { CAUTION, type CellStyle, COMPUTED, KEY, PROSE, TEXT, UNIT } from "../../drawing/style";
import { FORMAT } from "../../../formats";
import type { Step } from "../../steps";

/** Wrapped text beside a cell, set off from it. */
const BESIDE: CellStyle = { ...PROSE, across: "left", indent: 1 };

/** The first sheet: what this is, whether the add-in is there, how to read the cells, and what each sheet is for. */
export function drawStartHere(draft: Draft, steps: readonly Step[]): void {
  const page = startPage(draft, "Start here", {
    title: "Bole sample workbook",
    lead: "A city-tree salvage yard of two partners, from the first call about a log to the sale of its boards, worked out with Bole's functions. Everything in here is invented: the yard, the partners, every log, customer, price and reading. Change the tinted cells and the rest follows; for your own yard keep a copy and type over ours.",
    widths: [26, 22, 84],
    leadLines: 3,
  });
  let row = drawAddInCheck(page, 4);
  row = drawLegend(page, row);
  row = drawContents(page, row, steps);
  drawTrust(page, row);
}

const MISSING =
  "The add-in is missing. On the Home tab open Add-ins, My Add-ins and click Bole's icon once; then press Ctrl+Alt+F9 to work everything out again. Until then the sheets show the figures they were saved with, and nothing follows what you type.";
const ANSWERS =
  "The add-in answered when this cell was last worked out. To be sure that it does now, click the cell above, press F2, then Enter: it must still show a version.";

function drawAddInCheck(page: Page, row: number): number {
  heading(page, row, "Is the add-in here?");
  put(page, `A${row + 1}`, "Version that answers", TEXT);
  figure(page, `B${row + 1}`, "=BOLE.VERSION()", { key: true });
  put(page, `C${row + 1}`, "#NAME? here means that it is missing.", BESIDE);
  put(page, `A${row + 2}`, "In words", TEXT);
  merge(page, `B${row + 2}:C${row + 2}`);
  figure(page, `B${row + 2}`, `=IF(ISTEXT(B${row + 1}), "${ANSWERS}", "${MISSING}")`);
  setLook(page, `B${row + 2}`, PROSE);
  setHeight(page, row + 2, 47);
  return row + 4;
}

function drawLegend(page: Page, row: number): number {
  heading(page, row, "How to read the cells");
  const legend = ["Type here", "Worked out: leave alone", "A key figure", "A caution"];
  legend.forEach((text, i) => put(page, `A${row + 1 + i}`, text, TEXT));
  entry(page, `B${row + 1}`, "14 1/2", { format: FORMAT.text });
  put(page, `B${row + 2}`, 212, COMPUTED);
  put(page, `B${row + 3}`, 212, KEY);
  put(page, `B${row + 4}`, "read it first", CAUTION);
  const says = [
    "Lengths as on the tape: 10'6\", 8-6, 14 1/2, 36 cm. Where 5/4 or 8-6 may be typed the cell is formatted as Text, so that Excel does not make a date of it.",
    "The small grey words above a table's headings name the function. A new row under a table fills itself. Excel may show a saved formula as =@BOLE: the @ changes nothing there.",
    "The sheet Summary collects them.",
    "Estimates and set-ups that can hurt someone carry one.",
  ];
  says.forEach((text, i) => put(page, `C${row + 1 + i}`, text, BESIDE));
  setHeight(page, row + 1, 32);
  setHeight(page, row + 2, 32);
  return row + 6;
}

function drawContents(page: Page, firstRow: number, steps: readonly Step[]): number {
  heading(page, firstRow, "The sheets, in the order of the job");
  let row = firstRow + 1;
  for (const { title, sheets } of steps) {
    put(page, `A${row}`, title, { ...TEXT, font: { ...TEXT.font, bold: true } });
    for (const { name, question } of sheets) {
      link(page, `B${row}`, name);
      put(page, `C${row++}`, question, UNIT);
    }
  }
  return row + 1;
}

function drawTrust(page: Page, row: number): void {
  heading(page, row, "How far to trust it");
  const says = [
    "The Functions sheet names the source of every formula and grades it: published, plain arithmetic, common practice, or from memory. Common practice and from memory mean that no authority stands behind the number.",
    "An answer of #N/A means that the rule, the table or the physics has no answer there; #VALUE! that a cell could not be read. Point at the warning triangle for the reason.",
  ];
  says.forEach((text, i) => prose(page, row + 1 + i, text, PROSE, 2));
  const cautions = [
    "weights, loads, lifting, rim speed, band tension and electrics can kill. Bole works out figures; the makers' limits, the local code, a scale and a licensed engineer, rigger or electrician decide.",
    "lumber from these sheets is not graded for structural use. A scale by a log rule is not a legal scale where a licensed scaler is asked for. Quarantines may forbid moving a log.",
  ];
  cautions.forEach((text, i) => caution(page, row + 4 + i, text, 2));
}
