import type { TableCell } from "../../cells/spread";
import { inchesText, quartersText } from "../../math/inches-text";
import type { OrderLine } from "../../math/sawing/order-plan/order-job";
import { planOrder, type LineSum, type OrderPlan } from "../../math/sawing/order-plan/order-plan";
import { logNote, remarksOn } from "./order-remarks";
import { mustBeWhole, type OrderPlanRequest } from "./order-request";

type Row = TableCell[];

/** The order plan as a table: a row for every log sawn, the sums, then what should be known beside them. */
export function orderTable(request: OrderPlanRequest): Row[] {
  mustBeWhole(request);
  const plan = planOrder(request);
  return [headings(request), ...logRows(plan, request), ...sumRows(plan, request), ...remarkRows(plan, request)];
}

/** A line of the order in short: 8/4 x 8 x 12 and the customer. */
export function lineText({ thickness, width, length, customer }: OrderLine): string {
  const size = `${quartersText(thickness)} x ${inchesText(width)} x ${Number(length.toFixed(3))}`;
  return customer === undefined ? size : `${size} ${customer}`;
}

function byCost({ settings }: OrderPlanRequest): boolean {
  return settings.least === "cost";
}

/** A cell for every row of the order, so that a line keeps its column whatever rows are blank. */
function lineCells({ order }: OrderPlanRequest, cell: (line: number) => TableCell): Row {
  const rows = Math.max(...order.map(({ row }) => row));
  return Array.from({ length: rows }, (_, at) => {
    const line = order.findIndex(({ row }) => row === at + 1);
    return line < 0 ? undefined : cell(line);
  });
}

function headings(request: OrderPlanRequest): Row {
  return [
    "log",
    "diameter",
    "length",
    "wood",
    ...(byCost(request) ? ["cost"] : []),
    "board feet",
    ...lineCells(request, (line) => lineText(request.order[line]!)),
    "note",
  ];
}

function logRows(plan: OrderPlan, request: OrderPlanRequest): Row[] {
  return plan.sawn.map((sawn) => {
    const { log, woodBoardFeet, boardFeet, made } = sawn;
    return [
      log.name ?? log.row,
      log.diameter,
      log.length,
      woodBoardFeet,
      ...(byCost(request) ? [log.cost] : []),
      boardFeet,
      ...lineCells(request, (line) => made[line] || undefined),
      logNote(sawn, plan),
    ];
  });
}

function sumRows({ lines, boardFeet, woodBoardFeet, takes }: OrderPlan, request: OrderPlanRequest): Row[] {
  const cost = (sum?: number) => (byCost(request) ? [sum] : []);
  const row = (
    name: keyof OrderPlan["boardFeet"],
    of: (line: LineSum) => TableCell,
    wood?: number,
    sum?: number,
  ): Row => [
    name,
    undefined,
    undefined,
    wood,
    ...cost(sum),
    boardFeet[name],
    ...lineCells(request, (line) => of(lines[line]!)),
    undefined,
  ];
  const isStock = ({ row }: LineSum) => request.order.some((line) => line.row === row && line.count === "stock");
  return [
    row("made", ({ made }) => made, woodBoardFeet, takes),
    row("ordered", (line) => (isStock(line) ? "stock" : line.ordered)),
    row("short", ({ short }) => short),
    row("over", ({ over }) => over),
  ];
}

function remarkRows(plan: OrderPlan, request: OrderPlanRequest): Row[] {
  const width = headings(request).length;
  return remarksOn(plan, request).map(({ name, figure, says }) => {
    const row: Row = Array.from({ length: width }, () => undefined);
    row[0] = name;
    row[1] = figure;
    row[width - 1] = says;
    return row;
  });
}
