import { describe, expect, it } from "vitest";
import { speciesName } from "../../../src/cells/read";
import { speciesOfGenus } from "../../../src/math/wood/genera";
import { GENERA } from "../../../src/math/wood/genera.table";
import { SPECIES_NAMES, SPECIES_TABLE } from "../../../src/math/wood/species";

const SPECIES = speciesName.bind(() => [[null]], "species");
const found = (written: string) => SPECIES.read(written, "species");
const NAMES = GENERA.map(([name]) => name);

describe("the bare name of a genus", () => {
  it.each(NAMES)("%s is refused, with its species and their weights", (written) => {
    const offered = /^species: wanted one of these \(green, lb\/ft3\): [a-zA-Z -]+ \d+(-\d+)?(, .*)?, got "/;
    expect(() => found(written)).toThrow(offered);
    expect(() => found(written.toUpperCase())).toThrow(offered);
  });

  it("lists those that are sawn most first", () => {
    expect(() => found("walnut")).toThrow(": black walnut 57, English walnut 67, butternut 46, got");
    expect(() => found("poplar")).toThrow(": yellow-poplar 49, ");
    expect(() => found("oak")).toThrow(/: northern red oak 64, white oak 63, .* and 15 more, got "oak"/);
    expect(() => found("eucalyptus")).toThrow(": blue gum eucalyptus 42-80, river red gum 39-84, red ironbark 74-83");
  });

  it.each(["oak", "maple", "pine", "elm", "ash", "birch", "hickory", "spruce"])(
    "%s lists every one so named",
    (word) => {
      const named = SPECIES_TABLE.filter(({ name }) => new RegExp(`(^|[ -])${word}$`).test(name));
      const listed = speciesOfGenus(word);
      // Silk oak is a Grevillea, and no oak at all
      for (const { name } of named) if (name !== "silk oak") expect(listed).toContain(name);
      expect(new Set(listed).size).toBe(listed.length);
    },
  );

  it("is no spelling of any one species", () => {
    for (const name of NAMES)
      for (const [key, others] of Object.entries(SPECIES_NAMES))
        expect(
          [key, ...others].map((spelling) => spelling.toLowerCase()),
          key,
        ).not.toContain(name);
  });

  it("leaves the trade's groups as they were", () => {
    expect(found("white oak")).toBe("white oak");
    expect(found("red oak")).toBe("northern red oak");
    expect(found("hard maple")).toBe("sugar maple");
  });
});

describe("a name that is nearly right", () => {
  it.each([
    ["red mulberry", "white mulberry"],
    ["white mulbery", "white mulberry"],
    ["english wallnut", "English walnut"],
    ["balck walnut", "black walnut"],
    ["Callery pear", "common pear"],
    ["London plain", "London plane"],
    ["live", "live oak"],
    ["white mapel", "silver maple"],
  ])("%s is offered %s first", (written, name) => expect(() => found(written)).toThrow(`(nearest: ${name}`));

  it("is offered nothing for its letters alone", () => {
    expect(() => found("red mulberry")).not.toThrow(/maple|serviceberry/);
    expect(() => found("plum")).toThrow('species: wanted a known name, got "plum"');
  });
});
