import { describe, expect, it } from "vitest";
import { dressedSize } from "../../../src/functions/boards/dressed-size-answer";
import { DRESSED_THICKNESSES, DRESSED_TOTALS, DRESSED_WIDTHS } from "../../../src/math/boards/softwood-sizes.table";
import { rowsOf } from "../../csv";

const softwood = rowsOf("trade/softwood_sizes.csv");

/** Inches written as 1 1/4; nothing where the cell is empty or from memory. */
function inchesIn(written: string | undefined): number | undefined {
  if (!written || written.includes("memory")) return undefined;
  return written.split(" ").reduce((sum, part) => {
    const [top = "", bottom = "1"] = part.split("/");
    return sum + Number(top) / Number(bottom);
  }, 0);
}

describe("the table of dressed softwood, whole", () => {
  const sides = softwood.filter(({ kind }) => kind === "thickness" || kind === "width");

  it.each(sides)("$kind of nominal $nominal_in in", ({ kind, nominal_in, dressed_dry_in, status_dry }) => {
    const part = kind as "thickness" | "width";
    const side = inchesIn(nominal_in)!;
    const nominal = part === "thickness" ? { thicknessIn: side, widthIn: 6 } : { thicknessIn: 2, widthIn: side };
    const seen = status_dry!.startsWith("seen");
    if (seen) expect(dressedSize({ nominal, part })).toBe(inchesIn(dressed_dry_in));
    else expect(() => dressedSize({ nominal, part })).toThrow(`from memory ${inchesIn(dressed_dry_in)}`);
    const both = dressedSize({ nominal }) as string;
    const dressed = both.split(" x ")[part === "thickness" ? 0 : 1]!;
    expect(dressed).toBe(`${dressed_dry_in!.replace(" ", "-")}${seen ? "" : " (from memory)"}`);
  });

  it("has its totals", () => {
    const sum = (rows: readonly { dressedIn: number }[]) => rows.reduce((total, row) => total + row.dressedIn, 0);
    expect(sum(DRESSED_THICKNESSES)).toBe(DRESSED_TOTALS.thicknessIn);
    expect(sum(DRESSED_WIDTHS)).toBe(DRESSED_TOTALS.widthIn);
    expect(DRESSED_THICKNESSES.length + DRESSED_WIDTHS.length).toBe(sides.length);
  });

  it("takes 1/2 in off timbers of 5 and 6 in, 3/4 off 7 to 15, 1 in off 16 and up (PS 20-05)", () => {
    const off = (nominalIn: number) =>
      nominalIn - (dressedSize({ nominal: { thicknessIn: 5, widthIn: nominalIn }, part: "width" }) as number);
    expect([5, 6, 7, 15, 16, 24].map(off)).toEqual([1 / 2, 1 / 2, 3 / 4, 3 / 4, 1, 1]);
    const rules = softwood.filter(
      ({ kind, status_dry }) => kind!.startsWith("timber") && status_dry!.startsWith("seen"),
    );
    expect(rules.map((rule) => inchesIn(/up to (\S+) smaller/.exec(rule.dressed_dry_in!)![1]))).toEqual([
      1 / 2,
      3 / 4,
      1,
    ]);
  });
});

describe("a nominal size", () => {
  it.each([
    [2, 7],
    [7, 2],
    [6, 2],
    [5, 5.5],
    [4, 16],
  ])("of %d by %d in is not in the standard", (thicknessIn, widthIn) => {
    expect(() => dressedSize({ nominal: { thicknessIn, widthIn } })).toThrow(/^nominal (?:thickness|width|side)/);
  });

  it("with the width first is told that the thickness stands first", () => {
    expect(() => dressedSize({ nominal: { thicknessIn: 6, widthIn: 4 } })).toThrow("the thickness stands first");
  });

  it("from memory is named by its fractions", () => {
    expect(() => dressedSize({ nominal: { thicknessIn: 1.25, widthIn: 6 }, part: "thickness" })).toThrow(
      "thickness of 1-1/4x6 (in)",
    );
  });
});
