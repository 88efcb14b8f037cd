import { describe, expect, it } from "vitest";
import catalog from "../../../src/catalog/catalog.json";
import { found } from "../../../src/hosts/pane/search";

const names = (question: string) => found(question, catalog).entries.map(({ name }) => name);

describe("a sawyer's question", () => {
  it.each([
    ["how heavy", "LOGWEIGHT"],
    ["weight", "LOGWEIGHT"],
    ["how heavy is this log", "LOGWEIGHT"],
    ["how heavy is wood", "WOODWEIGHT"],
    ["weight of boards", "LUMBERWEIGHT"],
    ["weighs", "WEIGHTAT"],
    ["price", "LISTPRICE"],
    ["speed", "RIMSPEED"],
    ["sawdust", "KERFLOSS"],
    ["logscale", "LOGSCALE"],
    ["Weight of a log", "LOGWEIGHT"],
    ["does it fit my mill", "THROATFIT"],
    ["pulley size", "PULLEYSIZE"],
    ["board feet in a log", "LOGSCALE"],
    ["what is it worth", "LOGBID"],
    ["hauling", "HAULCOST"],
  ])("%j is answered with %s first", (question, first) => {
    expect(names(question)[0]).toBe(first);
    expect(found(question, catalog).everyWord).toBe(true);
  });

  it("finds one log and many logs, drying and dry alike", () => {
    expect(names("logs")).toEqual(names("log"));
    expect(names("sawing")).toEqual(names("saw"));
    expect(names("drying")).toEqual(names("dry"));
  });

  it("finds a function by the wood in its example", () => expect(names("black walnut")).toContain("LOGWEIGHT"));

  it("gets what comes nearest when no function has every word, and is told so", () => {
    const { entries, everyWord } = found("how fast does the band run", catalog);
    expect(everyWord).toBe(false);
    expect(entries[0]?.name).toBe("RIMSPEED");
  });

  it("gets nothing when no word of it is known", () => {
    expect(found("zebra", catalog)).toEqual({ entries: [], everyWord: false });
    expect(names("glass")).toEqual([]);
  });
});
