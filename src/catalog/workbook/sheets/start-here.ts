import type { Draft } from "../draft";
import { entry, figure } from "../cells";
import { caution, heading, link, type Page, prose, put, startPage } from "../page";
import { CAUTION, COMPUTED, FORMAT, HEADER, KEY, PROSE, TEXT, UNIT } from "../style";

const SHEETS: readonly [string, string][] = [
  ["Log book", "What is in each log, what does it weigh, does the mill take it?"],
  ["Which rule", "How much money does the choice of log rule move?"],
  ["Every rule", "One log by every rule, and whom each favors."],
  ["Loads", "What is left of the trailer's rating, and how is each trip tied down?"],
  ["Vehicles", "Rating, empty weight and cost of each vehicle."],
  ["Lift and hitch", "Plan a load before the loader starts; the pull in a sling."],
  ["Boards", "Board feet of square-edged boards, as graders tally and exactly."],
  ["Slabs", "Board feet of live-edge slabs, and how far the customs differ."],
  ["Log results", "What each log gave and what a green board foot of it cost."],
  ["Cut plan", "Log, blade and products; what a plan yields; what a thinner blade gains."],
  ["Pass list", "The settings of the saw head, pass by pass, to print for the mill."],
  ["Head heights", "Even drops of the saw head without a plan, to print for the mill."],
  ["Mill", "From the motor's plate to band speed, tension, lift and bed."],
  ["Band speeds", "Drive frequency against band speed, to hang beside the drive."],
  ["Drying", "What the yard's air can do, readings over the weeks, when the target is reached."],
  ["Prices", "The price list, and the margin each price leaves."],
  ["Money", "What to bid, what a foot costs, what an hour must earn."],
  ["Invoice", "Invoice lines that add up to the cent."],
  ["Partners", "What each partner gets of the year."],
  ["Functions", "All functions, each with a live example, its grade and its source."],
  ["Function tables", "The functions that answer a whole table."],
  ["Lists", "The names behind the drop-down lists."],
];

/** The key results: label, defined name, unit, format, sheet. */
export const KEY_RESULTS: readonly [string, string, string, string, string][] = [
  ["Net board feet in the log book", "Key_net_board_feet", "bf", FORMAT.whole, "Log book"],
  ["Money the choice of rule moves", "Key_rule_money", "", FORMAT.moneyWhole, "Which rule"],
  ["Heaviest log, by estimate", "Key_heaviest_log", "lb", FORMAT.whole, "Log book"],
  ["Least payload left on a trip", "Key_least_payload", "lb", FORMAT.whole, "Loads"],
  ["Board feet sawn", "Key_sawn_feet", "bf", FORMAT.whole, "Log results"],
  ["Overrun of the saw over the scale", "Key_overrun", "percent", FORMAT.one, "Log results"],
  ["Share the way of measuring slabs moves", "Key_slab_custom", "", FORMAT.share, "Slabs"],
  ["Board feet of the cut plan", "Key_cut_plan_feet", "bf", FORMAT.one, "Cut plan"],
  ["Gain from the thinner blade", "Key_thin_kerf_gain", "bf", FORMAT.one, "Cut plan"],
  ["Band speed", "Key_band_speed", "ft/min", FORMAT.whole, "Mill"],
  ["Drive frequency for 4,500 ft/min", "Key_drive_hertz", "Hz", FORMAT.one, "Mill"],
  ["Day the walnut slabs reach the target", "Key_dry_day", "days", FORMAT.whole, "Drying"],
  ["Weight the sample board must reach", "Key_board_weight", "g", FORMAT.whole, "Drying"],
  ["Most to pay for log L24", "Key_bid", "", FORMAT.money, "Money"],
  ["Cost of a dry board foot", "Key_dry_foot", "", FORMAT.money, "Money"],
];

