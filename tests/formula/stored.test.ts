import { describe, expect, it } from "vitest";
import { functionsOf } from "../../src/formula/functions";
import { shownFormula, storedFormula } from "../../src/formula/stored";

describe("a formula as the file keeps it", () => {
  it("keeps our functions under the name by which Excel finds the add-in again", () => {
    expect(storedFormula("BOLE", '=BOLE.LOGSCALE(20, 12, "Doyle")')).toBe('_xldudf_BOLE_LOGSCALE(20, 12, "Doyle")');
    expect(storedFormula("BOLE", "=SUM(BOLE.EMC(A1, B1), BOLE.EMC(A2, B2))")).toBe(
      "SUM(_xldudf_BOLE_EMC(A1, B1), _xldudf_BOLE_EMC(A2, B2))",
    );
  });

  it("leaves text alone, with doubled quotes in it", () => {
    expect(storedFormula("BOLE", '="BOLE.EMC( and [@Dia] and IFNA("')).toBe('"BOLE.EMC( and [@Dia] and IFNA("');
    expect(storedFormula("BOLE", '=BOLE.MEASURE("8\'6""")&"[@Dia]"')).toBe('_xldudf_BOLE_MEASURE("8\'6""")&"[@Dia]"');
  });

  it("writes out this row of a table", () => {
    expect(storedFormula("BOLE", "=[@Dia]*2", "Logs")).toBe("Logs[[#This Row],[Dia]]*2");
    expect(storedFormula("BOLE", "=[@[Scaled ft]]*2", "Logs")).toBe("Logs[[#This Row],[Scaled ft]]*2");
    expect(storedFormula("BOLE", "=MAX([@[Small 1]:[Small 2]])", "Logs")).toBe(
      "MAX(Logs[[#This Row],[Small 1]:[Small 2]])",
    );
    expect(storedFormula("BOLE", "=SUM(Logs[Net])")).toBe("SUM(Logs[Net])");
  });

  it("gives newer functions of Excel the longer names that the file wants", () => {
    expect(storedFormula("BOLE", "=XLOOKUP(A1, B:B, C:C)")).toBe("_xlfn.XLOOKUP(A1, B:B, C:C)");
    expect(storedFormula("BOLE", "=SUM(FILTER(A:A, B:B=1))")).toBe("SUM(_xlfn._xlws.FILTER(A:A, B:B=1))");
    expect(storedFormula("BOLE", "=MAX(A1:A3)")).toBe("MAX(A1:A3)");
  });

  it("shows a whole table by its name alone, as Excel does, and stores it with brackets", () => {
    expect(shownFormula("=BOLE.CUTYIELD(20, 12, Products[], 0.125)")).toBe("=BOLE.CUTYIELD(20, 12, Products, 0.125)");
    expect(storedFormula("BOLE", "=ROWS(Products[])")).toBe("ROWS(Products[])");
  });

  it("names the functions of an add-in in a formula as often as they are called, none from its text", () => {
    expect(functionsOf("BOLE", '=BOLE.EMC(A1, BOLE.MEASURE("BOLE.TALLY(1)"))+BOLE.EMC(1, 2)')).toEqual([
      "EMC",
      "MEASURE",
      "EMC",
    ]);
  });
});
