import { describe, expect, it } from "vitest";
import { evidenceOf } from "../../../src/math/wood/evidence";
import { woodWeightLbPerFt3 } from "../../../src/math/wood/density";
import { FOREST_SPECIES, SPECIES_TABLE, speciesNamed } from "../../../src/math/wood/species";
import { TOWN_TREES, TOWN_TREES_TOTALS } from "../../../src/math/wood/town-trees.table";
import { logWeightLb, lumberWeightLb, waterToLoseLb } from "../../../src/math/wood/weight";
import { rowsOf } from "../../csv";
import { printedValuesOf } from "../../printed";

const count = printedValuesOf("trees that stand in towns");
const CUBIC_FOOT = { smallIn: 12, largeIn: 12, lengthFt: 4 / Math.PI, bark: "without", bound: "typical" } as const;

describe("the table of trees that stand in towns", () => {
  it("has of the database every tree that the weight table lacks, with its records, mean, least and most", () => {
    const rows = rowsOf("wood/city_trees_density.csv");
    expect(rows.length).toBe(90);
    const byLatin = new Map(
      SPECIES_TABLE.map((species) => [species.latin.replace("illinoinensis", "illinoensis"), species]),
    );
    for (const row of rows) {
      const species = byLatin.get(row["latin_name"]!);
      expect(species, row["common_name"]).toBeDefined();
      if (!species?.records) continue;
      count(4);
      expect([species.records.count, species.specificGravity, species.records.least, species.records.most]).toEqual(
        [row["records"], row["mean_g_cm3"], row["least"], row["most"]].map(Number),
      );
    }
  });

  it("adds up to the totals of the file", () => {
    const sum = (column: 3 | 4 | 5 | 6) => TOWN_TREES.reduce((total, row) => total + row[column], 0);
    expect(TOWN_TREES.length).toBe(TOWN_TREES_TOTALS.rows);
    expect(sum(3)).toBe(TOWN_TREES_TOTALS.records);
    expect(sum(4)).toBeCloseTo(TOWN_TREES_TOTALS.mean, 9);
    expect(sum(5)).toBeCloseTo(TOWN_TREES_TOTALS.least, 9);
    expect(sum(6)).toBeCloseTo(TOWN_TREES_TOTALS.most, 9);
  });

  it("repeats no species of the weight table, and no mean lies outside its records", () => {
    const forest = new Set(FOREST_SPECIES.map(({ latin }) => latin));
    for (const [name, latin, , , mean, least, most] of TOWN_TREES) {
      expect(forest.has(latin), name).toBe(false);
      expect(mean, name).toBeGreaterThanOrEqual(least);
      expect(mean, name).toBeLessThanOrEqual(most);
    }
  });
});

