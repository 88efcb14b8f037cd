import { describe, expect, it } from "vitest";
import * as read from "../../../src/cells/read";
import { spread } from "../../../src/cells/spread";
import { readOne, refused } from "./ask";

describe("a name", () => {
  const trees = { "white oak": ["Quercus alba", "oak"], "black walnut": ["walnut"], "sugar maple": ["hard maple"] };
  const tree = read.oneOf(trees);
  it.each(["White Oak", "white-oak", " WHITE  OAK ", "Oak, white", "quercus alba", "oak"])("%j is white oak", (cell) =>
    expect(readOne(tree, cell)).toBe("white oak"),
  );
  it("offers the nearest when it is unknown", () => expect(refused(tree, "balck walnut")).toMatch(/black walnut/));
  it("offers a name that shares a word before one that is merely as short", () => {
    const kinds = { "white oak": [], "black walnut": ["walnut"], boxelder: [], "red maple": [], "Norway pine": [] };
    const kind = read.oneOf({ ...kinds, ailanthus: [], serviceberry: [], "green ash": [] });
    expect(refused(kind, "English walnut")).toMatch(/nearest: black walnut/);
    expect(refused(kind, "white oak, log")).toMatch(/nearest: white oak/);
    expect(refused(kind, "oak")).toMatch(/nearest: white oak/);
    expect(refused(kind, "whit oak")).toMatch(/nearest: white oak/);
  });
  it("may have inch marks behind it", () =>
    expect(readOne(read.oneOf({ "rule 1/4": [] }), 'Rule 1/4"')).toBe("rule 1/4"));
  it.each([7, true, "__proto__", "constructor"])("refuses %j", (cell) => void refused(tree, cell));
  it("of a short list is shown with all the others when it is unknown, or a number stands there", () => {
    const pattern = read.oneOf({ live: [], slab: [], cant: [], quarter: [] });
    for (const cell of ["flat", 5])
      expect(refused(pattern, cell)).toMatch(/: wanted one of live, slab, cant, quarter, got /);
    expect(readOne(pattern, "cant\u200b")).toBe("cant");
  });
  it("reads ¼ as 1/4", () =>
    expect(readOne(read.oneOf({ "International 1/4": [] }), "international ¼")).toBe("International 1/4"));
});

describe("yes or no", () => {
  it.each([true, "TRUE", "yes", "Y", 1, "1"])("%j is yes", (cell) => expect(readOne(read.yesNo, cell)).toBe(true));
  it.each([false, "false", "No", 0, "0", null, ""])("%j is no", (cell) => {
    const answer = spread({ size: read.inches, yes: read.yesNo }, ({ yes }) => yes)([[4]], [[cell]]);
    expect(answer).toEqual([[false]]);
  });
  it.each([2, -1, "maybe"])("%j is neither, and the message says what is", (cell) =>
    expect(refused(read.yesNo, cell)).toMatch(/^size: wanted one of yes, no, got /),
  );
});
