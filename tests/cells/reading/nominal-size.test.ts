import { describe, expect, it } from "vitest";
import * as read from "../../../src/cells/read";
import { readOne, refused } from "./ask";

describe("the nominal size of softwood lumber", () => {
  it.each(["2x6", "2 x 6", "2X6", '2"x6"', "2 in x 6 in", "2×6", "2.0x6", "2 by 6", " 2x6 ", "4/2x6"])(
    "%s is a two by six",
    (cell) => expect(readOne(read.nominalSize, cell)).toEqual({ thicknessIn: 2, widthIn: 6 }),
  );

  it.each(["5/4x6", "1 1/4x6", "1-1/4 x 6", "1.25x6", "1¼x6", "1¼ by 6"])("%s is five quarter by six", (cell) =>
    expect(readOne(read.nominalSize, cell)).toEqual({ thicknessIn: 1.25, widthIn: 6 }),
  );

  it.each(["2", 2, "2x", "x6", "2x6x8", "two by six", "2/0x6", "0x6", "-2x6", "1e1x6", "2,5x6", "50x100 mm", true])(
    "%j names none",
    (cell) => expect(refused(read.nominalSize, cell)).toMatch(/wanted thickness x width in inches, such as 2x6/),
  );

  it.each(["6x8", "6 x 8", '6"x8"', "6 by 8"])("%s is the section of a timber too, as it is sawn", (cell) =>
    expect(readOne(read.section, cell)).toEqual({ thicknessIn: 6, widthIn: 8 }),
  );

  it.each(["6", 6, "6x", "0x8", true])("%j is no section", (cell) =>
    expect(refused(read.section, cell)).toMatch(/wanted two sides in inches, such as 6x8/),
  );

  it("hands an error on", () =>
    expect(readOne(read.nominalSize, "#REF!")).toMatchObject({
      error: "#REF!",
      message: "size: the cell holds #REF!",
    }));
});