describe("the green weight of a tree that stands in a town", () => {
  it("has the moisture of its genus", () => {
    // By hand: the one Platanus of the weight table, American sycamore, holds 81.17391 %; 62.4 * 0.553 * 1.8117391
    expect(speciesNamed("American sycamore").greenMoisturePercent).toBeCloseTo(81.17, 1);
    expect(woodWeightLbPerFt3({ species: "London plane" })).toBeCloseTo(
      62.4 * 0.553 * (1 + speciesNamed("American sycamore").greenMoisturePercent / 100),
      9,
    );
    // The mean of the seven maples of the weight table: 71.18182, 90.78571, 69.5, 71.18182, 63.53061, 67.54545, 57.39286
    expect(speciesNamed("Norway maple").greenMoisturePercent).toBeCloseTo(491.11827 / 7, 6);
    expect(speciesNamed("Norway maple").genusMoisturePercent).toEqual({ least: 57.39286, most: 90.78571 });
  });

  it("goes out to the lightest and the heaviest of its records with the least and most water of its genus", () => {
    const maple = { ...CUBIC_FOOT, species: "Norway maple" } as const;
    // 62.4 * 0.508 * 1.5739286 = 49.89, lighter than nothing of 0.85 * 54.79 = 46.57; 62.4 * 0.525 * 1.9078571 = 62.50
    expect(logWeightLb({ ...maple, bound: "low" })).toBeCloseTo(46.57, 2);
    expect(logWeightLb({ ...maple, bound: "high" })).toBeCloseTo(63.01, 2);
    const walnut = { ...CUBIC_FOOT, species: "English walnut", bound: "low" } as const;
    expect(logWeightLb(walnut)).toBeLessThanOrEqual(62.4 * 0.533 * 1.81);
  });

  it("of a genus without a printed moisture is unknown, and the refusal says between what it lies", () => {
    // Ginkgo: 62.4 * 0.451 * 1.30 = 36.59; full cavities at 0.458: 62.4 * (0.458 + 1 - 0.458 / 1.54) = 72.42
    expect(() => logWeightLb({ ...CUBIC_FOOT, species: "ginkgo" })).toThrow("it weighs from 37 to 72 lb/ft3");
    expect(() => lumberWeightLb({ species: "ginkgo", boardFeet: 12 })).toThrow("moisture: none printed for ginkgo");
    expect(logWeightLb({ ...CUBIC_FOOT, species: "ginkgo", bound: "low" })).toBeCloseTo(36.59, 2);
    expect(logWeightLb({ ...CUBIC_FOOT, species: "ginkgo", bound: "high" })).toBeCloseTo(72.42, 2);
    expect(logWeightLb({ ...CUBIC_FOOT, species: "ginkgo", moisturePercent: 60 })).toBeCloseTo(62.4 * 0.455 * 1.6, 9);
  });

  it("at a given moisture goes out to its records too: river red gum from 0.48 to 0.973", () => {
    const gum = { ...CUBIC_FOOT, species: "river red gum", moisturePercent: 35 } as const;
    expect(logWeightLb({ ...gum, bound: "low" })).toBeCloseTo(62.4 * 0.48 * 1.35, 9);
    expect(logWeightLb({ ...gum, bound: "high" })).toBeCloseTo(62.4 * 0.973 * 1.35, 9);
    // The densest record cannot hold 60 %: 100 * (1.54 - 0.973) / (1.54 * 0.973) = 37.84
    expect(logWeightLb({ ...gum, moisturePercent: 60, bound: "high" })).toBeCloseTo(62.4 * 0.973 * 1.3784, 2);
  });

  it("lies for every species between its bounds", () => {
    for (const { name, greenMoisturePercent } of SPECIES_TABLE) {
      const weigh = (more: object) => logWeightLb({ ...CUBIC_FOOT, species: name, ...more });
      const [low, high] = [weigh({ bound: "low" }), weigh({ bound: "high" })];
      expect(low, name).toBeLessThan(high);
      if (greenMoisturePercent === undefined) continue;
      expect(low, name).toBeLessThan(weigh({}));
      expect(high, name).toBeGreaterThan(weigh({}));
    }
  });

  it("with bark has no answer, for no bark of it was seen in print", () => {
    expect(() => logWeightLb({ ...CUBIC_FOOT, species: "London plane", bark: "with" })).toThrow(/^bark: no weight/);
  });
});

describe("a specific gravity of one's own", () => {
  it("stands for the species wherever the density only is needed", () => {
    // By the handbook's Eq 4-13: Gx = 0.5 / (1 - 0.265 * 0.5 * (1 - 12 / 30)) = 0.543183
    expect(woodWeightLbPerFt3({ species: 0.5, moisturePercent: 12 })).toBeCloseTo(62.4 * 0.543183 * 1.12, 3);
    expect(woodWeightLbPerFt3({ species: 0.5, moisturePercent: 30 })).toBeCloseTo(62.4 * 0.5 * 1.3, 9);
    expect(woodWeightLbPerFt3({ species: 0.5, moisturePercent: 0 })).toBeCloseTo((62.4 * 0.5) / (1 - 0.1325), 9);
    expect(lumberWeightLb({ species: 0.5, boardFeet: 120, moisturePercent: 20 })).toBeCloseTo(624 * 0.5 * 1.2, 9);
    expect(waterToLoseLb({ species: 0.5, boardFeet: 120, fromPercent: 60, toPercent: 10 })).toBeCloseTo(156, 9);
  });

  it.each([0.1, 1.4])("may be %d, and nothing beyond", (gravity) => {
    expect(woodWeightLbPerFt3({ species: gravity, moisturePercent: 0 })).toBeGreaterThan(0);
    const beyond = gravity < 1 ? gravity - 0.001 : gravity + 0.001;
    expect(() => woodWeightLbPerFt3({ species: beyond, moisturePercent: 0 })).toThrow("wanted 0.1 to 1.4");
  });
});

describe("how strong a species' density is", () => {
  const says = (name: Parameters<typeof speciesNamed>[0]) => evidenceOf(speciesNamed(name));
  it("is said of each: a national table, a mean of several records, or weak and why", () => {
    expect(says("white oak")).toBe("good: national table");
    expect(says("London plane")).toBe("fair: mean of 4 records");
    expect(says("hedge maple")).toBe("weak: one record");
    expect(says("river red gum")).toContain("weak: records from 0.48 to 0.973");
    expect(says("English elm")).toBe("weak: one record, far lighter than the rest of its genus");
    expect(says("Chinese elm")).toBe("weak: one record, far heavier than the rest of its genus");
    expect(says("white willow")).toContain("weak: one record");
  });
  it("is never good or fair for one record", () => {
    for (const species of SPECIES_TABLE) if (species.records?.count === 1) expect(evidenceOf(species)).toMatch(/^weak/);
  });
});
