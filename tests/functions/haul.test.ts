import { describe, expect, it } from "vitest";
import { LOADLEFT, SLINGLEG, TIEDOWNS, TONGUESHARE } from "../../src/functions/haul";
import { column, one, refused } from "./sheet";

describe("the haul's functions in a sheet", () => {
  it("take the logs aboard as one list, blanks passed over", () => {
    expect(LOADLEFT(one(14000), one(4200), column(3100, null, 2650, 0, ""))).toEqual([[4050]]);
    expect(LOADLEFT(one(14000), one(4200))).toEqual([[9800]]);
    expect(LOADLEFT(one(14000), one(4200), column(null, ""))).toEqual([[9800]]);
  });

  it("refuse several trucks beside a list of weights, which are one load", () => {
    expect(LOADLEFT(column(7000, 14000), one(2100), column(3100, 2650))).toEqual([[refused("#VALUE!", /^rating: /)]]);
    expect(LOADLEFT(one(14000), column(2100, 4200), column(3100, 2650))).toEqual([[refused("#VALUE!", /^empty: /)]]);
    expect(LOADLEFT(column(7000, 14000), one(2100), one(3100))).toEqual([[1800], [8800]]);
  });

  it("read a plate in tonnes and logs in kilograms", () => {
    const [[left]] = LOADLEFT(one("3.5 t"), one("900 kg"), column("1200 kg")) as [[number]];
    expect(left).toBeCloseTo(1400 / 0.45359237, 6);
  });

  it("never count a log whose weight cannot be read as nothing", () => {
    expect(LOADLEFT(one(14000), one(4200), column(3100, "heavy"))).toEqual([[refused("#VALUE!", /weights, value 2/)]]);
    expect(LOADLEFT(one(14000), one(4200), column(3100, -5))).toEqual([[refused("#VALUE!", /weights, value 2/)]]);
    expect(LOADLEFT(one(14000), one(null), column(3100))).toEqual([[refused("#VALUE!", /^empty: /)]]);
    expect(LOADLEFT(one(14000), one(4200), column(3100, "#N/A"))).toEqual([[refused("#N/A", /weights/)]]);
  });

  it("line up loads and places, 0 and blank over the axle, minus behind it", () => {
    expect(TONGUESHARE(column(3000, 2000), column(3, -1), one(14))).toEqual([[10]]);
    expect(TONGUESHARE(column(3000, 2000), column(3, 0), one(14))[0]![0]).toBeCloseTo(12.857, 3);
    expect(TONGUESHARE(column(3000, 2000), column("3'6\"", "-1 ft"), one(14))[0]![0]).toBeCloseTo(850 / 70, 9);
    expect(TONGUESHARE(column(3000, null), column(3, -1), one(14))).toEqual([[refused("#VALUE!", /weights.*row 2/)]]);
  });

  it("answer for the empty trailer's share as 12, 12% or a percent cell alike", () => {
    for (const share of [12, "12%", 0.12])
      expect(TONGUESHARE(column(3000, 2000), column(3, -1), one(14), one(2000), one(share))[0]![0]).toBeCloseTo(
        10.571,
        3,
      );
    expect(TONGUESHARE(one(3000), one(3), one(14), one(2000))).toEqual([[refused("#N/A", /both or neither/)]]);
  });

  it("count tie-downs for every row, and 0 for an empty one", () => {
    expect(TIEDOWNS(column(9000, 1100, null), column(16, 5, null), column(3300, 3300, null))).toEqual([[3], [1], [0]]);
    expect(TIEDOWNS(one(9000), one("10'0\""), one(6000))).toEqual([[2]]);
    expect(TIEDOWNS(one(9000), one("10'1\""), one(6000))).toEqual([[3]]);
  });

  it("leave 0 beside a row that nobody has filled in, where limit or angle stands once for all", () => {
    expect(TIEDOWNS(column(5000, null), column(16, 0), one(3300))).toEqual([[3], [0]]);
    expect(TIEDOWNS(column(5000, null), column(16, 0), one(null))).toEqual([[refused("#VALUE!", /^limit: /)], [0]]);
    expect(SLINGLEG(column(2000, 0), one(30))[1]).toEqual([0]);
  });

  it("give the empty trailer its own share, and no share to a trailer of no weight", () => {
    expect(TONGUESHARE(column(null, 0), column(null, 0), one(14), one(4200), one(12))).toEqual([[12]]);
    expect(TONGUESHARE(one(null), one(null), one(14))).toEqual([[refused("#N/A", /weight of trailer and load/)]]);
  });

  it("refuse a sling under 30 degrees, and a missing angle", () => {
    expect(SLINGLEG(one(2000), one(29))).toEqual([[refused("#N/A", /from the horizontal.*30 to 90, got 29/)]]);
    expect(SLINGLEG(one(2000), one(0))).toEqual([[refused("#VALUE!", /^angle: /)]]);
    expect(SLINGLEG(one(2000), one(30))[0]![0]).toBeCloseTo(2000, 9);
  });

  it("count two legs of four unless told that all share", () => {
    expect(SLINGLEG(one(4000), one(90), one(4))).toEqual([[2000]]);
    expect(SLINGLEG(one(4000), one(90), one(4), one(true))).toEqual([[1000]]);
    expect(SLINGLEG(one(4000), one(90), one(2.5))).toEqual([[refused("#VALUE!", /^legs: /)]]);
  });
});
