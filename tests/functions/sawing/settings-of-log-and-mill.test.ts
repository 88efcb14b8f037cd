import { describe, expect, it } from "vitest";
import { CUTYIELD } from "../../../src/functions/sawing";
import { refused } from "../sheet";
import { log, PLAIN, plan, yieldOf } from "./planned";

describe("every setting of the log and the mill changes the plan, the way a sawyer expects", () => {
  it("first cut: the best is what the plan finds by itself, another gives less, and one over the log is refused", () => {
    const best = plan().passes[0]!.height;
    expect(yieldOf({ "first cut": best })).toBeCloseTo(PLAIN, 9);
    for (const off of [-2, -0.5, 0.5]) {
      const moved = plan({ "first cut": best + off });
      expect(moved.passes[0]!.height).toBe(best + off);
      expect(moved.notes).toMatch(/as set/);
      expect(yieldOf({ "first cut": best + off })).toBeLessThanOrEqual(PLAIN);
    }
    expect(yieldOf({ "first cut": best - 2 })).toBeLessThan(PLAIN);
    expect(yieldOf({ "first cut": best - 0.5 }, "slab")).toBeLessThanOrEqual(yieldOf({}, "slab"));
    expect(yieldOf({ "first cut": 0.5 })).toBe(0);
    expect(CUTYIELD(...log({ "first cut": 40 }))).toEqual([
      [refused("#N/A", /first cut \(in above the bed\): wanted 0 to 21\.5, got 40/)],
    ]);
    expect(plan({ "first cut": 10.01 }).notes).toMatch(/first cut .* whole number/);
    expect(plan({ "first cut": 10, "cant widths": 8 }, "cant").notes).toMatch(/not used.*first cut/);
  });

  it("small end across: a wider log gives more, a narrower less", () => {
    expect(yieldOf({ "small end across": 22 })).toBeGreaterThan(PLAIN);
    expect(yieldOf({ "small end across": 18 })).toBeLessThan(PLAIN);
  });

  it("taper: more of it gives more, and a blank is the usual half inch, not none", () => {
    expect(yieldOf({ taper: 1.5 })).toBeGreaterThan(PLAIN);
    expect(yieldOf({ taper: "0" })).toBeLessThan(PLAIN);
    for (const usual of [null, "", 0.5]) expect(yieldOf({ taper: usual })).toBe(PLAIN);
  });

  it("large end: the log is planned with its own taper, and beside a taper that says otherwise it is refused", () => {
    // 3 in of growth in 12 ft is 1 in in 4 ft
    expect(yieldOf({ "large end": 23 })).toBe(yieldOf({ taper: 1 }));
    expect(yieldOf({ "large end": 23, taper: 1 })).toBe(yieldOf({ taper: 1 }));
    expect(yieldOf({ "large end": 20 })).toBe(yieldOf({ taper: "none" }));
    expect(yieldOf({ "large end": "58.42 cm" })).toBeCloseTo(yieldOf({ taper: 1 }), 9);
    const refusal = (settings: object) => CUTYIELD(...log(settings as Record<string, number>));
    expect(refusal({ "large end": 23, taper: 0.5 })).toEqual([
      [refused("#N/A", /large end \(in\): wanted about 21\.5, as the taper makes it, got 23; give one of the two/)],
    ]);
    expect(refusal({ "large end": 19 })).toEqual([[refused("#N/A", /large end \(in\): wanted 20 or more, got 19/)]]);
    expect(refusal({ "large end": 57 })).toEqual([[refused("#N/A", /taper .*wanted 0 to 12, got 12\.3/)]]);
  });

  it("unit: heights and drops in millimetres, and nothing else changes", () => {
    const [inches, metric] = [{}, { unit: "mm" }].map((settings) => plan(settings).passes);
    expect(metric!.map(({ height }) => height)).toEqual(
      inches!.map(({ height }) => expect.closeTo(height * 25.4, 9) as number),
    );
    expect(metric!.map(({ width }) => width)).toEqual(inches!.map(({ width }) => width));
    expect(plan({ unit: "mm" }).notes).toMatch(/scale step from [\d.]+ to [\d.]+ gives|gives this total/);
    expect(plan({ unit: "mm" }).notes).toMatch(/millimetres to raise the small end/);
    expect(yieldOf({ unit: "mm" })).toBe(PLAIN);
  });

  it("a number 0 that could be a blank is refused where a blank means something else, and says both ways", () => {
    const zero = { taper: "0 in", "minimum width": "0 in", "minimum length": "0 ft", "ring angle": "0 deg" };
    for (const [name, asText] of Object.entries(zero)) {
      const asked = (value: number | string) => log({ [name]: value }, "quarter");
      expect(CUTYIELD(...asked(0)), name).toEqual([
        [refused("#VALUE!", new RegExp(`${name}: wanted "${asText}" for none, or nothing for [\\d.]+, got 0`))],
      ]);
      const none = CUTYIELD(...asked("none"))[0]![0];
      expect(none as number, name).toBeGreaterThan(0);
      for (const same of ["0", asText]) expect(CUTYIELD(...asked(same))[0]![0], name).toBe(none);
    }
    // on a 27 in log a ring angle of none gives 262 2/3 board feet, the usual 45 degrees 242 2/3
    const quarters = (value: string) =>
      CUTYIELD([[27]], [[10]], [["4/4"]], [[0.125]], [["quarter"]], [["ring angle", value]]);
    expect(quarters("0")[0]![0] as number).toBeGreaterThan(quarters("45")[0]![0] as number);
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
