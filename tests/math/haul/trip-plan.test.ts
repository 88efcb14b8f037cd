import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { tripPlan } from "../../../src/math/haul/trip-plan";

/** Fewest trips by trying every log on every trip, and on one more: no bound, no order, no short cut. */
function byTryingAll(weights: readonly number[], payload: number): number {
  let fewest = weights.length;
  const loads: number[] = [];
  const place = (at: number) => {
    if (loads.length > fewest) return;
    if (at === weights.length) return void (fewest = Math.min(fewest, loads.length));
    for (let trip = 0; trip < loads.length; trip++) {
      if (loads[trip]! + weights[at]! > payload) continue;
      loads[trip]! += weights[at]!;
      place(at + 1);
      loads[trip]! -= weights[at]!;
    }
    loads.push(weights[at]!);
    place(at + 1);
    loads.pop();
  };
  place(0);
  return fewest;
}

const isWhole = (weightsLb: readonly number[], payloadLb: number) => {
  const { trips, fewest } = tripPlan({ weightsLb, payloadLb });
  expect(trips.flatMap(({ logs }) => logs).sort((a, b) => a - b)).toEqual(weightsLb.map((_, at) => at));
  for (const { logs, weightLb } of trips) {
    expect(weightLb).toBeCloseTo(
      logs.reduce((sum, log) => sum + weightsLb[log]!, 0),
      6,
    );
    expect(weightLb).toBeLessThanOrEqual(payloadLb + 1e-6);
  }
  expect(fewest).toBeLessThanOrEqual(trips.length);
  return { trips, fewest };
};

describe("the trips of a haul", () => {
  it("are the fewest by every way of loading, on 400 small hauls", () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 1, max: 50 }), { minLength: 1, maxLength: 8 }),
        fc.integer({ min: 50, max: 90 }),
        (weights, payload) => {
          const { trips, fewest } = isWhole(weights, payload);
          expect(trips.length).toBe(byTryingAll(weights, payload));
          expect(fewest).toBe(trips.length);
        },
      ),
      { seed: 7, numRuns: 400 },
    );
  });

  it("are two where loading the heaviest first takes three", () => {
    // 6 + 4 + 2 and 5 + 4 + 3 fill 12 twice; the heaviest first on the fullest trip gives 6 + 5, 4 + 4 + 3, 2
    const { trips } = isWhole([6, 5, 4, 4, 3, 2], 12);
    expect(trips.map(({ weightLb }) => weightLb)).toEqual([12, 12]);
  });

  it("are proven for most hauls of 40 logs, and for all of them no fewer than the bound", () => {
    let seed = 1;
    const next = () => (seed = (seed * 48271) % 2147483647) / 2147483647;
    let proven = 0;
    for (let haul = 0; haul < 50; haul++) {
      const weights = Array.from({ length: 40 }, () => Math.round(400 + 3600 * next()));
      const { trips, fewest } = isWhole(weights, 9800);
      expect(fewest).toBeGreaterThanOrEqual(Math.ceil(weights.reduce((sum, weight) => sum + weight, 0) / 9800));
      if (trips.length === fewest) proven++;
    }
    expect(proven).toBeGreaterThanOrEqual(45);
  });

  it("are one for a log of just the payload, and none for a log over it", () => {
    expect(tripPlan({ weightsLb: [5000], payloadLb: 5000 }).trips).toEqual([{ logs: [0], weightLb: 5000 }]);
    expect(() => tripPlan({ weightsLb: [100, 5001], payloadLb: 5000 })).toThrow(
      "weight of log 2 (lb): wanted up to the payload, 5000, got 5001",
    );
    expect(() => tripPlan({ weightsLb: [], payloadLb: 5000 })).toThrow("number of logs: wanted 1 to 500, got 0");
    expect(() => tripPlan({ weightsLb: [1], payloadLb: 0 })).toThrow("payload (lb): wanted more than 0");
  });
});
