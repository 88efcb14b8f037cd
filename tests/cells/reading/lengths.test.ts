import { describe, expect, it } from "vitest";
import * as read from "../../../src/cells/read";
import { readOne, refused } from "./ask";

describe("a size in inches", () => {
  it.each([
    [14.5, 14.5],
    ["14 1/2", 14.5],
    ["14-1/2", 14.5],
    ["14½", 14.5],
    ["14 ½", 14.5],
    ["½", 0.5],
    ["14.5", 14.5],
    [".5", 0.5],
    ['14 1/2"', 14.5],
    ["14.5 in", 14.5],
    ["14 inches", 14],
    ["5/4", 1.25],
    ["4Q", 1],
    ["8 q", 2],
    ["8'6\"", 102],
    ["8' 6", 102],
    ["8ft", 96],
    ["8′ 6½″", 102.5],
    ["8’6”", 102],
    ["2.54 cm", 1],
    ["300 mm", 11.811023622],
    ["1 m", 39.37007874],
    ["30 centimetres", 11.811023622],
    ["300 millimeters", 11.811023622],
    ["2 meters", 78.74015748],
    ["5.08 cm.", 2],
    ["1/16", 0.0625],
    ["14' 6 1/2\"", 174.5],
    ["14ft6", 174],
    ["14.5'", 174],
    ["１４", 14],
    ["14\u00a01/2", 14.5],
    ["\u200b14 1/2\u200f", 14.5],
    [{ type: "FormattedNumber", basicValue: 12, numberFormat: "0.0" }, 12],
  ])("reads %j as %d", (cell, size) => expect(readOne(read.inches, cell)).toBe(size));

  it.each(["oak", "14 1/0", "1/2/3", "--5", "8-6", "14 ton", "1e3", "0x10", "Infinity", "14 1/2 1/2", "½½"])(
    "refuses %j",
    (cell) => void refused(read.inches, cell),
  );
  it("never guesses what a comma means", () => {
    for (const [reader, cell] of [
      [read.inches, "1,5"],
      [read.feet, "1,500"],
      [read.money, "1,500"],
    ] as const)
      expect(refused(reader, cell)).toBe(`size: wanted a number without a comma, such as 1.5 or 1500, got "${cell}"`);
  });
  it("refuses a date, which 5/4 becomes in a General cell, and says what to do", () => {
    for (const serial of [46146, 11689, 23377, 18264, "46146", 46146.25])
      expect(refused(read.inches, serial)).toMatch(/a date.*Type '5\/4 with the apostrophe/);
  });
  it.each([-3, "-3", true, 1e300, 200_000, 1e-300 * 0 - 1])("refuses %j", (cell) => void refused(read.inches, cell));
});

describe("a length in feet", () => {
  it.each([
    [8, 8],
    ["8'6\"", 8.5],
    ["8' 6-1/2\"", 8.541666666666666],
    ["8ft 6in", 8.5],
    ["8 ft. 6 in.", 8.5],
    ["8-6", 8.5],
    ["8-6-1/2", 8.541666666666666],
    ['102"', 8.5],
    ["102 in", 8.5],
    ["12 1/2", 12.5],
    ["8'-6\"", 8.5],
    ["2.4384 m", 8],
    ["14 ft 6-1/2", 14.541666666666666],
    ["16FT", 16],
  ])("reads %j as %d", (cell, length) => expect(readOne(read.feet, cell)).toBe(length));

  it("2.4 m is its inches over 12, so that a whole foot in metres is a whole foot", () => {
    expect(readOne(read.feet, "2.4 m")).toBeCloseTo(7.874015748, 9);
    for (const foot of [8, 10, 12, 16]) expect(readOne(read.feet, `${foot * 0.3048} m`)).toBe(foot);
  });
  it.each(["8'14\"", "8.5'6\"", "8-14"])(
    "refuses %j: the inches after feet are under 12, the feet whole",
    (cell) => void refused(read.feet, cell),
  );
});

describe("a length that nothing in the trade has", () => {
  it.each([read.logLength, read.boardLength, read.spanLength])("is refused, with how to write inches", (reader) => {
    expect(readOne(reader, 65)).toBe(65);
    expect(readOne(reader, "120 in")).toBe(10);
    expect(refused(reader, 120)).toBe("size: wanted feet up to 65 (120 ft? for 120 inches write 120 in), got 120");
    expect(refused(reader, "96")).toBe('size: wanted feet up to 65 (96 ft? for 96 inches write 96 in), got "96"');
    expect(refused(reader, "70 ft")).toBe('size: wanted feet up to 65, got "70 ft"');
  });
  it("is no limit of a distance", () => expect(readOne(read.feet, 120)).toBe(120));
});
