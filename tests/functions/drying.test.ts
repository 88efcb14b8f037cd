import { describe, expect, it } from "vitest";
import { readCatalog } from "../../src/catalog/read-catalog";
import {
  AIRDRYDAYS,
  DRYFORECAST,
  DRYRATE,
  EMC,
  EMCHUMIDITY,
  KILNDAYS,
  MOISTURE,
  WATERTOLOSE,
} from "../../src/functions/drying";
import { column, messageOf, one } from "./sheet";

describe("air typed into the sheet", () => {
  it("is the same in Fahrenheit and Celsius, as 65, 65% and 0.65", () => {
    const humid = Number(EMC(one(68), one(65))[0]![0]);
    expect(EMC(one("20 C"), one("65%"))[0]![0]).toBeCloseTo(humid, 10);
    expect(EMC(one("20 °C"), one(0.65))[0]![0]).toBeCloseTo(humid, 10);
  });

  it.each([100, 101, "100%", 1])("of humidity %s has no answer", (humidity) => {
    expect(EMC(one(70), one(humidity))[0]![0]).toMatchObject({ error: "#N/A" });
  });

  it("colder or hotter than the equation's range has no answer, and the message says both limits", () => {
    expect(messageOf(EMC(one(-10), one(50)))).toContain("wanted 30 to 210, got -10");
    expect(messageOf(EMC(one(300), one(50)))).toContain("wanted 30 to 210, got 300");
  });

  it("for a moisture gives that moisture back", () => {
    const humidity = EMCHUMIDITY(one(70), one(8));
    expect(Number(EMC(one(70), humidity)[0]![0]) / 8).toBeCloseTo(1, 10);
  });
});

describe("a target", () => {
  it("at or under the equilibrium moisture has no answer, and the message gives it", () => {
    const answer = AIRDRYDAYS(one("black cherry"), one("4/4"), one(null), one(8));
    expect(answer[0]![0]).toMatchObject({ error: "#N/A" });
    expect(messageOf(answer)).toContain("dries wood to 12.0 and no further, got 8");
    expect(messageOf(KILNDAYS(one("red oak"), one(1), one(60), one(4), one(120), one(50)))).toContain("no further");
    expect(messageOf(DRYFORECAST(column(0, 30), column(60, 40), one(12), one(10)))).toContain("dries wood to 12");
  });
});

describe("readings typed into the sheet", () => {
  const days = column(0, 20, 45, null, null);
  const readings = column(62, "45%", 0.3, null, null);

  it("leave the rows not yet filled alone", () => {
    expect(DRYRATE(days, readings, one(11))[5]).toEqual(["readings used", 3, ""]);
  });

  it("with a day but no reading yet are refused with the row", () => {
    const answer = DRYRATE(column(0, 20, 45), column(62, 45, null), one(11));
    expect(answer[0]![0]).toMatchObject({ error: "#VALUE!" });
    expect(messageOf(answer)).toContain("row 3");
  });

  it("out of order or on one day have no answer", () => {
    expect(messageOf(DRYRATE(column(0, 45, 20), column(62, 40, 45), one(11)))).toContain("got 20 after 45");
    expect(messageOf(DRYRATE(column(5, 5), column(62, 40), one(11)))).toContain("got 5 after 5");
  });

  it("that rise contradict drying, and it says so", () => {
    expect(messageOf(DRYRATE(column(0, 20), column(40, 62), one(11)))).toContain("do not fall toward 11 %");
  });
});

describe("the pages that fit a curve to readings", () => {
  it.each(["DRYRATE", "DRYFORECAST"])("%s says how far a pin meter can be believed", (name) => {
    const { remarks } = readCatalog().find((entry) => entry.name === name)!;
    expect(remarks.join(" ")).toMatch(/pin meter does not read true above about 25 to 30 %/);
  });
});

describe("weights typed into the sheet", () => {
  it("swapped have no answer", () => {
    expect(messageOf(MOISTURE(one(20), one(30)))).toContain("not under the dry weight");
  });

  it("of water are refused where there is none to lose", () => {
    expect(WATERTOLOSE(one("black cherry"), one(100), one(8), one(12))[0]![0]).toMatchObject({ error: "#N/A" });
  });

  it("in kilograms and pounds give one moisture", () => {
    expect(Number(MOISTURE(one("3 kg"), one("2 kg"))[0]![0])).toBeCloseTo(50, 9);
  });
});
