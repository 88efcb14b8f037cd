import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { startEngine, type Engine } from "../../../src/engine/engine";
import type { Row } from "../../../src/sheets/definition";
import { serialOf } from "../../../src/xlsx/serial";
import { calculated, typedOver } from "./calculated";

let engine: Engine;
beforeAll(async () => {
  engine = await startEngine();
});
afterAll(() => engine.stop());

const june = (date: number) => new Date(Date.UTC(2025, 5, date));

describe("blade log", () => {
  /** The documented example of SAWNFACE: 114.25 ft2 in 4/4 with a kerf of 1/8 in. */
  const LOG = { "Small end": "16", Length: "8" };
  const FACE = 114.25;
  const ROWS: readonly Row[] = [
    { Blade: "1", Fresh: "yes", ...LOG },
    { Blade: "2", "Own count": 90 },
    { Blade: "1", ...LOG, Pattern: "live" },
    { Blade: "1", Fresh: "yes", "Own count": 30 },
    { Blade: "2", "Own count": 110.5 },
  ];

  it("counts the face of each blade since it last went on fresh", async () => {
    const { cell, figure } = await calculated(engine, typedOver("Blade log", ROWS, { "Face a sharpening": 200 }));
    const since = [FACE, 90, 2 * FACE, 30, 90 + 110.5];
    since.forEach((feet, at) => expect(cell("Since fresh", at + 1)).toBeCloseTo(feet, 1));
    expect(cell("Left", 3)).toBeCloseTo(200 - 2 * FACE, 1);
    // Only where a blade stands last is there a verdict: blade 1 is sharp again, blade 2 has done 200.5 of 200.
    expect([1, 2, 3, 4, 5].map((row) => cell("Verdict", row))).toEqual(["", "", "", "saws on", "OVER: sharpen it"]);
    expect(figure("To sharpen now")).toBe(1);
    expect(figure("Yours reach")).toBeCloseTo((2 * FACE + 90 + 30 + 110.5) / 2, 1);
  });

  it("a blade that would not last for one more such log says so", async () => {
    const { cell } = await calculated(engine, typedOver("Blade log", ROWS.slice(0, 1), { "Face a sharpening": 200 }));
    expect(cell("Verdict", 1)).toBe("not one more like it");
  });

  it("30 for a blade and 5 sharpenings at 8 are 0.0292 a foot over 6 times 400, as BLADECOST's example says", async () => {
    const settings = { "Price of a blade": 30, Sharpenings: 5, "A sharpening costs": 8, "Face a sharpening": 400 };
    const { cell, figure } = await calculated(engine, typedOver("Blade log", ROWS, settings));
    const aFoot = (30 + 5 * 8) / (6 * 400);
    expect(figure("Cost of a foot")).toBeCloseTo(aFoot, 12);
    expect(cell("Cost", 2)).toBeCloseTo(90 * aFoot, 12);
    expect(figure("Blades cost so far")).toBeCloseTo((2 * FACE + 90 + 30 + 110.5) * aFoot, 2);
  });
});

describe("drying log", () => {
  const AIR = { "Stack to forecast": "D2", "Dry to %": 14, Temperature: "70", Humidity: "65%" };
  const ROWS: readonly Row[] = [
    { Day: june(1), Stack: "D2", Reading: 20, "Wood temp": "70" },
    { Day: june(3), Stack: "D1", Reading: 12, "Wood temp": "95" },
    { Day: june(11), Stack: "D2", Reading: 17, "Wood temp": "50" },
    { Day: june(13), Stack: "D1", Reading: 28 },
  ];

  it("sets each reading right by a point for every 20 F from 70, and leaves one without a temperature", async () => {
    const { cell, figure } = await calculated(engine, typedOver("Drying log", ROWS, AIR));
    expect([1, 2, 3, 4].map((row) => cell("Corrected", row))).toEqual([20, 10.75, 18, 28]);
    expect(cell("To go", 2)).toBeCloseTo(10.75 - 14, 12);
    expect([figure("Latest reading"), figure("Moisture then")]).toEqual([serialOf(june(11)), 18]);
    expect(figure("Left to target")).toBe(18 - 14);
  });

  it("forecasts the stack that is named by the curve through its readings", async () => {
    const { figure } = await calculated(engine, typedOver("Drying log", ROWS, AIR));
    const air = Number(figure("Air dries to %"));
    // The documented example of EMC: 12.0 at 70 F and 65 %.
    expect(air).toBeCloseTo(12, 1);
    // The excess over what the air holds shrinks by the same share every day: from 20 to 18 in ten days, then to 14.
    const days = (10 * Math.log((20 - air) / (14 - air))) / Math.log((20 - air) / (18 - air));
    expect(figure("Ready on")).toBeCloseTo(serialOf(june(1)) + days, 6);
    expect(figure("Days to wait")).toBeCloseTo(days - 10, 6);
    expect(figure("At the earliest")).toBe("not known from two readings");
  });

  it("says what it lacks for a stack without readings", async () => {
    const { figure } = await calculated(engine, typedOver("Drying log", ROWS, { ...AIR, "Stack to forecast": "D9" }));
    expect([figure("Moisture then"), figure("Ready on")]).toEqual(["no reading yet", "two readings are the least"]);
  });
});
