import { describe, expect, it } from "vitest";
import { NoAnswer } from "../../../src/math/errors";
import { shrinkagePercent, type Grain } from "../../../src/math/wood/shrinkage";
import { SHRINKAGE_TO_OVENDRY, SHRINKAGE_TOTALS } from "../../../src/math/wood/shrinkage.table";
import { FOREST_SPECIES, type SpeciesName } from "../../../src/math/wood/species";
import { speciesAnswer } from "../../../src/math/wood/species-card";
import { rowsOf } from "../../csv";
import { printedValuesOf } from "../../printed";
import { comparisonCountedBy, EXACT, speciesOf } from "./printed";

const expectPrinted = comparisonCountedBy(printedValuesOf("Wood, shrinkage"));

describe("the handbook's shrinkage, Table 4-3", () => {
  const rows = rowsOf("wood/shrinkage_green_to_ovendry.csv");
  const columns: [Grain, string][] = [
    ["radial", "radial_pct"],
    ["tangential", "tangential_pct"],
    ["volumetric", "volumetric_pct"],
  ];

  it("comes out whole from green to oven dry, and a dash of the book has no answer", () => {
    expect(rows).toHaveLength(79);
    for (const row of rows) {
      if (row["species"]!.startsWith("Douglas-fir, interior")) continue;
      const species = speciesOf(row["species"]!);
      for (const [grain, column] of columns) {
        const shrink = () => shrinkagePercent({ species, fromPercent: 30, toPercent: 0, grain });
        if (row[column] === "") expect(shrink).toThrow(NoAnswer);
        else expectPrinted(shrink(), row[column], EXACT, `${row["species"]} ${grain}`);
      }
    }
  });

  it("shows the two interior kinds of Douglas-fir on the card", () => {
    const card = speciesAnswer({ name: "Douglas-fir" });
    const interior = rows.filter(({ species }) => species!.startsWith("Douglas-fir, interior"));
    expect(interior).toHaveLength(2);
    for (const row of interior)
      for (const [grain, column] of columns) {
        const line = card.find(
          ([figure, , , where]) => figure === `${grain}, second source` && String(where).endsWith(row["species"]!),
        );
        expectPrinted(Number(line?.[1]), row[column], EXACT, row["species"]!);
      }
  });

  it("adds up to its check totals", () => {
    const sum = (at: 2 | 3 | 4, kept: (table: string) => boolean) =>
      SHRINKAGE_TO_OVENDRY.filter((row) => kept(row[5])).reduce((total, row) => total + (row[at] ?? 0), 0);
    const printed = (table: string) => table === "4-3";
    const workedBack = (table: string) => table !== "4-3";
    expect(SHRINKAGE_TO_OVENDRY.filter((row) => printed(row[5])).length).toBe(SHRINKAGE_TOTALS["4-3"].rows);
    expect(sum(2, printed)).toBeCloseTo(SHRINKAGE_TOTALS["4-3"].radial, 6);
    expect(sum(3, printed)).toBeCloseTo(SHRINKAGE_TOTALS["4-3"].tangential, 6);
    expect(sum(4, printed)).toBeCloseTo(SHRINKAGE_TOTALS["4-3"].volumetric, 6);
    expect(SHRINKAGE_TO_OVENDRY.filter((row) => workedBack(row[5])).length).toBe(SHRINKAGE_TOTALS["13-5"].rows);
    expect(sum(2, workedBack)).toBeCloseTo(SHRINKAGE_TOTALS["13-5"].radial, 6);
    expect(sum(3, workedBack)).toBeCloseTo(SHRINKAGE_TOTALS["13-5"].tangential, 6);
  });

  it("is not the radial and tangential compounded: volumetric lies within 1.3 under and 2.8 over that", () => {
    for (const { name, radialPercent, tangentialPercent, volumetricPercent } of FOREST_SPECIES) {
      if (radialPercent === undefined || tangentialPercent === undefined || volumetricPercent === undefined) continue;
      const compounded = 100 * (1 - (1 - radialPercent / 100) * (1 - tangentialPercent / 100));
      expect(volumetricPercent - compounded, name).toBeGreaterThan(-1.35);
      expect(volumetricPercent - compounded, name).toBeLessThan(2.85);
    }
  });

  it("agrees with the printed specific gravity at 12 % by Eq 4-11, within 0.035", () => {
    // Two tables that do not know of each other, each rounded; measured root mean square 0.012.
    for (const { name, specificGravity, specificGravityAt12, volumetricPercent } of FOREST_SPECIES) {
      if (volumetricPercent === undefined) continue;
      const shrunk = shrinkagePercent({ species: name, fromPercent: 30, toPercent: 12, grain: "volumetric" });
      expect(Math.abs(specificGravity / (1 - shrunk / 100) - specificGravityAt12), name).toBeLessThan(0.035);
    }
  });
});

describe("the handbook's movement between 6 and 14 %, Table 13-5", () => {
  /** Rows that the book prints with another species' pair (green ash as white ash, and so on): Table 4-3 differs. */
  const SHARED_ROWS = ["Ash, green", "Birch, sweet", "Elm, cedar"];
  /** Not one species of ours, or a row the book itself prints in doubt. */
  const NO_SPECIES = ["Magnolia, southern", "Oak, black"];
  const GROUPS: Record<string, SpeciesName> = {
    "Red oak, commercial": "pin oak",
    "Red oak, California": "California black oak",
    "Red oak: water, laurel, willow": "water oak",
    "White oak, commercial": "bur oak",
    "White oak, live": "live oak",
    "White oak, Oregon white": "Oregon white oak",
    "White oak, overcup": "overcup oak",
    "Magnolia, cucumbertree": "cucumbertree",
    "Magnolia, sweetbay": "sweetbay",
    Apple: "apple",
  };

  it("is what shrinkage gives for one percent at 10 %", () => {
    const rows = rowsOf("wood/dimensional_change_coefficients.csv");
    expect(rows).toHaveLength(56);
    for (const row of rows) {
      const heading = row["species"]!;
      if (NO_SPECIES.includes(heading) || SHARED_ROWS.includes(heading)) continue;
      const species = GROUPS[heading] ?? speciesOf(heading.split(", ").reverse().join(" "));
      for (const [grain, column] of [
        ["radial", "CR"],
        ["tangential", "CT"],
      ] as const) {
        if (row[column] === "") continue;
        const perPercent = shrinkagePercent({ species, fromPercent: 10, toPercent: 9, grain }) / 100;
        // One in the last printed digit: the book worked it out from a shrinkage less rounded than the one it prints.
        expectPrinted(perPercent, row[column], 0.0000101, `${heading} ${grain}`);
      }
    }
  });

  it("differs where the book prints another species' row, and the card says so", () => {
    for (const heading of SHARED_ROWS) {
      const species = speciesOf(heading);
      const row = rowsOf("wood/dimensional_change_coefficients.csv").find((other) => other["species"] === heading)!;
      for (const [grain, column] of [
        ["radial", "CR"],
        ["tangential", "CT"],
      ] as const) {
        const line = speciesAnswer({ name: species }).find(([figure]) => figure === `${grain}, second source`)!;
        expectPrinted(1 / (3000 / Number(line[1]) - 20), row[column], 0.0000101, heading);
      }
    }
  });
});