/** The first sheet: what this is, whether the add-in is there, what each sheet is for, and the key results. */
export function drawStartHere(draft: Draft): void {
  const page = startPage(draft, "Start here", {
    title: "Bole sample workbook",
    lead: "A city-tree salvage yard of two partners, worked out with Bole's functions. Everything in here is invented: the yard, the partners, every log, customer, price and reading. Change the tinted cells and the rest follows; for your own yard keep a copy and type over ours.",
    widths: [40, 22, 12, 78],
    leadLines: 3,
    landscape: false,
    onePage: true,
  });
  let row = drawStatus(page, 4);
  row = drawLegend(page, row);
  heading(page, row++, "The sheets");
  for (const [name, question] of SHEETS) {
    link(page, `A${row}`, name);
    put(page, `B${row++}`, question, TEXT);
  }
  row = drawKeyResults(page, row + 1);
  drawTrust(page, row + 1);
}

function drawStatus(page: Page, row: number): number {
  heading(page, row, "Is the add-in here?");
  put(page, `A${row + 1}`, "Click the cell on the right, press F2, then Enter", TEXT);
  figure(page, `B${row + 1}`, "=BOLE.VERSION()", { key: true });
  const says = [
    "Still a version: the add-in answers.",
    "#NAME?: on the Home tab open Add-ins, My Add-ins and click Bole's icon once; then press Ctrl+Alt+F9 to work everything out again.",
    "Without the add-in the sheets show the figures they were saved with, but nothing follows what you type.",
  ];
  says.forEach((text, i) => put(page, `D${row + 1 + i}`, text, PROSE));
  page.sheet.getRow(row + 2).height = 31;
  page.sheet.getRow(row + 3).height = 31;
  return row + 5;
}

function drawLegend(page: Page, row: number): number {
  heading(page, row, "How to read the cells");
  const legend = ["Type here", "Worked out: leave alone", "A key result", "A caution"];
  legend.forEach((text, i) => put(page, `A${row + 1 + i}`, text, TEXT));
  entry(page, `B${row + 1}`, "14 1/2", { format: FORMAT.text });
  put(page, `B${row + 2}`, 212, COMPUTED);
  put(page, `B${row + 3}`, 212, KEY);
  put(page, `B${row + 4}`, "read it first", CAUTION);
  const says = [
    "Lengths as on the tape: 10'6\", 8-6, 14 1/2, 36 cm. Where 5/4 or 8-6 may be typed the cell is formatted as Text, so that Excel does not make a date of it.",
    "The small grey words above a table's headings name the function. A new row under a table fills itself. Excel may show a saved formula as =@BOLE: the @ changes nothing there.",
    "Collected below.",
    "Estimates and set-ups that can hurt someone carry one.",
  ];
  says.forEach((text, i) => put(page, `D${row + 1 + i}`, text, PROSE));
  page.sheet.getRow(row + 1).height = 31;
  page.sheet.getRow(row + 2).height = 46.5;
  return row + 6;
}

function drawKeyResults(page: Page, row: number): number {
  heading(page, row, "Key results");
  ["Result", "Figure", "Unit", "Sheet"].forEach((text, i) => put(page, `${"ABCD"[i]}${row + 1}`, text, HEADER));
  KEY_RESULTS.forEach(([label, name, unit, format, sheet], i) => {
    put(page, `A${row + 2 + i}`, label, TEXT);
    figure(page, `B${row + 2 + i}`, `=${name}`, { format, key: true });
    put(page, `C${row + 2 + i}`, unit, UNIT);
    link(page, `D${row + 2 + i}`, sheet);
  });
  return row + 2 + KEY_RESULTS.length;
}

function drawTrust(page: Page, row: number): void {
  heading(page, row, "How far to trust it");
  const says: [string, number][] = [
    [
      "The Functions sheet names the source of every formula and grades it: published, plain arithmetic, common practice, or from memory. Common practice and from memory mean that no authority stands behind the number.",
      2,
    ],
    [
      "An answer of #N/A means that the rule, the table or the physics has no answer there; #VALUE! that a cell could not be read. Point at the warning triangle for the reason.",
      2,
    ],
  ];
  says.forEach(([text, lines], i) => prose(page, row + 1 + i, text, PROSE, lines));
  caution(
    page,
    row + 4,
    "weights, loads, lifting, rim speed, band tension and electrics can kill. Bole works out figures; the makers' limits, the local code, a scale and a licensed engineer, rigger or electrician decide.",
    2,
  );
  caution(
    page,
    row + 5,
    "lumber from these sheets is not graded for structural use. A scale by a log rule is not a legal scale where a licensed scaler is asked for. Quarantines may forbid moving a log.",
    2,
  );
}
