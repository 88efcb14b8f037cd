import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { NoAnswer } from "../../../src/math/errors";
import { woodWeightLbPerFt3 } from "../../../src/math/wood/density";
import { mostMoisturePercent } from "../../../src/math/wood/moisture";
import { FOREST_SPECIES, speciesNamed } from "../../../src/math/wood/species";
import { speciesAnswer } from "../../../src/math/wood/species-card";
import { barkLbPerFt3OfWood, logWeightLb, lumberWeightLb, waterToLoseLb } from "../../../src/math/wood/weight";

const SEED = { seed: 11, numRuns: 500 };
/** Printed with two specific gravities so far apart that a cubic foot would weigh more at 12 % than at 30 %. */
const DOUBTFUL = ["American hornbeam", "Monterey pine", "black spruce", "serviceberry", "willow oak"];
const sound = FOREST_SPECIES.map(({ name }) => name).filter((name) => !DOUBTFUL.includes(name));
const anySpecies = fc.constantFrom(...sound);

describe("the weight of wood", () => {
  it("at 12 % is the printed specific gravity times water and 1.12", () => {
    for (const { name, specificGravityAt12 } of FOREST_SPECIES)
      expect(woodWeightLbPerFt3({ species: name, moisturePercent: 12 })).toBeCloseTo(
        62.4 * specificGravityAt12 * 1.12,
        8,
      );
  });

  it("just under 30 % joins what it is just over", () => {
    const under = woodWeightLbPerFt3({ species: "white oak", moisturePercent: 29.9999999 });
    expect(under).toBeCloseTo(woodWeightLbPerFt3({ species: "white oak", moisturePercent: 30 }), 5);
  });

  it("answers up to all the water the wood holds, and past it names both limits", () => {
    expect(woodWeightLbPerFt3({ species: "white oak", moisturePercent: 101.7 })).toBeGreaterThan(75);
    expect(() => woodWeightLbPerFt3({ species: "white oak", moisturePercent: 101.8 })).toThrow(
      /wanted 0 to 101.7, got 101.8/,
    );
    expect(() => woodWeightLbPerFt3({ species: "white oak", moisturePercent: 300 })).toThrow(NoAnswer);
  });

  it("never falls as the wood gets wetter", () => {
    fc.assert(
      fc.property(
        anySpecies,
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (species, a, b) => {
          const most = Math.floor(mostMoisturePercent(speciesNamed(species)));
          const at = (share: number) => woodWeightLbPerFt3({ species, moisturePercent: share * most });
          expect(at(Math.max(a, b))).toBeGreaterThanOrEqual(at(Math.min(a, b)) - 1e-9);
        },
      ),
      SEED,
    );
  });
});

describe("the card of a species whose two gravities do not fit", () => {
  it("says so, and no other card does", () => {
    const inDoubt = FOREST_SPECIES.filter(({ name }) =>
      speciesAnswer({ name }).some(([, text]) => String(text).includes("in doubt")),
    );
    expect(inDoubt.map(({ name }) => name as string).sort()).toEqual([...DOUBTFUL].sort());
  });
});

