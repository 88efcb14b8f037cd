import { describe, expect, it } from "vitest";
import * as read from "../../../src/cells/read";
import { readOne, refused } from "./ask";

describe("a name", () => {
  const trees = { "white oak": ["Quercus alba", "oak"], "black walnut": ["walnut"], "sugar maple": ["hard maple"] };
  const tree = (range: unknown, name: string) => read.oneOf(trees, range, name);
  it.each(["White Oak", "white-oak", " WHITE  OAK ", "Oak, white", "quercus alba", "oak"])("%j is white oak", (cell) =>
    expect(readOne(tree, cell)).toBe("white oak"),
  );
  it("offers the nearest when it is unknown", () => expect(refused(tree, "balck walnut")).toMatch(/black walnut/));
  it.each([7, true, "__proto__", "constructor"])("refuses %j", (cell) => void refused(tree, cell));
  it("reads ¼ as 1/4", () =>
    expect(readOne((range, name) => read.oneOf({ "International 1/4": [] }, range, name), "international ¼")).toBe(
      "International 1/4",
    ));
});
