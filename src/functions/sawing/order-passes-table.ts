import { Unreadable } from "../../cells/error";
import type { TableCell } from "../../cells/spread";
import { inchesText } from "../../math/inches-text";
import { planOrder } from "../../math/sawing/order-plan/order-plan";
import type { SawnFlitch, SawnLog } from "../../math/sawing/order-plan/sawn-log";
import { nearest } from "../../math/rounding";
import { feetInchesText } from "../boards/tape-text";
import { heightIn, heightText, type HeightUnit } from "./heights";
import { mustBeWhole, nameOf, type OrderPlanRequest } from "./order-request";
import { lineText } from "./order-table";

type Row = TableCell[];

/** A slab is looked at with a tape, not set on the scale. */
const EIGHTH_IN = 1 / 8;

const HEADINGS = [
  "log",
  "pass",
  "blade height",
  "drop",
  "sawn",
  "run",
  "rip",
  "cut",
  "pieces",
  "board feet",
  "note",
] as const;

/** What is asked of the passes: an order plan, and the log by its name or row. */
export interface PassesRequest extends OrderPlanRequest {
  log?: string;
}

/** The passes of one log of an order plan, or of all one under the other. */
export function orderPassesTable({ log, ...request }: PassesRequest): Row[] {
  mustBeWhole(request);
  const wanted = log === undefined ? undefined : request.logs.find((one) => nameOf(one) === log);
  if (log !== undefined && !wanted)
    throw new Unreadable("log", `one of ${request.logs.map(nameOf).join(", ")}`, `"${log}"`);
  const { sawn } = planOrder(request);
  const shown = wanted ? sawn.filter((one) => one.log.row === wanted.row) : sawn;
  if (shown.length === 0)
    return [
      [...HEADINGS],
      row({ log: log ?? "none", note: wanted ? "the plan does not saw this log" : "no log is sawn" }),
    ];
  return [[...HEADINGS], ...shown.flatMap((one) => passRows(one, request))];
}

function passRows({ log, flitches, aboveIn, buttIn }: SawnLog, request: OrderPlanRequest): Row[] {
  const unit: HeightUnit = request.settings.unit ?? "in";
  const name = log.name ?? log.row;
  const firstIn = buttIn - aboveIn;
  const first = row({
    log: name,
    pass: 1,
    "blade height": heightIn(unit, firstIn),
    note: `first cut, with about ${heightText(unit, nearest(EIGHTH_IN, aboveIn))} ${unit} above it at the butt`,
  });
  const rest = flitches.map((flitch, at) =>
    row({
      log: name,
      pass: at + 2,
      "blade height": heightIn(unit, flitch.lowIn - flitch.kerfIn),
      drop: heightIn(unit, flitch.greenIn + flitch.kerfIn),
      sawn: flitch.greenIn,
      run: feetInchesText({ lengthIn: flitch.runIn, denominator: 16 }),
      rip: flitch.strips.map(({ greenIn }) => inchesText(greenIn)).join(" + "),
      cut: flitch.strips.map(({ lines }) => lengthsOf(lines, request).join(" + ")).join("; "),
      pieces: piecesText(flitch, request),
      "board feet": flitch.boardFeet,
    }),
  );
  return [first, ...rest];
}

function lengthsOf(lines: readonly number[], { order }: OrderPlanRequest): number[] {
  return lines.map((line) => Number(order[line]!.length.toFixed(3)));
}

function piecesText({ strips }: SawnFlitch, { order }: OrderPlanRequest): string {
  const counts = new Map<number, number>();
  for (const { lines } of strips) for (const line of lines) counts.set(line, (counts.get(line) ?? 0) + 1);
  return [...counts]
    .sort(([a], [b]) => a - b)
    .map(([line, count]) => `${count} of ${lineText(order[line]!)}`)
    .join(", ");
}

function row(cells: Partial<Record<(typeof HEADINGS)[number], TableCell>>): Row {
  return HEADINGS.map((heading) => cells[heading]);
}
