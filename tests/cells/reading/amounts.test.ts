import { describe, expect, it } from "vitest";
import * as read from "../../../src/cells/read";
import { readOne, refused } from "./ask";

describe("other amounts", () => {
  it.each([
    [read.pounds, "18 kg", 39.68320719],
    [read.pounds, "1.2 t", 2645.547146],
    [read.pounds, "1 tonne", 2204.622622],
    [read.pounds, "40 LBS.", 40],
    [read.pounds, "30 oz", 1.875],
    [read.pounds, "1 ounce", 0.0625],
    [read.pounds, "850 g", 1.873929229],
    [read.pounds, "2 kilograms", 4.409245244],
    [read.fahrenheit, "20 Celsius", 68],
    [read.pounds, "1 pound", 1],
    [read.percent, "65 percent", 65],
    [read.fahrenheit, "20ºC", 68],
    [read.fahrenheit, "20 deg C", 68],
    [read.poundsForce, "2500 lbs", 2500],
    [read.poundsForce, "11 KN", 2472.898374],
    [read.poundsForce, "1134 kg", 2500.042053],
    [read.poundsForce, "1134 kgf", 2500.042053],
    [read.psi, "100 Mpa", 14503.773773],
    [read.horsepower, "15 KW", 20.115331343],
    [read.horsepower, "1 1/2 hp", 1.5],
    [read.degrees, "60 deg.", 60],
    [read.moisture, 0.12, 12],
    [read.moisture, 1.2, 120],
    [read.moisture, 12, 12],
    [read.moisture, 3, 300],
    [read.moisture, "12%", 12],
    [read.moisture, "0.12", 12],
    [read.percent, 0.65, 65],
    [read.percent, 1, 100],
    [read.percent, 65, 65],
    [read.percent, "65 %", 65],
    [read.fahrenheit, "20 C", 68],
    [read.fahrenheit, "-40 °C", -40],
    [read.fahrenheit, -10, -10],
    [read.fahrenheit, "68 F", 68],
    [read.feetPerMinute, "25 m/s", 4921.259843],
    [read.feetPerMinute, "60 ft/min", 60],
    [read.poundsForce, "11 kN", 2472.898374],
    [read.psi, "100 MPa", 14503.773773],
    [read.horsepower, "15 kW", 20.115331343],
    [read.count, "4", 4],
    [read.number, "12%", 0.12],
  ] as const)("%o reads %j as %d", (reader, cell, amount) =>
    expect(readOne(reader, cell) as number).toBeCloseTo(amount, 6),
  );
  it.each([
    [read.pounds, "12 stone"],
    [read.count, 1.5],
    [read.money, "$5"],
    [read.percent, -1],
    [read.number, "1,000"],
    [read.feetPerMinute, true],
    [read.fahrenheit, "warm"],
    [read.money, 1e300],
    [read.pounds, "5 constructor"],
    [read.pounds, "1 ton"],
  ] as const)("%o refuses %j", (reader, cell) => void refused(reader, cell));
  it("reads a share as its percent to the last digit a sheet shows", () => {
    expect(readOne(read.percent, 0.07)).toBe(7);
    expect(readOne(read.percent, 0.29)).toBe(29);
    expect(readOne(read.moisture, 0.28)).toBe(28);
  });
  it("reads a sum of shares that comes out a hair over the whole as the whole, not as 1 percent", () =>
    expect(readOne(read.percent, 1 + 2 * Number.EPSILON)).toBe(100));
  it("says what is wanted in one breath", () => {
    expect(refused(read.pounds, -5)).toBe(
      "size: wanted pounds above 0, such as 40, 40 lb, 18 kg, 850 g or 1.2 t (metric), got -5",
    );
    expect(refused(read.inches, -3)).toBe("size: wanted inches above 0, such as 14.5, 14 1/2, 5/4 or 36 cm, got -3");
    expect(refused(read.money, "$5")).toBe(
      'size: wanted an amount of money, such as 12.50, without its sign, got "$5"',
    );
  });
});
