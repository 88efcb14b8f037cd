import { describe, expect, it } from "vitest";
import { isCellError } from "../../src/cells/error";
import { readCatalog } from "../../src/catalog/read-catalog";
import { registry } from "../../src/functions/registry";
import { answerTo, literalCall } from "./literal-call";
import { zeroFault } from "./zero";

const catalog = readCatalog();

describe("no typed zero is taken for something else in silence", () => {
  for (const { name, examples } of catalog)
    it(`by any argument of ${name}`, () => {
      const formula = registry[name]!;
      const faults = examples
        .map((example) => literalCall(example.formula).given)
        .flatMap((given) => formula.takes.map((_, at) => zeroFault(formula, padded(given, formula.takes.length), at)));
      expect(faults.filter(Boolean)).toEqual([]);
    });

  it("whose meaning every amount declares", () => {
    const silent = Object.entries(registry).flatMap(([name, { takes }]) =>
      takes
        .filter(({ facts }) => facts.bare && !facts.zero && !facts.many)
        .map((argument) => `${name} ${argument.name}`),
    );
    expect(silent).toEqual([]);
  });
});

describe("a zero that is meant", () => {
  it.each([
    ['=BOLE.DRIEDTALLY(1000,"0%")', 1000],
    ['=BOLE.DRIEDTALLY(1000,"none")', 1000],
    ['=BOLE.OVENDRYWEIGHT(60,"0%")', 60],
    ['=BOLE.LISTPRICE(6,"0%")', 6],
    ['=BOLE.BIGGESTLOG(84,"0 in")', 84],
    ["=BOLE.EMC(70,0)", 0],
    ["=BOLE.OVERRUN(0,1000)", -100],
    ["=BOLE.MARGIN(3,0)", 1],
  ])("%s is %d", (formula, answer) => expect(answerTo(formula)).toEqual([[answer]]));

  it("is oven dry in a weight, a shrinkage and a drying time", () => {
    const lumber = (moisture: string) => answerTo(`=BOLE.LUMBERWEIGHT("red oak", 500${moisture})`)[0]![0] as number;
    expect(lumber(', "0%"')).toBeLessThan(lumber(', "1%"'));
    expect(lumber(', "1%"')).toBeLessThan(lumber(""));
    expect(answerTo('=BOLE.SHRINKAGE("white oak", 60, "0%")')[0]![0]).toBeCloseTo(10.5, 9);
    expect(isCellError(answerTo('=BOLE.AIRDRYDAYS("red oak", 1, "0%")')[0]![0])).toBe(true);
  });

  it("as a number is refused with the way to write it, where a blank would mean something else", () => {
    const message = (formula: string) => (answerTo(formula)[0]![0] as { message: string }).message;
    expect(message("=BOLE.DRIEDTALLY(1000, 0)")).toBe(
      'shrinkage: wanted "0%" for none, or nothing for 7, got 0, which could be a blank',
    );
    expect(message("=BOLE.WEIGHTAT(60, 16, 0)")).toBe(
      'target: wanted a value (others of this row are given); for 0 write "0%", got a blank or 0',
    );
  });
});

describe("a call without any argument", () => {
  const required = catalog.filter(({ params }) => params.some(({ optional }) => !optional));
  it.each(required)("of $name says what is wanted", ({ name, params }) => {
    const wanted = params.filter(({ optional }) => !optional).map((param) => param.name);
    expect(registry[name]!()).toEqual([
      [{ error: "#VALUE!", message: `arguments: wanted ${wanted.join(", ")}, got none` }],
    ]);
  });
  it("answers where nothing has to be given", () => {
    expect(catalog.filter((entry) => !required.includes(entry)).map(({ name }) => name)).toEqual([
      "LOGRULES",
      "SPECIES",
      "VERSION",
    ]);
    for (const name of ["LOGRULES", "SPECIES", "VERSION"]) expect(isCellError(registry[name]!()[0]![0])).toBe(false);
  });
});

function padded(given: unknown[][][], length: number): (unknown[][] | null)[] {
  return Array.from({ length }, (_, at) => given[at] ?? null);
}
