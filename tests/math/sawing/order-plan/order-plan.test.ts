import { describe, expect, test } from "vitest";
import { planOrder } from "../../../../src/math/sawing/order-plan/order-plan";
import { readOrder } from "../../../../src/math/sawing/order-plan/order-request";
import { searchPrices } from "../../../../src/math/sawing/order-plan/price-search";
import { wantedOf } from "../../../../src/math/sawing/order-plan/order-found";
import { yardOf } from "../../../../src/math/sawing/order-plan/weigh";
import type { OrderJob } from "../../../../src/math/sawing/order-plan/order-job";
import { faultsOf } from "./check-plan";
import { inventedYard } from "./yards";
import { order, WORKED_ORDERS } from "./worked-orders";

/** The bound of the linear programme over whole plans of logs. */
function programmeBound(job: OrderJob): number {
  const yard = yardOf(job);
  const takes = job.logs.map(({ takes }) => takes);
  const logs = job.logs.map((_, log) => log);
  return searchPrices(
    yard,
    { logs, takes, wanted: wantedOf(yard) },
    logs.map(() => []),
  ).bound;
}

describe.each(WORKED_ORDERS)("$name", ({ request, wood, total, programme, sawn, short = 0 }) => {
  const plan = planOrder(request);

  test("the plan of the least total", () => {
    expect(plan.total).toBeCloseTo(total, 4);
    expect(plan.sawn.map(({ log }) => log.row)).toEqual(sawn);
    expect(plan.boardFeet.short).toBeCloseTo(short, 6);
  });
  test("the wood of every log", () => {
    readOrder(request).logs.forEach(({ woodBoardFeet }, log) => expect(woodBoardFeet).toBeCloseTo(wood[log]!, 4));
  });
  test("a bound no lower than the linear programme's", () => {
    expect(programmeBound(readOrder(request).job)).toBeCloseTo(programme, 3);
    expect(plan.bound).toBeGreaterThanOrEqual(programme - 1e-3);
  });
  test("pieces inside their logs, a kerf apart, and counted right", () => {
    expect(faultsOf(request, plan)).toEqual([]);
  });
});

test("the shelf gets what fits beside the order, and never opens a log", () => {
  const plan = planOrder(WORKED_ORDERS[3]!.request);
  expect(plan.takes).toBe(37);
  expect(plan.lines[1]!.made).toBe(10);
  expect(plan.lines[1]!.over).toBe(10);
});

test("a short order that no plan can fill says so", () => {
  expect(planOrder(WORKED_ORDERS[2]!.request).proof).toEqual({ is: "fullest" });
  expect(planOrder(WORKED_ORDERS[0]!.request).proof).toEqual({ is: "best" });
});

test.each([
  ["longer than every log", 1, 6, 40, "too long"],
  ["wider than every butt", 1, 30, 8, "too wide"],
  ["as wide as the widest butt, and thick", 9, 15, 8, "too large"],
] as const)(
  "a line %s is short, and the others are planned as if it were not there",
  (_, thickness, width, length, code) => {
    const { request } = WORKED_ORDERS[0]!;
    const alone = planOrder(request);
    const [line] = order([thickness, width, length, 3]);
    const row = request.order.length + 1;
    const plan = planOrder({ ...request, order: [...request.order, { ...line!, row }] });
    const short = (3 * thickness * width * length) / 12;
    expect(plan.sawn.map(({ log }) => log)).toEqual(alone.sawn.map(({ log }) => log));
    expect(plan.boardFeet.short).toBeCloseTo(short, 9);
    expect(plan.proof).toEqual({ is: "fullest" });
    expect(plan.warnings).toContainEqual({ code, row });
    expect(plan.total - plan.bound).toBeCloseTo(alone.total - alone.bound, 6);
    expect(faultsOf({ ...request, order: [...request.order, { ...line!, row }] }, plan)).toEqual([]);
  },
);

/** A log that gives one strip makes the order a problem of one-dimensional stock lengths. */
function stockLengths(logs: number, lengthFt: number, pieces: [length: number, count: number][]) {
  return {
    order: order(
      ...pieces.map(([length, count]): [number, number, number, number, number] => [4, 4, length, count, 4]),
    ),
    logs: Array.from({ length: logs }, (_, at) => ({ row: at + 1, diameter: 6, length: lengthFt, cost: 1 })),
    kerfIn: 1 / 8,
    settings: { taper: 0, trim: 0, "crosscut kerf": 0, least: "cost" as const },
  };
}

describe("stock lengths", () => {
  test("17 ft; 25 of 3, 20 of 5, 15 of 9 ft (data as printed in lecture notes, worked here): 18 1/3, so 19 logs", () => {
    const request = stockLengths(24, 17, [
      [3, 25],
      [5, 20],
      [9, 15],
    ]);
    expect(programmeBound(readOrder(request).job)).toBeCloseTo(55 / 3, 6);
    const plan = planOrder(request);
    expect(plan.total).toBeCloseTo(19, 6);
    expect(plan.proof).toEqual({ is: "best" });
  });
  test("20 ft; 50 of 3, 25 of 4, 15 of 8, 70 of 10 ft (data of a printed exercise, worked here): 53.5, so 54 logs", () => {
    const request = stockLengths(60, 20, [
      [3, 50],
      [4, 25],
      [8, 15],
      [10, 70],
    ]);
    expect(programmeBound(readOrder(request).job)).toBeCloseTo(53.5, 6);
    const plan = planOrder(request);
    expect(plan.total).toBeCloseTo(54, 6);
    expect(plan.proof).toEqual({ is: "best" });
  });
  test("rolls of 100; 97 of 45, 610 of 36, 395 of 31, 211 of 14 (Gilmore and Gomory 1961, data from a model text): 452.25", () => {
    const { job } = readOrder(
      stockLengths(1, 100, [
        [45, 97],
        [36, 610],
        [31, 395],
        [14, 211],
      ]),
    );
    const logs = Array.from({ length: 460 }, () => job.logs[0]!);
    expect(programmeBound({ ...job, logs, shortPrice: 1 + (1.01 * 460) / 14 })).toBeCloseTo(452.25, 6);
  });
});

test("orders of invented yards are filled, allowed, and the same every time", () => {
  for (const seed of [1, 4, 8]) {
    const request = inventedYard(seed, 12, 6, 0.25);
    const plan = planOrder(request);
    expect(faultsOf(request, plan)).toEqual([]);
    expect(plan.boardFeet.short).toBe(0);
    planOrder(inventedYard(2, 4, 3, 0.2));
    expect(planOrder(structuredClone(request))).toEqual(plan);
  }
});
