import { expect, test } from "vitest";
import { planOrder } from "../../../../src/math/sawing/order-plan/order-plan";
import type { OrderRequest } from "../../../../src/math/sawing/order-plan/order-request";
import { leastTotal } from "./brute-force";
import { faultsOf } from "./check-plan";
import { numbersFrom } from "./yards";

const SMALL_ORDERS = 240;

/** Small enough that everything can be tried: a coarse scale, short logs, one to three lines. */
function smallOrder(seed: number): OrderRequest {
  const next = numbersFrom(seed);
  const oneOf = <T>(all: readonly T[]): T => all[Math.floor(next() * all.length)]!;
  const logs = Array.from({ length: oneOf([1, 2, 3, 4]) }, (_, at) => ({
    row: at + 1,
    diameter: oneOf([6, 7, 7.5, 8, 9, 10]),
    length: oneOf([4, 6, 8]) + 1 / 3,
    cost: oneOf([10, 15, 21, 30]),
    ...(next() < 0.3 && { "large end": 11 }),
  }));
  const order = Array.from({ length: oneOf([1, 2, 2, 3]) }, (_, at) => ({
    row: at + 1,
    thickness: oneOf([1, 1, 2]),
    width: oneOf([3, 4, 5, 6]),
    length: oneOf([2, 4, 4, 6]),
    count: at > 0 && next() < 0.15 ? ("stock" as const) : oneOf([1, 2, 3, 4, 6]),
  }));
  const settings = { "scale step": 1 / 8, trim: oneOf([0, 1, 2]), "crosscut kerf": oneOf([0, 1 / 8, 1 / 4]) };
  return {
    order,
    logs,
    kerfIn: oneOf([1 / 8, 1 / 4]),
    settings: { ...settings, least: oneOf(["wood", "cost"] as const) },
  };
}

test(`of ${SMALL_ORDERS} small orders every plan is allowed, no bound is over the least total, and nearly all are best`, () => {
  let best = 0;
  for (let seed = 1; seed <= SMALL_ORDERS; seed++) {
    const request = smallOrder(seed);
    const plan = planOrder(request);
    const least = leastTotal(request);
    expect(faultsOf(request, plan), `order ${seed}`).toEqual([]);
    expect(plan.total, `order ${seed}`).toBeGreaterThan(least - 1e-6);
    expect(plan.bound, `order ${seed}`).toBeLessThan(least + 1e-6);
    if (plan.total < least + 1e-6) best++;
  }
  expect(best).toBeGreaterThanOrEqual(Math.ceil(0.97 * SMALL_ORDERS));
}, 120_000);
