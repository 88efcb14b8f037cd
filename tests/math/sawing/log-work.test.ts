import { describe, expect, it } from "vitest";
import { planCut } from "../../../src/math/sawing/cut-plan/plan-cut";
import { logHours, timesOf, turnsOf } from "../../../src/math/sawing/log-hours";
import { sawnFaceFt2 } from "../../../src/math/sawing/sawn-face";

const LOG = { diameterIn: 16, lengthFt: 8, products: [{ thickness: 1 }], kerfIn: 0.125 };
const NO_TAPER = { ...LOG, settings: { taper: 0 } };
const chordIn = (radius: number, height: number) => 2 * Math.sqrt(Math.max(0, radius ** 2 - (height - radius) ** 2));

describe("the square feet of face that a log's plan saws", () => {
  it.each(["live", "slab"] as const)("%s, without taper, are the chords of a circle times the length", (pattern) => {
    const request = { ...NO_TAPER, pattern };
    const { passes } = planCut(request);
    expect(passes.length).toBeGreaterThan(8);
    const chords = passes.reduce((sum, { bladeHeightIn }) => sum + chordIn(8, bladeHeightIn), 0);
    expect(sawnFaceFt2(request)).toBeCloseTo((chords / 12) * 8, 9);
  });

  it("of one cut through the pith of a log without taper are its diameter times its length", () => {
    // A first cut at the pith, and boards too thick for what is left: 16 in by 8 ft
    const request = { ...LOG, products: [{ thickness: 7 }], settings: { taper: 0, "first cut": 8 } };
    const { passes } = planCut(request);
    expect(passes.map(({ bladeHeightIn }) => bladeHeightIn)).toEqual([8, 0.75]);
    expect(sawnFaceFt2(request)).toBeCloseTo((16 / 12) * 8 + (chordIn(8, 0.75) / 12) * 8, 9);
  });

  it("of a cant are chords down to it from both sides, and no wider than the cant once it is turned", () => {
    const request = { ...LOG, pattern: "cant" as const, settings: { taper: 0, "cant widths": [8] } };
    const { passes } = planCut(request);
    let lies: "as it lay" | "over" | "turned" = "as it lay";
    let inches = 0;
    for (const { turn, bladeHeightIn } of passes) {
      if (turn === "log over") lies = "over";
      if (turn === "cant a quarter") lies = "turned";
      // The cant of 8 in lies from 4 to 12 in; turned over, its upper face is on the bed
      if (lies === "as it lay") inches += chordIn(8, bladeHeightIn);
      if (lies === "over") inches += chordIn(8, 12 - bladeHeightIn);
      if (lies === "turned") inches += Math.min(8, chordIn(8, bladeHeightIn));
    }
    expect(lies).toBe("turned");
    expect(sawnFaceFt2(request)).toBeCloseTo((inches / 12) * 8, 9);
  });

  it("with taper lie between those of a log as thick as either end, and go with the length", () => {
    const request = { ...LOG, settings: { "first cut": 14 } };
    const { passes } = planCut(request);
    const pith = 8.5;
    const along = (radius: number) =>
      passes.reduce((sum, { bladeHeightIn }) => {
        const off = bladeHeightIn - pith;
        return sum + 2 * Math.sqrt(Math.max(0, radius ** 2 - off ** 2));
      }, 0);
    expect(sawnFaceFt2(request)).toBeGreaterThan((along(8) / 12) * 8);
    expect(sawnFaceFt2(request)).toBeLessThan((along(8.5) / 12) * 8);
  });

  it("are not counted for quarters and bowed logs, and none where there is no board", () => {
    expect(() => sawnFaceFt2({ ...LOG, pattern: "quarter" })).toThrow(
      "pattern: wanted live, slab or cant, got quarter",
    );
    expect(() => sawnFaceFt2({ ...LOG, settings: { sweep: 1 } })).toThrow("sweep (in): wanted a straight log, got 1");
    expect(sawnFaceFt2({ ...LOG, diameterIn: 2 })).toBe(0);
  });
});

describe("the hours at the mill for a log", () => {
  const WORK = { feedFpm: 30, handlingMin: 1, turningMin: 5 };
  it("are its passes and turns by hand", () => {
    // 13 passes of 8 ft at 30 ft/min and a minute each, nothing turned
    expect(planCut(LOG).passes.length).toBe(13);
    expect(logHours({ ...LOG, ...WORK })).toBeCloseTo((13 * (8 / 30 + 1)) / 60, 12);
    // A cant is turned twice
    const cant = { ...LOG, pattern: "cant" as const, settings: { "cant widths": [8] } };
    const { length } = planCut(cant).passes;
    expect(logHours({ ...cant, ...WORK })).toBeCloseTo((length * (8 / 30 + 1) + 10) / 60, 12);
  });

  it("count both halves and all four quarters of a quarter-sawn log", () => {
    const quarter = { ...LOG, diameterIn: 22, pattern: "quarter" as const, settings: { "scale step": 1 / 16 } };
    const { passes } = planCut(quarter);
    const boards = passes.filter(({ task }) => task?.kind === "quarter board");
    const times = passes.reduce((sum, pass) => sum + timesOf(pass), 0);
    expect(times).toBe(1 + 2 + 4 * boards.length);
    const faces = boards.map(({ task }) => (task?.kind === "quarter board" ? task.face : "")).join("");
    const changes = faces.replace(/(.)\1*/g, "$1").length;
    expect(turnsOf({ passes })).toBe(2 + 4 * changes);
    expect(logHours({ ...quarter, ...WORK })).toBeCloseTo((times * (8 / 30 + 1) + (2 + 4 * changes) * 5) / 60, 12);
  });

  it("are none for a log without a board, and have no answer without a feed or with minutes below 0", () => {
    expect(logHours({ ...LOG, ...WORK, diameterIn: 2 })).toBe(0);
    expect(() => logHours({ ...LOG, ...WORK, feedFpm: 0 })).toThrow("feed (ft/min): wanted more than 0");
    expect(() => logHours({ ...LOG, ...WORK, turningMin: -1 })).toThrow("turning (min): wanted 0 or more");
  });
});
