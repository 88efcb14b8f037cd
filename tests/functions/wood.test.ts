import { describe, expect, it } from "vitest";
import {
  DRIEDSIZE,
  GREENSIZE,
  LOGWEIGHT,
  LUMBERWEIGHT,
  SHRINKAGE,
  SPECIES,
  WOODWEIGHT,
} from "../../src/functions/wood";

const cell = (content: unknown) => [[content]];
const messageOf = (answer: unknown[][]) => (answer[0]![0] as { message: string }).message;

describe("a moisture typed into the sheet", () => {
  it("is one moisture whether as 12, 12% or 0.12, and 1.2 in a percent cell is 120 %", () => {
    const at = (moisture: unknown) => WOODWEIGHT(cell("silver maple"), cell(moisture))[0]![0];
    expect(at("12%")).toBe(at(12));
    expect(at(0.12)).toBe(at(12));
    expect(at(1.2)).toBe(at(120));
    expect(Number(at(1.2))).toBeCloseTo(62.4 * 0.44 * 2.2, 8);
  });

  it("of 300 % is refused with what the wood can hold", () => {
    const answer = LOGWEIGHT(cell("white oak"), cell(20), cell(24), cell(10), cell(300));
    expect(answer[0]![0]).toMatchObject({ error: "#N/A" });
    expect(messageOf(answer)).toContain("wanted 0 to 101.7, got 300");
  });

  it("below 0 is refused as unreadable", () => {
    expect(LUMBERWEIGHT(cell("white oak"), cell(100), cell(-5))[0]![0]).toMatchObject({ error: "#VALUE!" });
  });

  it("left blank is green, as zero or as nothing", () => {
    const green = LOGWEIGHT(cell("white oak"), cell(20), cell(24), cell(10))[0]![0];
    expect(LOGWEIGHT(cell("white oak"), cell(20), cell(24), cell(10), cell(null))[0]![0]).toBe(green);
    expect(LOGWEIGHT(cell("white oak"), cell(20), cell(24), cell(10), cell(0))[0]![0]).toBe(green);
  });
});

describe("a column of logs", () => {
  const species = [["walnut"], ["Oak, white"], ["nonsuch"], [null]];
  const sizes = [[20], [24], [24], [null]];

  it("answers row by row, a bad row alone with its error and an unfilled row 0", () => {
    const answer = LOGWEIGHT(species, sizes, sizes, cell(10));
    expect(answer.length).toBe(4);
    expect(answer[0]![0]).toBeCloseTo(((Math.PI / 4) * 400 * 10 * 57) / 144, 0);
    expect(answer[2]![0]).toMatchObject({ error: "#VALUE!" });
    expect(answer[3]![0]).toMatchObject({ error: "#VALUE!" }); // the length is given, the rest is not
    expect(LOGWEIGHT(species, sizes, sizes, [[10], [10], [10], [null]])[3]![0]).toBe(0);
  });

  it("weighs the same in metric", () => {
    const inches = Number(LOGWEIGHT(cell("walnut"), cell(20), cell(30), cell(10))[0]![0]);
    const metric = Number(LOGWEIGHT(cell("walnut"), cell("508 mm"), cell("76.2 cm"), cell("3.048 m"))[0]![0]);
    expect(metric / inches).toBeCloseTo(1, 9);
  });
});

describe("a name", () => {
  it("is found in any case, and near misses are offered", () => {
    expect(SPECIES(cell("OAK, WHITE"), cell("Specific Gravity"))).toEqual([[0.6]]);
    expect(messageOf(SPECIES(cell("black wallnut")))).toContain("black walnut");
    expect(messageOf(SPECIES(cell("walnut"), cell("hardness")))).toContain("property");
  });

  it("left out gives the table of all 156 species", () => {
    expect(SPECIES().length).toBe(157);
    expect(SPECIES(cell(null), cell(null)).length).toBe(157);
  });
});

describe("shrinkage in the sheet", () => {
  it("has a green size that dries back", () => {
    const green = GREENSIZE(cell("sycamore"), cell("8/4"), cell(81), cell(8), cell("quarter-sawn"));
    expect(Number(DRIEDSIZE(cell("sycamore"), green, cell(81), cell(8), cell("quartersawn"))[0]![0])).toBeCloseTo(2, 9);
  });

  it("knows the grain by what it is called at the mill", () => {
    const radial = SHRINKAGE(cell("white oak"), cell(60), cell(8), cell("radial"));
    for (const grain of ["quarter", "Quarter sawn", "edge grain", "vertical grain"])
      expect(SHRINKAGE(cell("white oak"), cell(60), cell(8), cell(grain))).toEqual(radial);
    const tangential = SHRINKAGE(cell("white oak"), cell(60), cell(8));
    for (const grain of ["flat", "flat-sawn", "plainsawn", "flat grain"])
      expect(SHRINKAGE(cell("white oak"), cell(60), cell(8), cell(grain))).toEqual(tangential);
  });

  it("names the figure that is missing and the tables it was looked for in", () => {
    const message = messageOf(SHRINKAGE(cell("eastern white pine"), cell(60), cell(8)));
    expect(message).toContain("tangential shrinkage: no figure for eastern white pine");
    expect(message).toContain("Tables 4-3 and 13-5");
  });

  it("asks for the moisture that is missing instead of taking it for oven dry", () => {
    const answer = SHRINKAGE(cell("white oak"), cell(60), cell(null));
    expect(answer[0]![0]).toMatchObject({ error: "#VALUE!" });
    expect(messageOf(answer)).toContain("to");
  });
});
