import { describe, expect, it } from "vitest";
import { pickLists, wordsOf } from "../../../src/catalog/printing/pick-lists";
import { readCatalog } from "../../../src/catalog/read-catalog";
import { registry } from "../../../src/functions/registry";
import { readingOf } from "../../../src/cells/spread";

const catalog = readCatalog();
const { lists, idOf } = pickLists(catalog);

describe("the words that Excel offers in the formula bar", () => {
  it("are there for rules, units, patterns, grains, roundings, bounds, states, parts and directions", () => {
    const offered = new Set(catalog.flatMap(({ params }) => params.filter(idOf).map(({ name }) => name)));
    for (const wanted of ["rule", "unit", "pattern", "grain", "rounding", "bound", "state", "part", "direction"])
      expect(offered, wanted).toContain(wanted);
  });

  it("are each a list of its own, and every list is used", () => {
    expect(new Set(lists.map(({ id }) => id)).size).toBe(lists.length);
    const used = new Set(catalog.flatMap(({ params }) => params.map(idOf)));
    expect(lists.filter(({ id }) => !used.has(id))).toEqual([]);
  });

  it("are all what the reader takes, word by word", () => {
    for (const { name, params } of catalog)
      for (const [at, param] of params.entries())
        for (const word of wordsOf(param) ?? [])
          expect(readingOf(registry[name]!.takes[at]!, [[word]]), `${name} ${param.name}`).toEqual([
            expect.not.objectContaining({ error: expect.anything() as unknown }),
          ]);
  });

  it("leave every other spelling to the reader: a blank, a range and one's own word reach it as before", () => {
    const rule = registry["LOGSCALE"]!.takes.find(({ name }) => name === "rule")!;
    expect(readingOf(rule, [["doyle"], ["SCRIBNER"]])).toEqual(["Doyle", "Scribner"]);
    expect(readingOf(rule, [[""]])).toEqual(["International 1/4"]);
    expect(readingOf(rule, [["Doyel"]])).toMatchObject({ error: "#VALUE!" });
  });
});
