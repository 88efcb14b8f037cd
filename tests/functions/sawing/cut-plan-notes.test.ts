import { describe, expect, it } from "vitest";
import { readCatalog } from "../../../src/catalog/read-catalog";
import { CUTPLAN } from "../../../src/functions/sawing";
import { messageOf, one, under, type Cell } from "../sheet";
import { log, plan, PRICED, yieldOf, type Settings } from "./planned";

describe("the page of CUTPLAN", () => {
  const { params, remarks } = readCatalog().find(({ name }) => name === "CUTPLAN")!;
  const { settings = [] } = params.find(({ name }) => name === "settings")!;
  const known = /known: ([^)]*)/.exec(messageOf(CUTPLAN(...log({ "no such": 1 }))))![1]!.split(", ");

  it("names every setting that is known, each with a sentence, and what holds where it is left out", () => {
    expect(settings.map(({ name }) => name)).toEqual(known);
    expect(known).toHaveLength(29);
    for (const { name, text, default: usual, otherwise } of settings) {
      expect(text, name).toMatch(/^[A-Z].*\.$/);
      expect(usual ?? otherwise, name).toBeDefined();
    }
    for (const remark of remarks) expect(remark.length, remark).toBeLessThan(800);
  });

  it("gives the usual value of a setting as it is: the plan is the same with it as without", () => {
    const pattern = { "ring angle": "quarter", "cant offset": "cant" } as Record<string, string>;
    for (const { name, default: usual } of settings) {
      if (usual === undefined) continue;
      const cant = { "cant widths": "6, 8", sweep: name === "crown" ? 2 : null };
      const sawn = pattern[name] ?? "live";
      expect(yieldOf({ ...cant, [name]: String(usual) }, sawn, PRICED), name).toBe(yieldOf(cant, sawn, PRICED));
    }
  });
});

describe("a plan without a board", () => {
  const why = (settings: Settings) => /^(no length|no width|none of).*/m.exec(plan(settings).notes)?.[0];

  it("says whether lengths, widths or the log itself forbid it", () => {
    expect(why({ "minimum length": 13 })).toMatch(/^no length goes into this log with its trim/);
    expect(why({ trim: 120 })).toMatch(/^no length/);
    expect(why({ "minimum width": 10, "maximum width": 8 })).toMatch(/^no width goes into this log/);
    expect(why({ widths: "30, 40" })).toMatch(/^no width/);
    expect(plan({}, "live", one(24)).notes).toMatch(/^none of these products/m);
    expect(why({})).toBeUndefined();
  });

  it("leaves the shim of slabs standing where a sweep is given, which slabs make no use of", () => {
    expect(plan({ sweep: 3 }, "slab").notes).toMatch(/raise the small end/);
    expect(plan({ sweep: 3 }).notes).not.toMatch(/raise the small end/);
  });
});

describe("a setting that changes nothing", () => {
  const unused = (...asked: Parameters<typeof plan>) =>
    /not used for this plan, pattern \w+: (.*)/.exec(plan(...asked).notes)?.[1];

  it("is named under the plan, so that nobody counts on it", () => {
    expect(unused()).toBeUndefined();
    expect(unused({ rip: "no" }, "slab")).toBeUndefined();
    expect(unused({ heart: 3, "cant widths": 6 })).toBe("cant widths, heart");
    expect(unused({ crown: "side" })).toBe("crown");
    expect(unused({ "rip kerf": 0.25 })).toBe("rip kerf");
    expect(unused({ widths: "4, 8", "minimum width": 6 })).toBe("minimum width");
    expect(unused({ wane: 0.25, "minimum width": 8 }, "slab")).toBe("wane");
    expect(unused({ wane: 0.25 }, "quarter")).toBe("wane");
    expect(unused({}, "live", PRICED)).toMatch(/prices/);
  });
});

describe("a bed that the blade cannot reach", () => {
  const planned = (pattern: string, ...rows: Cell[][]) =>
    CUTPLAN(one(24), one(10), one("4/4"), one(0.125), one(pattern), rows) as Cell[][];
  const notes = (pattern: string, ...rows: Cell[][]) => under(planned(pattern, ...rows), "note").join();

  it("ends a live plan above the clearance, and is said for narrow cants and for quarters", () => {
    const table = planned("live", ["bed clearance", 5]);
    const end = table.findIndex((row) => row[0] === "total");
    expect(table[end - 1]![1] as number).toBeGreaterThanOrEqual(5);
    expect(notes("cant", ["cant widths", "4, 8"], ["bed clearance", 5])).toMatch(
      /narrower than the bed clearance of 5 in/,
    );
    expect(notes("cant", ["cant widths", "6, 8"], ["bed clearance", 5])).not.toMatch(/narrower/);
    expect(notes("quarter", ["bed clearance", 5])).toMatch(/blade goes no lower than 5 in/);
  });
});
