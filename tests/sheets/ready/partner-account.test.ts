import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { startEngine, type Engine } from "../../../src/engine/engine";
import type { Row } from "../../../src/sheets/definition";
import { calculated, typedOver } from "./calculated";

let engine: Engine;
beforeAll(async () => {
  engine = await startEngine();
});
afterAll(() => engine.stop());

const PARTNERS = { "First partner": "Ada", "Second partner": "Ben" };

describe("partner account", () => {
  const ROWS: readonly Row[] = [
    { What: "logs", Who: "Ada", "Paid out": 250 },
    { What: "blades", Who: "Ben", "Paid out": 100 },
    { What: "fuel", Who: "Ada", "Paid out": 50 },
    { What: "slab", Who: "Ada", "Came in": 700 },
    { What: "boards", Who: "Ben", "Came in": 300 },
  ];

  it("of 1000 each gets his 300 and 100 back, then 60 and 40 of the 600 that are left", async () => {
    const { figure, beside } = await calculated(engine, typedOver("Partner account", ROWS, PARTNERS));
    expect([figure("First laid out"), figure("Second laid out"), figure("Came in")]).toEqual([300, 100, 1000]);
    const [first, second] = [300 + 0.6 * 600, 100 + 0.4 * 600];
    expect([figure("First gets"), figure("Second gets")]).toEqual([first, second]);
    // 700 came in to the first, who hands 40 of it to the second.
    expect([figure("First still gets"), figure("Second still gets")]).toEqual([first - 700, second - 300]);
    expect(figure("First still gets")).toBe(-40);
    expect([beside(1, 4), beside(2, 4), beside(3, 4), beside(4, 4)]).toEqual(["gets", 660, 340, 1000]);
  });

  it("shares a loss too: 300 laid out and 100 come in are 100 less for each", async () => {
    const rows = [{ Who: "Ada", "Paid out": 300 } as Row, { Who: "Ben", "Came in": 100 } as Row];
    const shares = { "Share of the first": 1, "Share of the second": 1 };
    const { figure } = await calculated(engine, typedOver("Partner account", rows, { ...PARTNERS, ...shares }));
    expect([figure("First gets"), figure("Second gets")]).toEqual([300 - 100, -100]);
    expect([figure("First still gets"), figure("Second still gets")]).toEqual([200, -100 - 100]);
  });

  it("points at a row that is of neither partner", async () => {
    const rows: readonly Row[] = [...ROWS, { What: "stickers", Who: "Cid", "Paid out": 20 }];
    const { cell, figure } = await calculated(engine, typedOver("Partner account", rows, PARTNERS));
    expect([cell("Says", 5), cell("Says", 6)]).toEqual(["", "WHO? neither partner"]);
    expect(figure("Of neither")).toBe(1);
  });
});