describe("the weight of a log", () => {
  const log = {
    species: "white oak",
    smallIn: 12,
    largeIn: 12,
    lengthFt: 1,
    bark: "without",
    bound: "typical",
  } as const;

  it("a foot long and a foot thick is pi / 4 cubic feet of 63 lb", () => {
    // By hand: 0.7854 * 62.4 * 0.60 * 1.6826667 = 49.48
    expect(logWeightLb(log)).toBeCloseTo(49.48, 2);
  });

  it("goes with the square of the thickness and with the length", () => {
    expect(logWeightLb({ ...log, smallIn: 24, largeIn: 24, lengthFt: 10 })).toBeCloseTo(40 * logWeightLb(log), 8);
  });

  it("of sizes no tree has, or with its ends swapped, is refused", () => {
    const ask = (smallIn: number, largeIn: number, lengthFt: number) => () =>
      logWeightLb({ ...log, smallIn, largeIn, lengthFt });
    expect(ask(26, 20, 9)).toThrow("not under the small end: wanted 26 to 300, got 20");
    expect(ask(200, 301, 9)).toThrow("wanted 200 to 300, got 301");
    expect(ask(20, 26, 900)).toThrow("wanted more than 0, up to 300, got 900");
  });

  it("strays 15 % either way by custom", () => {
    expect(logWeightLb({ ...log, bound: "low" }) / logWeightLb(log)).toBeCloseTo(0.85, 12);
    expect(logWeightLb({ ...log, bound: "high" }) / logWeightLb(log)).toBeCloseTo(1.15, 12);
  });

  it("of a green conifer may be all sapwood or all heartwood", () => {
    // By hand for incense-cedar, 0.35 green: heart 40 %, sap 213 % (Table 4-1); pi / 4 * 62.4 * 0.35 * 1.40 and * 3.13
    const cedar = { ...log, species: "incense-cedar" } as const;
    expect(logWeightLb({ ...cedar, bound: "low" })).toBeCloseTo(24.01, 2);
    expect(logWeightLb({ ...cedar, bound: "high" })).toBeCloseTo(53.69, 2);
  });

  it("green never lies outside its bounds, whether the log is heart, sap or bark and all", () => {
    for (const species of FOREST_SPECIES) {
      const { name, heartwoodMoisturePercent, sapwoodMoisturePercent } = species;
      for (const bark of ["with", "without"] as const) {
        const weigh = (more: object) => logWeightLb({ ...log, species: name, bark, ...more });
        const [low, typical, high] = (["low", "typical", "high"] as const).map((bound) => weigh({ bound }));
        for (const moisturePercent of [heartwoodMoisturePercent, sapwoodMoisturePercent]) {
          if (moisturePercent === undefined) continue;
          expect(weigh({ moisturePercent }), name).toBeLessThanOrEqual(high! + 1e-9);
          expect(weigh({ moisturePercent }), name).toBeGreaterThanOrEqual(low! - 1e-9);
        }
        expect(low! / typical!, name).toBeLessThanOrEqual(0.85 + 1e-12);
        expect(high! / typical!, name).toBeGreaterThanOrEqual(1.15 - 1e-12);
      }
    }
  });

  it("of a moisture given strays 15 % and no more", () => {
    const cedar = { ...log, species: "incense-cedar", moisturePercent: 40 } as const;
    expect(logWeightLb({ ...cedar, bound: "high" }) / logWeightLb(cedar)).toBeCloseTo(1.15, 12);
  });

  it("is said on its page to be light for just those conifers whose two sources differ", () => {
    const page = readFileSync(new URL("../../../src/functions/wood/weight.ts", import.meta.url), "utf8");
    const said = /handbook has their moisture[^]*?For (.*?) even/.exec(page.replace(/\s*\n \* /g, " "))![1]!;
    const light = FOREST_SPECIES.filter(
      ({ kind, greenMoisturePercent, heartwoodMoisturePercent: heart, sapwoodMoisturePercent: sap }) =>
        kind === "softwood" && heart !== undefined && sap !== undefined && greenMoisturePercent < Math.min(heart, sap),
    );
    expect(said.split(/, | and /).sort()).toEqual(light.map(({ name }) => name as string).sort());
  });

  it("with bark adds the bark by the agency's shares of volume", () => {
    // By hand for white oak: 0.16 * 62.4 * 0.56 * 1.88875 = 10.56 lb a cubic foot of wood
    expect(barkLbPerFt3OfWood("white oak")).toBeCloseTo(10.56, 2);
    expect(logWeightLb({ ...log, bark: "with" }) - logWeightLb(log)).toBeCloseTo((Math.PI / 4) * 10.56, 2);
  });

  it("at a moisture given weighs less than green when that is drier", () => {
    expect(logWeightLb({ ...log, moisturePercent: 30 })).toBeLessThan(logWeightLb(log));
  });
});

describe("the weight of lumber", () => {
  it("green is a twelfth of a cubic foot a board foot", () => {
    // Northern red oak is 64 lb a cubic foot green
    expect(lumberWeightLb({ species: "northern red oak", boardFeet: 1000 })).toBeCloseTo((1000 / 12) * 64, 0);
  });

  it("keeps its wood when it dries: dry weight plus the water lost is the green weight", () => {
    const stack = { species: "black cherry", boardFeet: 700 } as const;
    const dry = lumberWeightLb({ ...stack, moisturePercent: 8 });
    const lost = waterToLoseLb({
      ...stack,
      fromPercent: speciesNamed("black cherry").greenMoisturePercent,
      toPercent: 8,
    });
    expect(dry + lost).toBeCloseTo(lumberWeightLb(stack), 8);
  });

  it("has no water to lose when the target is wetter", () => {
    expect(() => waterToLoseLb({ species: "black cherry", boardFeet: 1, fromPercent: 8, toPercent: 12 })).toThrow(
      NoAnswer,
    );
    expect(waterToLoseLb({ species: "black cherry", boardFeet: 1, fromPercent: 8, toPercent: 8 })).toBe(0);
  });
});
