import type { Draft } from "../../draft";
import { figure } from "../../drawing/cells";
import { drawFacts } from "../../drawing/facts";
import { type Page, printOnly, put, startPage, setHeight, setLook } from "../../drawing/page";
import { type CellStyle, TEXT, TICKET_EDGE } from "../../drawing/style";
import { lookUp } from "../../look-up";
import { DOLLARS, FORMAT } from "../../../formats";

const TICKETS = 8;
const FIRST_TICKET_ROW = 11;
/** Label and value of the left ticket, a gap, label and value of the right one. */
const SIDES = [
  { label: "A", value: "B" },
  { label: "D", value: "E" },
] as const;

const ofSlab = (piece: string, column: string) => lookUp(piece, "Slabs[Piece]", `Slabs[${column}]`);
const width = (piece: string, column: string) => `BOLE.FRACTION(${ofSlab(piece, column)})`;

/** A line of a ticket: its label, and its value by the cell with the piece's name and the cells above it. */
interface TicketLine {
  label: string;
  value: (piece: string, cell: (line: number) => string) => string;
  format?: string;
}

const LINES: readonly TicketLine[] = [
  { label: "Wood", value: (piece) => ofSlab(piece, "Species") },
  {
    label: "Thickness",
    value: (piece) => {
      const thickness = ofSlab(piece, "Thickness");
      return `${thickness}&" as sawn, counted as "&BOLE.FRACTION(BOLE.QUARTERS(${thickness}))&" in"`;
    },
  },
  { label: "Length", value: (piece) => ofSlab(piece, "Length") },
  {
    label: "Widths, in",
    value: (piece) => ["W1", "W2", "W3"].map((column) => width(piece, column)).join('&" / "&'),
  },
  { label: "Measured by", value: () => "Tickets_method" },
  { label: "Board feet", value: (piece) => `ROUND(${ofSlab(piece, "Board feet")}, 2)`, format: FORMAT.two },
  {
    label: "Price of a bf",
    value: (piece) =>
      `IFERROR(${lookUp(`${ofSlab(piece, "Product")}&", "&Tickets_state`, "Prices[Sold as]", "Prices[Asked]")}, "not in the price list")`,
    format: DOLLARS.cents,
  },
  {
    label: "Price",
    value: (_, cell) => `IF(ISNUMBER(${cell(6)}), BOLE.LINEAMOUNT(${cell(5)}, ${cell(6)}), "ask")`,
    format: DOLLARS.cents,
  },
];

/** Eight tickets fill a page of letter paper. */
const LINE_HEIGHT = 18;

/** The piece, its lines, and a row to cut through. */
const TICKET_ROWS = LINES.length + 2;

/** Tickets for the slabs of one log, eight on a page. Each says how its slab was measured. */
export function drawSlabTickets(draft: Draft): void {
  const page = startPage(draft, "Slab tickets", {
    title: "Slab tickets: to print, cut and staple",
    lead: "Eight tickets a page. Choose the log and the state its slabs are sold in; only the tickets are printed. No standard says how a live-edge slab is measured, so each ticket says it. The slabs of one log stand together on the sheet Slabs.",
    widths: [15, 40, 3, 15, 40],
    leadLines: 3,
    landscape: false,
    form: true,
    onePage: true,
  });
  drawFacts(page, { label: "A", value: "B", says: "D" }, 4, [
    { label: "Slabs of log", value: "L01", name: "Tickets_log", says: "a log of the sheet Slabs" },
    { label: "Sold", value: "green", name: "Tickets_state", list: "states", says: "a state of the price list" },
    {
      label: "From its slab",
      value: 1,
      name: "Tickets_from",
      says: "1 for the first; 9 prints the second page of a log with more than eight",
    },
    {
      label: "Slabs in all",
      formula: "=COUNTIFS(Slabs[Log], Tickets_log)",
      name: "Tickets_count",
      says: "thickness green, as sawn; bark, cracks and voids: say on the ticket what comes off",
    },
    {
      label: "Measured by",
      formula:
        '=SUBSTITUTE(INDEX(Method_words, MATCH(Slab_method, Method_list, 0)), "#", COLUMNS(Slabs[[W1]:[W3]]))&", narrow face"',
      name: "Tickets_method",
      says: "chosen on the sheet Slabs",
    },
  ]);
  for (let i = 0; i < TICKETS; i++) drawTicket(page, i);
  printOnly(page, `A${FIRST_TICKET_ROW}:E${FIRST_TICKET_ROW + (TICKETS / 2) * TICKET_ROWS - 1}`);
}

function drawTicket(page: Page, index: number): void {
  const { label, value } = SIDES[index % 2]!;
  const top = FIRST_TICKET_ROW + Math.floor(index / 2) * TICKET_ROWS;
  const piece = `${value}${top}`;
  const number = `Tickets_from+${index}`;
  put(page, `${label}${top}`, "Slab", edged(PLAIN, "top", "left"));
  figure(
    page,
    piece,
    `=IF(${number}>Tickets_count, "", INDEX(Slabs[Piece], MATCH(Tickets_log, Slabs[Log], 0)+${number}-1))`,
  );
  setLook(page, piece, edged(LARGE, "top", "right"));
  setHeight(page, top, 22);
  LINES.forEach((line, i) => {
    const row = top + 1 + i;
    const last = i === LINES.length - 1;
    setHeight(page, row, LINE_HEIGHT);
    const foot = last ? (["bottom"] as const) : [];
    put(page, `${label}${row}`, line.label, edged(PLAIN, "left", ...foot));
    const shown = line.value(piece, (other) => `${value}${top + 1 + other}`);
    figure(page, `${value}${row}`, `=IF(${piece}="", "", ${shown})`);
    const style = edged(last ? LARGE : PLAIN, "right", ...foot);
    setLook(page, `${value}${row}`, { ...style, ...(line.format && { numberFormat: line.format }) });
  });
}

const PLAIN: CellStyle = { ...TEXT, across: "left", upright: "center", indent: 1 };
const LARGE: CellStyle = { ...PLAIN, font: { ...TEXT.font, bold: true, size: 14 } };

function edged(style: CellStyle, ...sides: ("top" | "left" | "bottom" | "right")[]): CellStyle {
  return { ...style, edges: Object.fromEntries(sides.map((side) => [side, TICKET_EDGE])) };
}
