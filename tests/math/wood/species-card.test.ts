import { describe, expect, it } from "vitest";
import { FOREST_SPECIES, SPECIES_TABLE } from "../../../src/math/wood/species";
import { speciesAnswer } from "../../../src/math/wood/species-card";

const NOT_SEEN = ["not seen in print", "", ""];
const OUTSIDE = "The green moisture lies outside that of heart and sap: the two sources differ";

describe("the card of a species", () => {
  it.each(FOREST_SPECIES.map((species) => [species.name, species] as const))(
    "%s: headings, a figure or a plain word where none was seen, and a note where its sources differ",
    (name, species) => {
      const [heading, ...rows] = speciesAnswer({ name });
      expect(heading).toEqual(["figure", name, "unit", "source"]);
      const rowOf = (figure: string) => rows.find(([first]) => first === figure)?.slice(1);
      const { heartwoodMoisturePercent: heart, sapwoodMoisturePercent: sap } = species;
      for (const [figure, value] of [
        ["heartwood moisture", heart],
        ["sapwood moisture", sap],
        ["radial", species.radialPercent],
        ["tangential", species.tangentialPercent],
      ] as const) {
        if (value === undefined) expect(rowOf(figure), figure).toEqual(NOT_SEEN);
        else expect(rowOf(figure)?.[0], figure).toBe(value);
      }
      if (heart === undefined) expect(rowOf("heartwood weight")).toEqual(NOT_SEEN);
      if (sap === undefined) expect(rowOf("sapwood weight")).toEqual(NOT_SEEN);

      const between = [species.greenMoisturePercent, heart ?? NaN, sap ?? NaN].sort((a, b) => a - b)[1];
      const differs = heart !== undefined && sap !== undefined && between !== species.greenMoisturePercent;
      const notes = rows.filter(([first, second]) => first === "note" && second === OUTSIDE);
      expect(notes).toEqual(differs ? [["note", OUTSIDE, "", ""]] : []);
    },
  );

  it("is written for some species whose sources differ and for some whose sources agree", () => {
    const withNote = FOREST_SPECIES.filter(({ name }) =>
      speciesAnswer({ name }).some(([, second]) => second === OUTSIDE),
    );
    expect(withNote.length).toBeGreaterThan(0);
    expect(withNote.length).toBeLessThan(FOREST_SPECIES.length / 2);
  });
});

it("the whole table names its first column, then every figure with its unit", () => {
  const [heading, ...rows] = speciesAnswer({});
  expect(heading!.slice(0, 3)).toEqual(["species", "latin name", "specific gravity, green volume"]);
  expect(rows.map(([name]) => name)).toEqual(SPECIES_TABLE.map(({ name }) => name));
});
