import { describe, expect, it } from "vitest";
import { speciesName } from "../../../src/cells/read";
import { NoAnswer } from "../../../src/math/errors";
import {
  FOREST_SPECIES,
  SPECIES_NAMES,
  SPECIES_TABLE,
  speciesNamed,
  type SpeciesName,
} from "../../../src/math/wood/species";
import { speciesAnswer } from "../../../src/math/wood/species-card";
import { TRADE_NAMES } from "../../../src/math/wood/trade-names.table";

const SPECIES = speciesName.bind(() => [[null]], "species");
const found = (written: string) => SPECIES.read(written, "species");

describe("a species", () => {
  it.each<[string, SpeciesName]>([
    ["white oak", "white oak"],
    ["WHITE OAK", "white oak"],
    ["Oak, white", "white oak"],
    ["oak, pin", "pin oak"],
    ["Quercus alba", "white oak"],
    ["hard maple", "sugar maple"],
    ["soft maple", "red maple"],
    ["yellow poplar", "yellow-poplar"],
    ["Tulip tree", "yellow-poplar"],
    ["red oak", "northern red oak"],
    ["Cedar, yellow", "Alaska yellow-cedar"],
    ["Tupelo, black", "blackgum"],
    ["Douglas fir", "Douglas-fir"],
    ["Douglas-fir, coast", "Douglas-fir"],
    ["osage orange", "Osage-orange"],
    ["Acer saccharinum", "silver maple"],
  ])("is found as %s", (written, name) => expect(found(written)).toBe(name));

  it("is offered when the name is nearly right", () => {
    expect(() => found("black wallnut")).toThrow(/black walnut/);
  });

  it("answers to no name that another answers to", () => {
    const owners = new Map<string, string>();
    for (const { name } of SPECIES_TABLE)
      for (const spelling of [name, ...SPECIES_NAMES[name]]) {
        const plain = spelling.toLowerCase().replace(/[\s\-,.']+/g, " ");
        expect(owners.get(plain) ?? name, spelling).toBe(name);
        owners.set(plain, name);
      }
  });

  it("has trade names only where the table has the species", () => {
    for (const name of Object.keys(TRADE_NAMES)) expect(speciesNamed(name as SpeciesName).name).toBe(name);
  });

  it("is one of 156, each with all of its weight figures", () => {
    expect(FOREST_SPECIES.length).toBe(156);
    for (const species of FOREST_SPECIES) {
      expect(species.specificGravityAt12, species.name).toBeGreaterThan(species.specificGravity);
      expect(species.greenMoisturePercent).toBeGreaterThan(20);
    }
  });
});

describe("a species' card", () => {
  it("shows unit and source beside every figure", () => {
    for (const { name } of FOREST_SPECIES)
      for (const [figure, value, , source] of speciesAnswer({ name }).slice(1))
        if (figure !== "note" && value !== "not seen in print") expect(source, `${name} ${figure}`).toBeTruthy();
  });

  it("gives the weight of heart and sap where they hold different water", () => {
    const card = new Map(speciesAnswer({ name: "western redcedar" }).map(([figure, value]) => [figure, value]));
    // 62.4 * 0.31 * 1.58 and * 3.49: a butt log of sapwood weighs twice a log of heart
    expect(card.get("heartwood weight")).toBeCloseTo(30.56, 2);
    expect(card.get("sapwood weight")).toBeCloseTo(67.51, 2);
  });

  it.each<SpeciesName>([
    "sugar maple",
    "northern red oak",
    "western redcedar",
    "Douglas-fir",
    "noble fir",
    "western hemlock",
  ])("says that the sources differ on the green moisture of %s", (name) =>
    expect(
      speciesAnswer({ name })
        .map(([, text]) => text)
        .join(),
    ).toMatch(/lies outside that of heart and sap/),
  );

  it("carries both weights of yellow-poplar, on which two agencies differ by 10 lb", () => {
    const card = new Map(speciesAnswer({ name: "yellow-poplar" }).map(([figure, value]) => [figure, value]));
    expect(card.get("green weight")).toBeCloseTo(48.7, 1);
    expect(card.get("green weight, second source")).toBe(38);
  });

  it("says which table has no figure", () => {
    expect(() => speciesAnswer({ name: "redwood", figure: "tangential" })).toThrow(
      "tangential: no figure for redwood in Wood Handbook Tables 4-3 and 13-5 as far as it was seen",
    );
    expect(() => speciesAnswer({ name: "redwood", figure: "heartwood moisture" })).toThrow(/Table 4-1/);
    expect(() => speciesAnswer({ figure: "radial" })).toThrow(NoAnswer);
  });

  it("stands in a row of the whole table", () => {
    const [heading, ...rows] = speciesAnswer({});
    expect(rows.length).toBe(231);
    const oak = rows.find(([name]) => name === "white oak")!;
    expect(oak[heading!.indexOf("tangential, % green to oven dry")]).toBe(10.5);
    expect(rows.every((row) => row.length === heading!.length)).toBe(true);
  });
});
