import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { TOUNIT } from "../../../src/functions";
import { inUnit } from "../../../src/math/boards/to-unit";
import { TRADE_UNITS } from "../../../src/math/unit-kinds";

const one = (amount: unknown, from: string, to: string) => TOUNIT([[amount]], [[from]], [[to]])[0]![0];

describe("units of the trade", () => {
  /** As printed: FAO document T0269E, Appendix II; a stack counts there with its air, so cord and stere go to each other. */
  it.each([
    ["in", "cm", "2.540"],
    ["m", "ft", "3.281"],
    ["yd", "m", "0.9144"],
    ["m2", "ft2", "10.76"],
    ["ft2", "m2", "0.0929"],
    ["m3", "ft3", "35.31"],
    ["ft3", "m3", "0.02832"],
    ["hoppus ft", "m3", "0.03605"],
    ["hoppus ft", "ft3", "1.273"],
    ["cord", "stere", "3.625"],
    ["thousand board feet", "m3", "2.36"],
    ["thousand board feet", "ft3", "83.33"],
    ["m3", "thousand board feet", "0.424"],
    ["kg", "lb", "2.205"],
    ["lb", "kg", "0.4536"],
    ["t", "short ton", "1.102"],
    ["short ton", "t", "0.9072"],
  ])("a %s is so many %s as FAO prints it: %s", (from, to, printed) => {
    const halfDigit = 0.5 * 10 ** -(printed.split(".")[1]?.length ?? 0);
    expect(Math.abs((one(1, from, to) as number) - Number(printed))).toBeLessThanOrEqual(halfDigit * 1.000001);
  });

  it("a cunit is 2.83168 m3, whose last digit is cut off where FAO prints 2.8316", () => {
    expect(Math.floor((one(1, "cunit", "m3") as number) * 1e4) / 1e4).toBe(2.8316);
  });

  it("makes the price of a small unit small: 850 a thousand board feet are 0.85 a board foot", () => {
    expect(one(850, "per thousand board feet", "per board feet")).toBeCloseTo(0.85, 12);
    expect(one(2, "per lb", "per kg")).toBeCloseTo(2 / 0.45359237, 12);
    expect(one(12, "/sq ft", "per m²")).toBeCloseTo(12 / 0.3048 ** 2, 9);
  });

  it("answers the examples of its page to the last digit", () => {
    expect(one(1, "thousand board feet", "m3")).toBe(2.3597372159999996);
    expect(one(850, "per thousand board feet", "per m3")).toBe(360.2096005591837);
    expect(one(5, "hp", "kW")).toBe(3.7284993579113515);
  });

  it("turns temperatures by their rule, and asks back at 0, which may be a blank", () => {
    expect([one(212, "F", "C"), one(-40, "°C", "°F"), one(20, "celsius", "fahrenheit")]).toEqual([100, -40, 68]);
    expect(one(0, "C", "F")).toMatchObject({ error: "#N/A", message: expect.stringContaining("32 °F") });
    expect(one(0, "bf", "m3")).toBe(0);
  });

  it("goes there and back between all units of a kind, and refuses all others in words", () => {
    const names = Object.keys(TRADE_UNITS);
    const alike = (from: string, to: string) =>
      TRADE_UNITS[from]!.kind === TRADE_UNITS[to]!.kind && TRADE_UNITS[from]!.isPrice === TRADE_UNITS[to]!.isPrice;
    fc.assert(
      fc.property(
        fc.constantFrom(...names),
        fc.constantFrom(...names),
        fc.double({ min: 0.01, max: 1e6, noNaN: true }),
        (from, to, amount) => {
          if (!alike(from, to)) return void expect(() => inUnit({ amount, from, to })).toThrow("two of one kind");
          const there = inUnit({ amount, from, to });
          if (there !== 0) expect(inUnit({ amount: there, from: to, to: from }) / amount).toBeCloseTo(1, 9);
        },
      ),
    );
  });

  it("has each spelling once, so that none means two things", () => {
    const all = Object.entries(TRADE_UNITS).flatMap(([name, { also }]) => [name.toLowerCase(), ...also]);
    expect(all.filter((spelling, at) => all.indexOf(spelling) !== at)).toEqual([]);
  });

  it("says what is wrong: a ton, which may be either, and an amount that is none", () => {
    expect(one(1, "ton", "kg")).toMatchObject({ error: "#VALUE!", message: expect.stringContaining("short ton") });
    expect(one("much", "lb", "kg")).toMatchObject({
      error: "#VALUE!",
      message: expect.stringContaining("amount: wanted a number"),
    });
  });
});
