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
import { messageOf, one, refused } from "./sheet";

describe("a moisture typed into the sheet", () => {
  it("is one moisture whether as 12, 12% or 0.12, and 1.2 in a percent cell is 120 %", () => {
    const at = (moisture: unknown) => WOODWEIGHT(one("silver maple"), one(moisture))[0]![0];
    expect(at("12%")).toBe(at(12));
    expect(at(0.12)).toBe(at(12));
    expect(at(1.2)).toBe(at(120));
    expect(Number(at(1.2))).toBeCloseTo(62.4 * 0.44 * 2.2, 8);
  });

  it("of 300 % is refused with what the wood can hold", () => {
    const answer = LOGWEIGHT(one("white oak"), one(20), one(24), one(10), one(300));
    expect(answer[0]![0]).toMatchObject({ error: "#N/A" });
    expect(messageOf(answer)).toContain("wanted 0 to 101.7, got 300");
  });

  it("below 0 is refused as unreadable", () => {
    expect(LUMBERWEIGHT(one("white oak"), one(100), one(-5))[0]![0]).toMatchObject({ error: "#VALUE!" });
  });

  it("left blank is green; a 0 has to be written so that it is no blank", () => {
    const green = LOGWEIGHT(one("white oak"), one(20), one(24), one(10))[0]![0];
    expect(LOGWEIGHT(one("white oak"), one(20), one(24), one(10), one(null))[0]![0]).toBe(green);
    const zero = LOGWEIGHT(one("white oak"), one(20), one(24), one(10), one(0));
    expect(messageOf(zero)).toBe(
      'moisture: wanted "0%" for none, or nothing for the usual, got 0, which could be a blank',
    );
    for (const dry of ["0%", "0", "none"])
      expect(LOGWEIGHT(one("white oak"), one(20), one(24), one(10), one(dry))[0]![0]).toBeLessThan(green as number);
  });
});

describe("a column of logs", () => {
  const species = [["black walnut"], ["Oak, white"], ["nonsuch"], [null]];
  const sizes = [[20], [24], [24], [null]];

  it("answers row by row, a bad row alone with its error and an unfilled row 0", () => {
    const answer = LOGWEIGHT(species, sizes, sizes, one(10));
    expect(answer.length).toBe(4);
    expect(answer[0]![0]).toBeCloseTo(((Math.PI / 4) * 400 * 10 * 57) / 144, 0);
    expect(answer[2]![0]).toMatchObject({ error: "#VALUE!" });
    expect(answer[3]![0]).toBe(0); // the one length stands for every row, and begins none
    expect(LOGWEIGHT(species, sizes, sizes, [[10], [10], [10], [null]])[3]![0]).toBe(0);
  });

  it("weighs the same in metric", () => {
    const inches = Number(LOGWEIGHT(one("black walnut"), one(20), one(30), one(10))[0]![0]);
    const metric = Number(LOGWEIGHT(one("black walnut"), one("508 mm"), one("76.2 cm"), one("3.048 m"))[0]![0]);
    expect(metric / inches).toBeCloseTo(1, 9);
  });
});

describe("a name", () => {
  it("is found in any case, and near misses are offered", () => {
    expect(SPECIES(one("OAK, WHITE"), one("Specific Gravity"))).toEqual([[0.6]]);
    expect(messageOf(SPECIES(one("black wallnut")))).toContain("black walnut");
    expect(messageOf(SPECIES(one("black walnut"), one("hardness")))).toContain("property");
  });

  it("left out gives the table of all 231 species", () => {
    expect(SPECIES().length).toBe(232);
    expect(SPECIES(one(null), one(null)).length).toBe(232);
  });
});

describe("shrinkage in the sheet", () => {
  it("has a green size that dries back", () => {
    const green = GREENSIZE(one("American sycamore"), one("8/4"), one(81), one(8), one("quarter-sawn"));
    expect(Number(DRIEDSIZE(one("American sycamore"), green, one(81), one(8), one("quartersawn"))[0]![0])).toBeCloseTo(
      2,
      9,
    );
  });

  it("knows the grain by what it is called at the mill", () => {
    const radial = SHRINKAGE(one("white oak"), one(60), one(8), one("radial"));
    for (const grain of ["quarter", "Quarter sawn", "edge grain", "vertical grain"])
      expect(SHRINKAGE(one("white oak"), one(60), one(8), one(grain))).toEqual(radial);
    const tangential = SHRINKAGE(one("white oak"), one(60), one(8));
    for (const grain of ["flat", "flat-sawn", "plainsawn", "flat grain"])
      expect(SHRINKAGE(one("white oak"), one(60), one(8), one(grain))).toEqual(tangential);
  });

  it("names the figure that is missing and the tables it was looked for in", () => {
    const message = messageOf(SHRINKAGE(one("eastern white pine"), one(60), one(8)));
    expect(message).toContain("tangential shrinkage: no figure for eastern white pine");
    expect(message).toContain("Tables 4-3 and 13-5");
  });

  it("asks for the moisture that is missing instead of taking it for oven dry", () => {
    expect(SHRINKAGE(one("white oak"), one(60), one(null))).toEqual([[refused("#VALUE!", /^to: /)]]);
  });
});

describe("a specific gravity in place of the species", () => {
  it("is read as a number or as text, row by row beside names", () => {
    const woods = [["white oak"], [0.6], ["0.6"], ["mulberry"], [3], [null]];
    const answer = LUMBERWEIGHT(woods, [[12], [12], [12], [12], [12], [null]], one(30));
    expect(answer[0]![0]).toBeCloseTo(62.4 * 0.6 * 1.3, 9);
    expect(answer[1]).toEqual(answer[0]);
    expect(answer[2]).toEqual(answer[0]);
    expect(messageOf([answer[3]!])).toMatch(
      /: white mulberry 41-82 or a specific gravity such as 0.55, got "mulberry"/,
    );
    expect(messageOf([answer[4]!])).toBe("species: wanted a name, or a specific gravity from 0.1 to 1.4, got 3");
    expect(answer[5]![0]).toBe(0);
  });

  it("is no species where more than its density is asked for", () => {
    expect(SHRINKAGE(one(0.6), one(60), one(8))[0]![0]).toMatchObject({ error: "#VALUE!" });
  });
});
