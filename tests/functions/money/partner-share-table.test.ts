import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { partnerShareTable as partnerShares } from "../../../src/functions/money/partner-share-table";

const gets = (receipts: number, paid: number[], shares: number[]) => {
  const table = partnerShares({ receipts, partners: paid.map((each, i) => ({ paid: each, share: shares[i]! })) });
  return table.slice(1).map((row) => row[3]);
};

describe("two partners", () => {
  it("get their own outlay back first, then their shares of the rest (invented year)", () => {
    expect(
      partnerShares({
        receipts: 7001.81,
        partners: [
          { paid: 2575.6, share: 0.6 },
          { paid: 1181.44, share: 0.4 },
        ],
      }),
    ).toEqual([
      ["who", "own outlay back", "share of the rest", "gets"],
      ["partner 1", 2575.6, 1946.86, 4522.46],
      ["partner 2", 1181.44, 1297.91, 2479.35],
      ["all", 3757.04, 3244.77, 7001.81],
    ]);
  });

  it("carry a loss in the same shares, and the heading says so", () => {
    const table = partnerShares({
      receipts: 300,
      partners: [
        { paid: 300, share: 1 },
        { paid: 100, share: 1 },
      ],
    });
    expect(table[0]?.[2]).toBe("share of the loss");
    expect(table.slice(1)).toEqual([
      ["partner 1", 300, -50, 250],
      ["partner 2", 100, -50, 50],
      ["all", 400, -100, 300],
    ]);
  });

  it("who laid out less than their part of the loss pay in", () => {
    expect(gets(0, [300, 0], [1, 1])).toEqual([150, -150, 0]);
  });

  it("share by proportion only", () => {
    const wanted = gets(1000, [10, 20], [60, 40]);
    expect(gets(1000, [10, 20], [0.6, 0.4])).toEqual(wanted);
    expect(gets(1000, [10, 20], [3, 2])).toEqual(wanted);
  });
});

describe("cents", () => {
  it("left over go to the largest remainders, at a tie to the earlier partner", () => {
    expect(gets(1, [0, 0, 0], [1, 1, 1])).toEqual([0.34, 0.33, 0.33, 1]);
    expect(gets(0.05, [0, 0], [1, 1])).toEqual([0.03, 0.02, 0.05]);
    expect(gets(1, [0, 0, 0], [1, 1, 4])).toEqual([0.17, 0.17, 0.66, 1]);
    expect(gets(1, [0, 0], [1, 199])).toEqual([0.01, 0.99, 1]);
  });

  it("add up to the receipts exactly, gain or loss", () => {
    const money = fc.integer({ min: 0, max: 1e9 }).map((cents) => cents / 100);
    const partner = fc.record({ paid: money, share: fc.double({ min: 0.01, max: 100, noNaN: true }) });
    fc.assert(
      fc.property(money, fc.array(partner, { minLength: 1, maxLength: 6 }), (receipts, partners) => {
        const lines = partnerShares({ receipts, partners }).slice(1);
        const cents = lines.map((line) => line.slice(1).map((each) => Math.round(Number(each) * 100)));
        const all = cents.pop()!;
        for (const column of [0, 1, 2]) expect(cents.reduce((sum, line) => sum + line[column]!, 0)).toBe(all[column]);
        expect(all[2]).toBe(Math.round(receipts * 100));
      }),
      { seed: 12 },
    );
  });

  it("are within one of the exact share", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1e8 }), fc.integer({ min: 1, max: 99 }), (receiptsCents, percent) => {
        const [first] = gets(receiptsCents / 100, [0, 0], [percent, 100 - percent]);
        expect(Math.abs(Number(first) * 100 - (receiptsCents * percent) / 100)).toBeLessThan(1);
      }),
      { seed: 12 },
    );
  });
});

describe("no answer", () => {
  it("without partners or shares", () => {
    expect(() => gets(100, [], [])).toThrow("shares of all partners");
    expect(() => gets(100, [5, 5], [0, 0])).toThrow("wanted more than 0, got 0");
  });

  it("beyond what can be counted in cents", () => {
    expect(() => gets(1e15, [0], [1])).toThrow("small enough to count in cents");
  });
});
