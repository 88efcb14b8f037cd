import { describe, expect, it } from "vitest";
import { keepRefusal, lastRefusals } from "../../../src/hosts/excel/refusals";

const bad = (message: string) => ({ error: "#N/A", message });

describe("the refusals that the pane tells", () => {
  it("are those of calls that were refused, shortened, the newest first", () => {
    keepRefusal("LOGSCALE", [[[20]], [[12]], [[null]]], [[240]]);
    expect(lastRefusals()).toEqual([]);
    keepRefusal("LOGSCALE", [[[3]], [[12]], [["Doyle"]], [[null]]], [[bad("too thin")]]);
    keepRefusal("LOGSCALE", [[[20], [3], [2]], [[12]]], [[240], [bad("too thin")], [bad("thinner still")]]);
    expect(lastRefusals()).toEqual([
      { name: "LOGSCALE", given: "3 × 1 cells, 12", error: "#N/A", message: "too thin", rows: 2 },
      { name: "LOGSCALE", given: '3, 12, "Doyle"', error: "#N/A", message: "too thin", rows: 1 },
    ]);
  });

  it("are a hundred at most", () => {
    for (let i = 0; i < 150; i++) keepRefusal("EMC", [[[i]]], [[bad(`message ${i}`)]]);
    expect(lastRefusals()).toHaveLength(100);
    expect(lastRefusals()[0]!.message).toBe("message 149");
  });
});
