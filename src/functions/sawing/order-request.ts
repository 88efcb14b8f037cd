import {
  described,
  feet,
  inches,
  label,
  logLength,
  money,
  numberOr,
  numberedColumns,
  oneOf,
  optional,
  sameForAll,
  settings,
  zeroAsText,
  type Declaration,
  type Declarations,
} from "../../cells/read";
import { Unreadable } from "../../cells/error";
import type { OrderLine, YardLog } from "../../math/sawing/order-plan/order-job";
import { SHARED_SETTINGS, type OrderRequest } from "../../math/sawing/order-plan/order-request";
import { SETTING_READERS } from "./cut-settings";
import type { PlanSettings } from "./cut-settings.table";

/** What an order plan may be told: all that a cut plan may, so that one range serves both, and two things of its own. */
export interface OrderPlanSettings extends PlanSettings {
  "crosscut kerf": number;
  least: "wood" | "cost";
}

/** What is asked of an order plan. */
export interface OrderPlanRequest extends OrderRequest {
  settings: Partial<OrderPlanSettings>;
}

const ORDER_COLUMNS: Declarations<Omit<OrderLine, "row">> = {
  thickness: inches,
  width: inches,
  length: feet,
  count: numberOr("stock"),
  customer: optional(label),
  "green size": optional(inches),
};

const LOG_COLUMNS: Declarations<Omit<YardLog, "row">> = {
  diameter: inches,
  length: logLength,
  "large end": optional(inches),
  cost: optional(money),
  name: optional(label),
};

const ORDER_SETTINGS: Declarations<OrderPlanSettings> = {
  ...SETTING_READERS,
  "crosscut kerf": described(optional(zeroAsText(inches)) as Declaration<number>, {
    group: "Orders",
    says: "Wood lost between two pieces cut one after the other from a strip.",
    otherwise: "as the kerf",
  }),
  least: described(optional(oneOf({ wood: ["board feet"], cost: ["money"] })) as Declaration<"wood" | "cost">, {
    group: "Orders",
    says: "What the plan takes least of: the wood of the logs sawn, or what they cost.",
    otherwise: "wood",
  }),
};

/** What ORDERPLAN and ORDERPASSES ask for. */
export const ORDER_REQUEST: Declarations<OrderPlanRequest> = {
  /** Columns thickness, width, length, count (or stock), customer, green size. */
  order: numberedColumns(ORDER_COLUMNS, "count"),
  /** Columns small-end diameter inside bark, length, large end, cost, name. */
  logs: numberedColumns(LOG_COLUMNS),
  /** Width of the saw cut. */
  kerfIn: sameForAll(inches),
  /** Two columns of name and value, as in CUTPLAN. */
  settings: settings(ORDER_SETTINGS),
};

/** What a log is called: its name, or else its row. */
export function nameOf({ name, row }: YardLog): string {
  return name ?? String(row);
}

/** Refuses what no plan can be made of because a cell is empty or says the same as another. */
export function mustBeWhole({ order, logs, settings }: OrderPlanRequest): void {
  if (order.every(({ count }) => count === "stock"))
    throw new Unreadable("order", "a line with a count", order.length === 0 ? "no line" : "lines for stock only");
  if (logs.length === 0) throw new Unreadable("logs", "a log with its diameter and length", "none");
  const names = new Set<string>();
  for (const log of logs) {
    const name = nameOf(log);
    if (names.has(name))
      throw new Unreadable(`logs, name, row ${log.row}`, "another name for every log", `"${name}" twice`);
    names.add(name);
    if (settings.least === "cost" && log.cost === undefined)
      throw new Unreadable(`logs, cost, row ${log.row}`, `what log ${name} costs, for the least cost`, "a blank or 0");
  }
}

/** The settings given that change nothing here, so that nobody counts on them. */
export function unusedHere(settings: Partial<OrderPlanSettings>): string[] {
  const used: readonly string[] = [...SHARED_SETTINGS, "unit", "crosscut kerf", "least"];
  return Object.keys(settings).filter((name) => !used.includes(name));
}
