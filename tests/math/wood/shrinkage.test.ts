import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { NoAnswer } from "../../../src/math/errors";
import { mostMoisturePercent } from "../../../src/math/wood/moisture";
import { driedSizeIn, greenSizeIn, shrinkagePercent } from "../../../src/math/wood/shrinkage";
import { SPECIES_TABLE } from "../../../src/math/wood/species";

const SEED = { seed: 12, numRuns: 1000 };
const shrinking = SPECIES_TABLE.filter(({ radialPercent, tangentialPercent }) => radialPercent && tangentialPercent);
const anySpecies = fc.constantFrom(...shrinking);
const share = fc.double({ min: 0, max: 1, noNaN: true });
const grains = fc.constantFrom("radial" as const, "tangential" as const);

describe("shrinkage", () => {
  it("is none above 30 %", () => {
    expect(shrinkagePercent({ species: "white oak", fromPercent: 90, toPercent: 30, grain: "tangential" })).toBe(0);
  });

  it("is half of the whole at 15 %", () => {
    expect(shrinkagePercent({ species: "white oak", fromPercent: 60, toPercent: 15, grain: "tangential" })).toBeCloseTo(
      5.25,
      10,
    );
  });

  it("turns to swelling, below 0, when the wood takes up water", () => {
    expect(shrinkagePercent({ species: "white oak", fromPercent: 8, toPercent: 12, grain: "radial" })).toBeLessThan(0);
  });

  it("answers at both ends of what the wood can hold, and not past them", () => {
    const at = (fromPercent: number, toPercent: number) => () =>
      shrinkagePercent({ species: "white oak", fromPercent, toPercent, grain: "tangential" });
    expect(at(101.7, 0)()).toBeCloseTo(10.5, 10);
    expect(at(101.8, 8)).toThrow(/from .* wanted 0 to 101.7, got 101.8/);
    expect(at(60, -0.1)).toThrow(/to .* wanted 0 to 101.7, got -0.1/);
  });

  it("says which figure is missing, and where it was looked for", () => {
    const ask = () => shrinkagePercent({ species: "gray birch", fromPercent: 40, toPercent: 8, grain: "tangential" });
    expect(ask).toThrow(NoAnswer);
    expect(ask).toThrow(/tangential shrinkage: no figure for gray birch in the Wood Handbook's Tables 4-3 and 13-5/);
  });
});

describe("the green size for a dry one", () => {
  it("dries back to it, for every species, grain and pair of moistures", () => {
    fc.assert(
      fc.property(
        anySpecies,
        grains,
        share,
        share,
        fc.double({ min: 0.1, max: 100, noNaN: true }),
        (species, grain, a, b, sizeIn) => {
          const most = Math.floor(mostMoisturePercent(species));
          const drying = { species: species.name, grain, fromPercent: a * most, toPercent: b * most };
          const back = driedSizeIn({ ...drying, sizeIn: greenSizeIn({ ...drying, sizeIn }) });
          expect(Math.abs(back / sizeIn - 1)).toBeLessThan(1e-9);
        },
      ),
      SEED,
    );
  });

  it("is never under the dry size when the wood dries", () => {
    fc.assert(
      fc.property(anySpecies, grains, share, share, (species, grain, a, b) => {
        const most = Math.floor(mostMoisturePercent(species));
        const [dry, wet] = [Math.min(a, b) * most, Math.max(a, b) * most];
        expect(
          greenSizeIn({ species: species.name, grain, sizeIn: 6, fromPercent: wet, toPercent: dry }),
        ).toBeGreaterThanOrEqual(6);
      }),
      SEED,
    );
  });
});
