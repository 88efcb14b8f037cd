import { describe, expect, it } from "vitest";
import catalog from "../../../src/catalog/catalog.json";
import type { Entry } from "../../../src/catalog/entry";
import { searchOver } from "../../../src/hosts/pane/search";
import { READY_SHEETS } from "../../../src/sheets/ready";
import { QUESTIONS } from "./questions";
import { ASKED_LAST, PUT_ASIDE } from "./questions-put-aside";

const find = searchOver(catalog as Entry[], READY_SHEETS);
const names = (question: string) =>
  find(question).hits.map((hit) => (hit.kind === "sheet" ? `sheet: ${hit.sheet.title}` : hit.entry.name));

/** How many of the questions have the right answer first, and among the first three; and the most hits of any. */
function asked(questions: typeof QUESTIONS) {
  const places = questions.map(([question, ...right]) => names(question).findIndex((name) => right.includes(name)));
  return {
    first: places.filter((place) => place === 0).length,
    amongThree: places.filter((place) => place >= 0 && place < 3).length,
    most: Math.max(...questions.map(([question]) => names(question).length)),
  };
}

describe("the questions that were written down", () => {
  it.each([
    ["those it was tuned on", QUESTIONS, 96, 100],
    ["those put aside, which found first 39 and 48 when they were first asked", PUT_ASIDE, 42, 49],
    ["those asked last", ASKED_LAST, 26, 27],
  ])("%s", (_, questions, first, amongThree) => {
    const so = asked(questions);
    expect(so.first).toBeGreaterThanOrEqual(first);
    expect(so.amongThree).toBeGreaterThanOrEqual(amongThree);
    expect(so.most).toBeLessThanOrEqual(12);
  });
});

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
  });

  it("finds one log and many logs, drying and dry alike", () => {
    expect(names("logs")).toEqual(names("log"));
    expect(names("drying")[0]).toBe(names("dry")[0]);
  });

  it("finds a function by the wood in its example", () => expect(names("black walnut")).toContain("LOGWEIGHT"));

  it("forgives a slip of the finger, and finds while one types", () => {
    expect(names("sycamor wieght")).not.toEqual([]);
    expect(names("equilibrum")[0]).toBe("EMC");
    expect(names("sharpe")[0]).toBe(names("sharpen")[0]);
    expect(names("pulleysi")[0]).toBe("PULLEYSIZE");
  });

  it("finds the sheets that can be added too", () => {
    expect(names("log book")).toContain("sheet: Log book");
    expect(names("invoice")).toContain("sheet: Sawing bill");
  });

  it.each([
    ["how many trips", "Trips and tie-downs"],
    ["tie downs for each log", "Trips and tie-downs"],
    ["tally lumber", "Board tally"],
    ["slab tickets", "Slab stock"],
    ["inventory", "Stock by tag"],
    ["which blade to sharpen", "Blade log"],
    ["moisture readings", "Drying log"],
    ["split the money with my partner", "Partner account"],
  ])("%j finds the sheet %s too", (question, title) => {
    expect(names(question)).toContain(`sheet: ${title}`);
  });

  it("gets what comes nearest when no function has every word, and is told so", () => {
    const { everyWord } = find("how fast does the purple band run");
    expect(everyWord).toBe(false);
    expect(names("how fast does the purple band run").length).toBeGreaterThan(0);
    expect(find("does it fit my mill").everyWord).toBe(true);
  });

  it("gets nothing when no word of it is known, or there is none", () => {
    expect(find("qqqq")).toEqual({ hits: [], everyWord: false });
    expect(find("  ?!")).toEqual({ hits: [], everyWord: false });
  });
});
