import { describe, expect, it } from "vitest";
import { hardwoodThicknessIn } from "../../../src/math/boards/hardwood-thickness";
import { HARDWOOD_THICKNESSES, HARDWOOD_THICKNESS_TOTALS } from "../../../src/math/boards/hardwood-thickness.table";
import { rowsOf } from "../../csv";

const hardwood = rowsOf("trade/hardwood_thickness.csv");

/** Inches written as 1 1/4; nothing where the cell is empty or from memory. */
function inchesIn(written: string | undefined): number | undefined {
  if (!written || written.includes("memory")) return undefined;
  return written.split(" ").reduce((sum, part) => {
    const [top = "", bottom = "1"] = part.split("/");
    return sum + Number(top) / Number(bottom);
  }, 0);
}

describe("the table of hardwood thicknesses, whole", () => {
  it.each(hardwood)("$rough_in in surfaces to what is printed and keeps what kiln-dried stock must", (row) => {
    const thicknessIn = inchesIn(row.rough_in)!;
    expect(hardwoodThicknessIn({ thicknessIn, state: "nominal" })).toBe(Number(row.rough_decimal));
    expect(hardwoodThicknessIn({ thicknessIn, state: "kiln-dried" })).toBe(Number(row.kd_rough_minimum_in));
    for (const [state, column] of [
      ["surfaced", "s2s_in"],
      ["surfaced one side", "s1s_in"],
    ] as const) {
      const printed = inchesIn(row[column]);
      if (printed === undefined)
        expect(() => hardwoodThicknessIn({ thicknessIn, state })).toThrow("no figure was found in print");
      else expect(hardwoodThicknessIn({ thicknessIn, state })).toBe(printed);
    }
  });

  it("has its quarters in step with its inches, and its totals", () => {
    for (const { quarters, nominalIn } of HARDWOOD_THICKNESSES)
      if (quarters) expect(inchesIn(quarters)).toBe(nominalIn);
    for (const column of ["nominalIn", "surfacedOneSideIn", "surfacedTwoSidesIn"] as const) {
      const sum = HARDWOOD_THICKNESSES.reduce((total, row) => total + (row[column] ?? 0), 0);
      expect(sum).toBe(HARDWOOD_THICKNESS_TOTALS[column]);
    }
    expect(HARDWOOD_THICKNESSES).toHaveLength(hardwood.length);
  });

  it("does not let the remembered figure of 10/4 pose as a printed one", () => {
    expect(() => hardwoodThicknessIn({ thicknessIn: 2.5, state: "surfaced" })).toThrow("from memory 2.25");
    expect(() => hardwoodThicknessIn({ thicknessIn: 2.5, state: "surfaced one side" })).toThrow(/in print$/);
  });
});

describe("a hardwood thickness", () => {
  const kilnDried = (thicknessIn: number) => hardwoodThicknessIn({ thicknessIn, state: "kiln-dried" });

  it("kiln-dried may be 1/16 scant from 3/8 to 1 3/4 in and 1/8 scant from 2 in, with no rule between", () => {
    expect(kilnDried(3 / 8)).toBe(3 / 8 - 1 / 16);
    expect(kilnDried(1.75)).toBe(1.6875);
    expect(kilnDried(2)).toBe(1.875);
    for (const thicknessIn of [0.37, 1.76, 1.99])
      expect(() => kilnDried(thicknessIn)).toThrow("wanted nominal 3/8 to 1 3/4");
  });

  it("that the table does not have is refused with the ones it has", () => {
    expect(() => hardwoodThicknessIn({ thicknessIn: 1.3, state: "surfaced" })).toThrow(
      "3/8, 1/2, 5/8, 3/4, 4/4, 5/4, 6/4",
    );
  });
});
