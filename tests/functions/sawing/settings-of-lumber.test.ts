import { describe, expect, it } from "vitest";
import { CUTYIELD } from "../../../src/functions/sawing";
import { one, type Cell } from "../sheet";
import { PLAIN, plan, PRICED, yieldOf } from "./planned";

describe("every setting of the lumber changes the plan, the way a sawyer expects", () => {
  it("rip, rip kerf: boards side by side give more, a wide kerf between them less again", () => {
    const widths = "4, 6";
    expect(yieldOf({ widths, rip: "yes" })).toBeGreaterThan(yieldOf({ widths }));
    expect(yieldOf({ widths, rip: "no" })).toBe(yieldOf({ widths }));
    expect(yieldOf({ widths, rip: "yes", "rip kerf": 0.5 })).toBeLessThan(yieldOf({ widths, rip: "yes" }));
    expect(yieldOf({ widths, rip: "yes", "rip kerf": 0.125 })).toBe(yieldOf({ widths, rip: "yes" }));
  });

  it("objective, pass cost: money for money, less what each board costs to saw", () => {
    expect(yieldOf({ objective: "value" }, "live", PRICED)).toBeCloseTo(3 * PLAIN, 9);
    const boards = plan({}, "live", PRICED).boards.length;
    const costly = yieldOf({ objective: "value", "pass cost": 1 }, "live", PRICED);
    expect(costly).toBeLessThan(3 * PLAIN);
    expect(costly).toBeGreaterThanOrEqual(3 * PLAIN - boards - 1e-9);
  });

  it("minimum, maximum width, width step: no board outside them, each a whole number of steps", () => {
    const limits = { "minimum width": 8, "maximum width": 14, "width step": 2 };
    const within = plan(limits).boards.map(({ width }) => width);
    expect(Math.min(...within)).toBe(8);
    expect(Math.max(...within)).toBe(14);
    for (const width of within) expect(width % 2).toBe(0);
    for (const [name, value] of Object.entries(limits)) expect(yieldOf({ [name]: value }), name).toBeLessThan(PLAIN);
  });

  it("widths, width allowance: only the widths listed, and fewer inches where they are sawn over", () => {
    expect(new Set(plan({ widths: "4, 8" }).boards.map(({ width }) => width))).toEqual(new Set([4, 8]));
    expect(yieldOf({ "width allowance": 0.5 })).toBeLessThan(PLAIN);
  });

  it("minimum length, length step, trim: no shorter board, whole steps, and the trim left on", () => {
    const lengths = (name: string, value: Cell) => plan({ [name]: value }).boards.map(({ length }) => length);
    expect(Math.min(...plan().boards.map(({ length }) => length))).toBeLessThan(8);
    expect(Math.min(...lengths("minimum length", 12))).toBe(12);
    for (const length of lengths("length step", 4)) expect(length % 4).toBe(0);
    expect(Math.max(...lengths("trim", 6))).toBe(11);
    for (const [name, value] of Object.entries({ "minimum length": 12, "length step": 8, trim: 6 }))
      expect(yieldOf({ [name]: value }), name).toBeLessThan(PLAIN);
  });

  it("wane: a quarter of the thickness allowed gives more", () => {
    expect(yieldOf({ wane: 0.25 })).toBeGreaterThan(PLAIN);
    expect(yieldOf({ wane: "25%" })).toBe(yieldOf({ wane: 0.25 }));
    expect(yieldOf({ wane: null })).toBe(PLAIN);
  });

  it("cant widths, cant offset: the best of the widths, no worse off the middle than in it", () => {
    const widths = (list: Cell) => yieldOf({ "cant widths": list }, "cant");
    expect(widths("6, 8")).toBe(Math.max(widths(6), widths(8)));
    const thirteen = (offset: string) =>
      CUTYIELD(one(13.3), one(10), one("4/4"), one(0.125), one("cant"), [
        ["cant widths", "6, 8"],
        ["cant offset", offset],
      ])[0]![0] as number;
    expect(thirteen("free")).toBeGreaterThan(thirteen("centred"));
  });

  it("ring angle, heart: straighter rings and a larger heart left out cost lumber; blank is 45 degrees, not any angle", () => {
    const quarter = yieldOf({}, "quarter");
    expect(yieldOf({ "ring angle": 60 }, "quarter")).toBeLessThan(quarter);
    expect(yieldOf({ "ring angle": 1 }, "quarter")).toBeGreaterThan(quarter);
    for (const blank of [null, "", 45]) expect(yieldOf({ "ring angle": blank }, "quarter")).toBe(quarter);
    expect(yieldOf({ heart: 4 }, "quarter")).toBeLessThan(quarter);
  });

  it("green size, price and from width of the products: thicker boards are fewer, dearer ones worth more", () => {
    expect(yieldOf({}, "live", [["4/4", 1.375]])).toBeLessThan(PLAIN);
    const wide = [...PRICED, ["4/4", 1.125, 6, 12]];
    expect(yieldOf({ objective: "value" }, "live", wide)).toBeGreaterThan(3 * PLAIN);
  });
});
