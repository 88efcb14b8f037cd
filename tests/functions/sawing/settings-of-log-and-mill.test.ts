import { describe, expect, it } from "vitest";
import { CUTYIELD } from "../../../src/functions/sawing";
import { refused } from "../sheet";
import { log, PLAIN, plan, yieldOf } from "./planned";

describe("every setting of the log and the mill changes the plan, the way a sawyer expects", () => {
  it("opening face: the best is what the plan finds by itself, another gives less, and one over the log is refused", () => {
    const best = plan().passes[0]!.height;
    expect(yieldOf({ "opening face": best })).toBeCloseTo(PLAIN, 9);
    for (const off of [-2, -0.5, 0.5]) {
      const moved = plan({ "opening face": best + off });
      expect(moved.passes[0]!.height).toBe(best + off);
      expect(moved.notes).toMatch(/as set/);
      expect(yieldOf({ "opening face": best + off })).toBeLessThanOrEqual(PLAIN);
    }
    expect(yieldOf({ "opening face": best - 2 })).toBeLessThan(PLAIN);
    expect(yieldOf({ "opening face": best - 0.5 }, "slab")).toBeLessThanOrEqual(yieldOf({}, "slab"));
    expect(yieldOf({ "opening face": 0.5 })).toBe(0);
    expect(CUTYIELD(...log({ "opening face": 40 }))).toEqual([
      [refused("#N/A", /opening face \(in above the bed\): wanted 0 to 21\.5, got 40/)],
    ]);
    expect(plan({ "opening face": 10.01 }).notes).toMatch(/opening face .* whole number/);
    expect(plan({ "opening face": 10, "cant widths": 8 }, "cant").notes).toMatch(/not used.*opening face/);
  });

  it("small end across: a wider log gives more, a narrower less", () => {
    expect(yieldOf({ "small end across": 22 })).toBeGreaterThan(PLAIN);
    expect(yieldOf({ "small end across": 18 })).toBeLessThan(PLAIN);
  });

  it("taper: more of it gives more, and blank is none, not the usual half inch", () => {
    expect(yieldOf({ taper: 1.5 })).toBeGreaterThan(PLAIN);
    expect(yieldOf({ taper: 0 })).toBeLessThan(PLAIN);
    expect(yieldOf({ taper: null })).toBe(yieldOf({ taper: "0" }));
    expect(yieldOf({ taper: 0.5 })).toBe(PLAIN);
  });

  it("log lies: flat on the bed the log keeps its lowest boards whole, and needs no shim", () => {
    const lowest = (lies: string) => plan({ taper: 1.5, "log lies": lies }).boards.at(-1)!.length;
    expect(lowest("flat")).toBe(12);
    expect(lowest("split")).toBeLessThan(12);
    expect(yieldOf({ taper: 1.5, "log lies": "split" })).toBe(yieldOf({ taper: 1.5 }));
  });

  it("sweep and crown: a bow costs lumber, and another way up costs another amount", () => {
    const ways = ["up", "down", "side"].map((way) => yieldOf({ sweep: 2, crown: way }));
    for (const bowed of ways) expect(bowed).toBeLessThan(PLAIN);
    expect(new Set(ways).size).toBe(3);
    expect(yieldOf({ sweep: 2 })).toBe(ways[0]);
  });

  it("scale step: on a coarse scale the kerf is rounded up to it, and every height is a whole step", () => {
    expect(yieldOf({ "scale step": 0.25 })).toBeLessThan(PLAIN);
    const { passes, notes } = plan({ "scale step": 0.25 });
    for (const { height } of passes) expect(height % 0.25).toBe(0);
    expect(notes).toMatch(/kerf 1\/8 in is no whole number of 1\/4 in scale steps/);
  });

  it("bed clearance: the blade stays above it", () => {
    const heights = plan({ "bed clearance": 3 }).passes.map(({ height }) => height);
    expect(Math.min(...heights)).toBeGreaterThanOrEqual(3);
    expect(Math.min(...plan().passes.map(({ height }) => height))).toBeLessThan(1);
  });

  it("guide opening: no board is wider than it", () => {
    const widths = plan({ "guide opening": 16 }).boards.map(({ width }) => width);
    expect(Math.max(...widths)).toBe(16);
    expect(yieldOf({ "guide opening": 16 })).toBeLessThan(PLAIN);
  });
});
