import { describe, expect, it } from "vitest";
import * as logs from "../../src/functions/logs";
import { column, messageOf, one, refused } from "./sheet";

describe("LOGSCALE", () => {
  it("spills down a column of logs, a blank row scaling 0 and a bad row keeping its own error", () => {
    const diameters = [[20], [""], [3], ["36 cm"]];
    const lengths = [[12], [""], [12], ["2.4 m"]];
    const answers = logs.LOGSCALE(diameters, lengths, one("doyle")).flat();
    expect(answers[0]).toBe(192);
    expect(answers[1]).toBe(0);
    expect(answers[2]).toMatchObject({ error: "#N/A", message: "Doyle diameter (in): wanted 4 to 300, got 3" });
    expect(answers[3]).toBeCloseTo(((36 / 2.54 - 4) / 4) ** 2 * (2.4 / 0.3048), 6);
  });

  it("lays a row of rules against a column of logs", () => {
    const answers = logs.LOGSCALE([[20], [16]], one(16), [["Doyle", "Decimal C", "Int. 1/4"]], one("table"));
    expect(answers).toEqual([
      [256, 280, 290],
      [144, 160, 180],
    ]);
  });

  it("goes by International 1/4 when no rule is named", () => {
    expect(logs.LOGSCALE(one(20), one(16))).toEqual(logs.LOGSCALE(one(20), one(16), one("International 1/4")));
  });

  it("reads metric and inch spellings of one log alike", () => {
    expect(logs.LOGSCALE(one("50.8 cm"), one("3.6576 m"), one("Doyle"))).toEqual([[192]]);
    expect(logs.LOGSCALE(one('20"'), one("12'"), one("Doyle"))).toEqual([[192]]);
  });

  it("names the rules near a misspelled one", () => {
    const [[answer]] = logs.LOGSCALE(one(20), one(12), one("Doyl")) as [[{ error: string; message: string }]];
    expect(answer.error).toBe("#VALUE!");
    expect(answer.message).toContain("Doyle");
  });
});

describe("the International rule", () => {
  it.each(["Int. 1/4 in", "Int'l 1/4", "Intl", 'International 1/4"', "International ¼ inch"])(
    "is found as %s",
    (rule) => expect(logs.LOGSCALE(one(20), one(16), one(rule))).toEqual(logs.LOGSCALE(one(20), one(16))),
  );
});

describe("a refused log", () => {
  const message = (...given: Parameters<typeof logs.LOGSCALE>) => messageOf(logs.LOGSCALE(...given));

  it("is shown in six digits, whatever binary made of its length", () => {
    expect(message(one(20), one(5.9), one("Decimal C"))).toBe(
      "Scribner Decimal C length (ft): wanted 6 to 16, got 5.9",
    );
    expect(message(one(20), one(1.9), one("Doyle"), one("table"))).toBe("Doyle length (ft): wanted 2 to 300, got 1.9");
  });

  it("is told what to do with a long log only where it is too long", () => {
    expect(message(one(20), one(18), one("Decimal C"))).toMatch(/got 18; Georgia scales 18 ft or more as two logs/);
  });

  it("says which end is wrong, and whether it is an end or the length", () => {
    expect(messageOf(logs.SMALIAN(one(0.05), one(1), one(16)))).toMatch(
      /^Smalian small-end diameter \(in\): wanted 0.1/,
    );
    expect(messageOf(logs.SMALIAN(one(16), one(12), one(16)))).toMatch(/^Smalian large-end diameter \(in\), not under/);
    expect(messageOf(logs.SMALIAN(one(12), one(16), one(400)))).toMatch(
      /^length: wanted feet up to 65 \(400 ft\? for 400 inches write 400 in\), got 400$/,
    );
  });
});

describe("NETSCALE", () => {
  it("takes all the deductions off one log, or one deduction off each log of a column", () => {
    expect(logs.NETSCALE(one(300), column(32, 0.1))).toEqual(one(238));
    expect(logs.NETSCALE(column(300, 200), one("10%"))).toEqual(column(270, 180));
  });

  it("refuses a column of logs beside a column of deductions: each log would lose them all", () => {
    expect(messageOf(logs.NETSCALE(column(300, 200), column(30, 20)))).toMatch(
      /^gross: wanted one cell, for the whole of deductions, got 2 × 1 cells/,
    );
  });
});

describe("LOGRULES", () => {
  it("of half a log is #VALUE! and names what is missing", () => {
    expect(logs.LOGRULES(one(20))).toEqual([[refused("#VALUE!", /^length: /)]]);
    expect(logs.LOGRULES(one(null), one(12))).toEqual([[refused("#VALUE!", /^diameter: /)]]);
  });

  it("shows the error of a rule in its own cell and answers the rest", () => {
    const rows = logs.LOGRULES(one(30), one(16));
    const cell = (rule: string) => rows.find(([name]) => name === rule)![1];
    expect(cell("Doyle")).toBe(676);
    expect(cell("Scribner Decimal C")).toMatchObject({ error: "#N/A" });
    expect(rows.flat()).not.toContain(undefined);
  });
});

describe("the other log functions", () => {
  it("take a blank optional as its default", () => {
    expect(logs.SMALIAN(one(12), one(16), one(16), one(null))).toEqual(logs.SMALIAN(one(12), one(16), one(16)));
    expect(logs.GIRTHDIAMETER(one(75.4), one(0))).toEqual(logs.GIRTHDIAMETER(one(75.4)));
    expect(logs.CULLRING(one(5), one(16), one(0))).toEqual([[38]]);
    expect(logs.SCALELENGTH(one("16'8\""), one(""), one(""))).toEqual([[16]]);
    expect(logs.NETSCALE(one(300), [[""], [null]])).toEqual([[300]]);
  });

  it("read a list of readings as one argument, blanks passed over", () => {
    expect(logs.SCALEDIAMETER([[20], [""], ["21 1/2"]])).toEqual([[20.75]]);
  });

  it("take whole metric sizes as they are written, not a hair under", () => {
    for (let cm = 14; cm <= 38; cm += 2) {
      const [[fromText]] = logs.JAS(one(`${cm} cm`), one("4 m")) as [[number]];
      expect(fromText).toBeCloseTo((cm ** 2 * 4) / 10_000, 3);
    }
    expect(logs.GOST(one("24 cm"), one("6 m"))).toEqual([[0.33]]);
    expect(logs.GOST(one("240 mm"), one("600 cm"))).toEqual([[0.33]]);
  });

  it("read a share as 25, 25% or 0.25", () => {
    const answers = [25, "25%", 0.25].map((share) =>
      logs.CULLSECTOR(one(20), one(16), one(share), one(8), one("Doyle")),
    );
    expect(answers).toEqual([[[32]], [[32]], [[32]]]);
  });
});
