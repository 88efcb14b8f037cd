import { describe, expect, it } from "vitest";
import {
  BOARDCOST,
  BREAKEVENFEET,
  DRIEDTALLY,
  HAULCOST,
  LINEAMOUNT,
  LISTPRICE,
  LOGBID,
  MARGIN,
  PARTNERSHARE,
  SAWFEE,
} from "../../src/functions/money";
import { column, messageOf, refused } from "./sheet";

describe("a price list", () => {
  it("spills a price a row for one margin, and 0 for rows without a cost", () => {
    expect(LISTPRICE(column(6, 3, null), [[0.4]])).toEqual(column(10, 5, 0));
  });

  it("takes a margin as percent or as a share, and refuses all of the price", () => {
    for (const margin of [40, 0.4, "40%"]) expect(LISTPRICE([[6]], [[margin]])).toEqual([[10]]);
    for (const margin of [100, 1, "100%", 120])
      expect(LISTPRICE([[6]], [[margin]])[0]![0]).toMatchObject({ error: "#N/A" });
  });

  it("sells nothing at cost for want of a margin", () => {
    for (const missing of [null, 0, ""])
      expect(LISTPRICE([[6]], [[missing]])).toEqual([[refused("#VALUE!", /^margin: wanted a value/)]]);
    expect(LISTPRICE([[6]], [["0%"]])).toEqual([[6]]);
    expect(LISTPRICE(column(6, null), column(40, null))).toEqual(column(10, 0));
  });

  it("refuses a cost below 0", () => expect(LISTPRICE([[-6]], [[40]])[0]![0]).toMatchObject({ error: "#VALUE!" }));

  it("has more than the whole price left where you were paid to take the log", () => {
    expect(MARGIN([[10]], [[-2]])).toEqual([[1.2]]);
  });

  it("does not take a missing cost for a margin of everything", () => {
    expect(messageOf(MARGIN([[10]], [[null]]))).toMatch(/^cost: /);
  });
});

describe("a log", () => {
  it("may have come with a fee: its cost is below 0", () => {
    expect(BOARDCOST([[-50]], [[60]], [[3]], [[40]], [[null]], [[260]])).toEqual([[0.5]]);
    expect(messageOf(BOARDCOST([[120]], [[-60]], [[3]], [[40]], [[60]], [[400]]))).toMatch(/^haul: /);
  });

  it("that costs more than its lumber brings gets a bid below 0", () => {
    expect(LOGBID([[100]], [[4]], [[450]])).toEqual([[-50]]);
  });

  it("has no bid while its costs are missing", () =>
    expect(messageOf(LOGBID([[100]], [[4]], [[null]]))).toMatch(/^costs: /));
});

describe("money without board feet", () => {
  const blank = [[null]];

  it("has no cost a foot, and never one of 0", () => {
    expect(BOARDCOST([[120]], [[60]], [[3]], [[40]], [[60]], blank)[0]![0]).toMatchObject({ error: "#N/A" });
    expect(messageOf(HAULCOST([[60]], [[1.5]], [[3]], [[30]], blank))).toMatch(/^board feet: wanted more than 0/);
  });
});

describe("an unfilled row", () => {
  const blank = [[null]];

  it("answers 0 beside rates that stand for the whole column", () => {
    expect(BOARDCOST(blank, blank, blank, [[40]], blank, blank)).toEqual([[0]]);
    expect(HAULCOST(blank, [[1.5]], blank, [[30]], blank)).toEqual([[0]]);
  });

  it("answers 0", () => {
    expect(BOARDCOST(blank, blank, blank, blank, blank, blank)).toEqual([[0]]);
    expect(SAWFEE(blank, [[0.55]])).toEqual([[0]]);
    expect(LINEAMOUNT(blank, blank)).toEqual([[0]]);
    expect(BREAKEVENFEET(blank, blank, blank)).toEqual([[0]]);
    expect(PARTNERSHARE(blank, blank, blank)).toEqual([[0]]);
  });
});

describe("an invoice", () => {
  it("adds up line by line, with a return among them", () => {
    const lines = LINEAMOUNT(column(79.06, 82.34, 1.5, -1), column(6.5, 6.5, 85, 6.5)).flat() as number[];
    expect(lines).toEqual([513.89, 535.21, 127.5, -6.5]);
    expect(lines.reduce((sum, line) => sum + line, 0)).toBeCloseTo(1170.1, 9);
  });

  it("refuses a line that lacks its price", () => expect(messageOf(LINEAMOUNT([[3]], [[null]]))).toMatch(/^price: /));

  it("refuses sawn feet without a rate", () => {
    expect(SAWFEE([[312]], [[null]])[0]![0]).toMatchObject({ error: "#N/A" });
  });
});

describe("a kiln charge", () => {
  it("keeps 93 of 100 feet unless told otherwise", () => {
    expect(DRIEDTALLY([[1000]])[0]![0]).toBeCloseTo(930, 9);
    expect(DRIEDTALLY([[1000]], [["8%"]])[0]![0]).toBeCloseTo(920, 9);
  });
});

describe("partners", () => {
  it("who laid nothing out are lined up with their shares all the same", () => {
    const table = PARTNERSHARE([[1000]], column(300, null), column(1, 1));
    expect(table.slice(1, 3)).toEqual([
      ["partner 1", 300, 350, 650],
      ["partner 2", 0, 350, 350],
    ]);
  });

  it("without a share are asked for it by their row", () => {
    expect(messageOf(PARTNERSHARE([[1000]], column(300, 100), column(1, null)))).toMatch(/shares.*row 2/);
  });
});
