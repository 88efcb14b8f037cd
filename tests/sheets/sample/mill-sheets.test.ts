import { readFileSync } from "node:fs";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { CUTPLAN, FRACTION } from "../../../src/functions";
import { startEngine, type Engine, type OpenedWorkbook } from "../../../src/engine/engine";
import { MILL_LOGS } from "../../../src/sheets/sample/sheets/sawing/mill-sheets";
import { yardRows } from "../../../src/sheets/sample/yard/read";
import { SAMPLE } from "./parts";

let engine: Engine;
let sample: OpenedWorkbook;
beforeAll(async () => {
  engine = await startEngine();
  sample = await engine.open(readFileSync(SAMPLE));
});
afterAll(() => engine.stop());

/** The settings as they stand on the sheet: each names what it is, and its value stands beside it. */
const SETTINGS = { first: 15, last: 20 };
const FIRST_LINE = 24;
const inches = (text: unknown) => FRACTION([[text]], [[64]])[0]![0];

describe.each(Object.values(MILL_LOGS))("the mill sheet of log $log, sawn $pattern", ({ pattern, ...typed }) => {
  const sheet = `Mill sheet ${pattern}`;
  const at = (address: string) => sample.value(sheet, address);

  it("takes its log from the log book, both ends by the mean of two readings", () => {
    const log = yardRows("logs", ["Small 1", "Small 2", "Large 1", "Large 2"]).find(({ Log }) => Log === typed.log)!;
    const read = (text: unknown) =>
      String(text)
        .split(" ")
        .reduce(
          (sum, part) =>
            sum +
            part
              .split("/")
              .map(Number)
              .reduce((over, under) => over / under),
          0,
        );
    expect([log.Species, log.Length]).toEqual([typed.species, typed.length]);
    expect((read(log["Small 1"]) + read(log["Small 2"])) / 2).toBe(read(typed.smallEnd));
    expect((read(log["Large 1"]) + read(log["Large 2"])) / 2).toBe(read(typed.largeEnd));
    expect([at("B5"), at("B6"), at("B9"), at("B10"), at("B15")]).toEqual([
      ...[typed.log, typed.species, typed.smallEnd, typed.length, typed.largeEnd],
    ]);
  });

  it("lists every pass of the plan as the head's scale reads, warnings first, shim and turns where they happen", () => {
    const settings = Array.from({ length: SETTINGS.last - SETTINGS.first + 1 }, (_, i) => [
      ...[at(`A${SETTINGS.first + i}`), at(`B${SETTINGS.first + i}`)],
    ]);
    const plan = CUTPLAN([[typed.smallEnd]], [[typed.length]], [["4/4"]], [["1/8"]], [[pattern]], settings);
    const passes = plan.filter(([pass]) => typeof pass === "number");
    const warnings = plan.filter(([pass]) => pass === "warning");
    const shim = plan.find(([pass]) => pass === "shim")?.[1];
    expect(passes.length).toBeGreaterThan(12);
    expect(at("H9")).toBe("yes");
    warnings.forEach((warning, i) => {
      expect(at(`A${FIRST_LINE + i}`)).toBe("STOP");
      expect(at(`H${FIRST_LINE + i}`)).toBe(`WARNING: ${String(warning[9])}`);
    });
    passes.forEach(([pass, height, , width, length, , drop, board, , note], i) => {
      const line = FIRST_LINE + warnings.length + i;
      expect([at(`A${line}`), at(`B${line}`), at(`G${line}`)]).toEqual([inches(height), "\u2610", pass]);
      expect(String(at(`H${line}`)).endsWith(String(note))).toBe(true);
      expect([at(`D${line}`), at(`E${line}`), at(`F${line}`)]).toEqual(
        board === "" ? ["none", "none", "none"] : [inches(board), String(width), String(length)],
      );
      expect(at(`C${line}`)).toBe(drop !== "" ? inches(drop) : board === "" ? "none" : "from bed");
      if (pass === 1) expect(at(`H${line}`)).toBe(`raise the small end ${inches(shim)} in; ${String(note)}`);
      if (/^turn the log/.test(String(note))) expect(at(`H${line}`)).toMatch(/^shim out; /);
      if (/^turn the cant/.test(String(note))) expect(at(`H${line}`)).toMatch(/^raise the small end .* in again; /);
    });
    expect(at(`A${FIRST_LINE + warnings.length + passes.length}`)).toBe("");
  });
});
