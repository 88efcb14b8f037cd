import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { startEngine, type Engine } from "../../../src/engine/engine";
import { calculated, typedOver } from "./calculated";

let engine: Engine;
beforeAll(async () => {
  engine = await startEngine();
});
afterAll(() => engine.stop());

/** The documented example of LOGWEIGHT: 2,909 lb with bark by the high bound. */
const WALNUT = { Species: "black walnut", "Small end": "24", "Large end": "30", Length: "10" };
const AT_WORST = 2909;
const THREE_LOGS = [
  { ...WALNUT, Log: "A", Trip: 1 },
  { ...WALNUT, Log: "B", Trip: 1 },
  { ...WALNUT, Log: "C", Trip: 2 },
];
/** Half a pound: the example is printed to the pound. */
const near = (pounds: number, logs: number) => ({ min: pounds - 0.5 * logs, max: pounds + 0.5 * logs });

function expectWithin(answer: unknown, { min, max }: { min: number; max: number }) {
  expect(answer).toBeGreaterThanOrEqual(min);
  expect(answer).toBeLessThanOrEqual(max);
}

describe("trips and tie-downs", () => {
  it("two walnut logs of 2909 lb leave 3982 of 9800; each takes two chains at 10 ft", async () => {
    const { cell, figure, beside } = await calculated(engine, typedOver("Trips and tie-downs", THREE_LOGS));
    expect(figure("One tie-down holds")).toBe(6600);
    expect(figure("Payload")).toBe(14000 - 4200);
    expectWithin(figure("Left at worst"), near(14000 - 4200 - 2 * AT_WORST, 2));
    // 49 CFR 393.110: two for an article of more than 5 and up to 10 ft; half of 2909 lb is less than one chain holds.
    expect([cell("Tie-downs", 1), cell("Trip ties", 1), cell("Trip ties", 3)]).toEqual([2, 4, 2]);
    expect(figure("Tie-downs to take")).toBe(4);
    expect(figure("Not on a trip")).toBe(0);
    expect(cell("Verdict", 1)).toBe("under on paper: weigh");
    // All three are 8727 lb, which one trip of 9800 takes.
    expect([beside(2, 1), beside(2, 2), beside(3, 1)]).toEqual([1, "1, 2, 3", "total"]);
  });

  it("with a payload of 4800 lb two on a trip are over, and three trips are the fewest", async () => {
    const settings = { "Rating on the plate": 9000, "Limit on its tag": 700, "Cost of a trip": 90 };
    const { cell, figure, beside } = await calculated(engine, typedOver("Trips and tie-downs", THREE_LOGS, settings));
    expectWithin(figure("Left at worst"), near(4800 - 2 * AT_WORST, 2));
    expect([1, 2, 3].map((row) => cell("Verdict", row))).toEqual([
      "OVER: take one off",
      "OVER: take one off",
      "under on paper: weigh",
    ]);
    // The tag rules: half of 2909 lb over 700 lb is 2.08, so three.
    expect([figure("One tie-down holds"), cell("Tie-downs", 1)]).toEqual([700, 3]);
    expect([2, 3, 4, 5].map((row) => beside(row, 1))).toEqual([1, 2, 3, "total"]);
    expect([beside(7, 1), beside(7, 3)]).toEqual(["cost of your own trips", 3 * 90]);
  });

  it("counts the logs that have no trip yet, whole payload left", async () => {
    const { figure } = await calculated(engine, typedOver("Trips and tie-downs", [{ ...WALNUT, Log: "A" }]));
    expect([figure("Not on a trip"), figure("Left at worst"), figure("Tie-downs to take")]).toEqual([1, 9800, 0]);
  });
});
