import { NoAnswer } from "../../errors";
import { sumOf } from "../../numbers";
import type { YardLog } from "./order-job";
import { readOrder, type OrderRequest, type ReadOrder } from "./order-request";
import type { Progress } from "./order-improve";
import { searchOrder } from "./order-search";
import { proofOf, type Proof } from "./proof";
import { sawnLogs, type SawnLog } from "./sawn-log";
import { warningsOfOrder, type OrderWarning } from "./order-warning";

/** What a line of the order gets. */
export interface LineSum {
  row: number;
  ordered: number;
  made: number;
  short: number;
  /** Made over what is ordered; all that is made for stock. */
  over: number;
  /** Of one piece. */
  boardFeet: number;
}

/** Why a log is not sawn: it stays for other orders, or it does not go between the guides. */
export interface LeftLog {
  log: YardLog;
  woodBoardFeet: number;
  tooWide: boolean;
}

/** The plan of an order against a yard. */
export interface OrderPlan {
  /** In the order of the yard. */
  sawn: readonly SawnLog[];
  left: readonly LeftLog[];
  lines: readonly LineSum[];
  /** What the logs sawn take: their wood in board feet, or their cost. */
  takes: number;
  woodBoardFeet: number;
  /** Of the pieces made, of what is ordered, of what is short, of what is over. */
  boardFeet: { made: number; ordered: number; short: number; over: number };
  /** What was made least, and what no plan can pass. */
  total: number;
  bound: number;
  proof: Proof;
  warnings: readonly OrderWarning[];
}

/**
 * The logs to saw for an order, and how, so that it is filled with the least wood or cost.
 *
 * @formula by search: the least total of the wood or cost of the logs sawn, a price for each board foot short, less a
 *   little for each board foot of stock, so total = K + P * S - E * B
 * @source plain geometry: straight taper, round logs sawn live; prices by linear programming, each log by the dynamic programme of the cut plan; the bound is proved, the plan is searched for
 * @range up to 60 logs and 30 lines, whose lengths have up to 400 sums within the longest log
 * @checked 5 of 5 worked orders to 1e-4 board feet; 3 stock-length problems with printed data; small orders against a search of everything
 */
export function planOrder(request: OrderRequest): OrderPlan {
  const key = JSON.stringify(request);
  if (last?.key === key) return last.plan;
  const steps = planOrderInSteps(request);
  let step = steps.next();
  while (!step.done) step = steps.next();
  return step.value;
}

/** The same, stopping after every try, so that a pane can show how far it is and be left. */
export function* planOrderInSteps(request: OrderRequest): Generator<Progress, OrderPlan, void> {
  const key = JSON.stringify(request);
  if (last?.key === key) return last.plan;
  mustHaveBoth(request);
  const read = readOrder(request);
  const searched = yield* searchOrder(read.job);
  const sawn = sawnLogs(request, read, searched);
  const used = new Set(sawn.map(({ log }) => log));
  const left = request.logs.flatMap((log, at): LeftLog[] => (used.has(log) ? [] : [leftLog(log, read.logs[at]!)]));
  const lines = request.order.map(({ row, count }, line): LineSum => {
    const made = sumOf(sawn, ({ made }) => made[line]!);
    const ordered = count === "stock" ? 0 : count;
    const boardFeet = read.sizes[line]!.boardFeet;
    return { row, ordered, made, short: Math.max(0, ordered - made), over: Math.max(0, made - ordered), boardFeet };
  });
  const inBoardFeet = (of: (line: LineSum) => number) => sumOf(lines, (line) => of(line) * line.boardFeet);
  const boardFeet = {
    made: inBoardFeet(({ made }) => made),
    ordered: inBoardFeet(({ ordered }) => ordered),
    short: inBoardFeet(({ short }) => short),
    over: inBoardFeet(({ over }) => over),
  };
  const { found } = searched;
  const shortFor = read.job.shortPrice * read.notToBeHad.boardFeet;
  const plan: OrderPlan = {
    sawn,
    left,
    lines,
    takes: sumOf(found.plans, ({ log }) => read.job.logs[log]!.takes),
    woodBoardFeet: sumOf(sawn, ({ woodBoardFeet }) => woodBoardFeet),
    boardFeet,
    total: found.total + shortFor,
    bound: searched.bound + shortFor,
    proof: proofOf(read.job, searched, read.notToBeHad.boardFeet),
    warnings: warningsOfOrder(request, read, sawn),
  };
  last = { key, plan };
  return plan;
}

function leftLog(log: YardLog, { woodBoardFeet, tooWide }: ReadOrder["logs"][number]): LeftLog {
  return { log, woodBoardFeet, tooWide };
}

/** The last plan by what was asked: its passes are asked for right after it, and would take as long again. */
let last: { key: string; plan: OrderPlan } | undefined;

function mustHaveBoth({ order, logs }: OrderRequest): void {
  if (logs.length === 0) throw new NoAnswer("logs: wanted one log or more, got none");
  if (!order.some(({ count }) => count !== "stock"))
    throw new NoAnswer("order: wanted one line or more with a count, got none");
}
