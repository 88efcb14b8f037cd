import { describe, expect, it } from "vitest";
import { rowsOf } from "../../csv";
import { printedValuesOf } from "../../printed";
import { BAND } from "./worked-examples/band";
import { BELTS, CHAINS, MOTORS_AND_PULLEYS } from "./worked-examples/drives";
import { LOADS } from "./worked-examples/loads";
import { SCREWS } from "./worked-examples/screws";
import { STEEL } from "./worked-examples/steel";

const checked = printedValuesOf("Mill and haul");

/**
 * How each kind of row of worked_examples.csv is asked. The formulas do not mind the unit as long as it is the same
 * throughout, so a row in millimetres goes in as it stands. Where a book rounds pi or leaves the short form's last terms
 * out, the row's reading says so and undoes that, and the tolerance of the row stays as it is.
 */
const READINGS: Record<string, (...inputs: never[]) => number> = {
  ...MOTORS_AND_PULLEYS,
  ...BELTS,
  ...CHAINS,
  ...SCREWS,
  ...BAND,
  ...LOADS,
  ...STEEL,
};

/** Rows that Bole has no mill or haul function for, and why. */
const NOT_ANSWERED: Record<string, string> = {
  t_from_eff: "a ball screw by its efficiency: Bole's screws go by friction",
  limit360: "a building rule for floors; no limit of sag for a sawmill bed was found",
  sb: "sawing variation, checked with SAWVARIATION",
  st: "sawing variation, checked with SAWVARIATION",
  target: "target size, checked with TARGETSIZE",
  chord: "width of a cut, checked with CUTWIDTH",
};

/** So that a difference of exactly half the last printed digit passes. */
const LAST_BINARY_DIGITS = 1e-9;

describe("printed worked examples of mill and haul", () => {
  const printed = rowsOf("mill/worked_examples.csv");
  const answered = printed.filter(({ fn }) => !(fn! in NOT_ANSWERED));

  it("are all there: 134 rows, of which 6 are not for mill or haul", () => {
    expect(printed).toHaveLength(134);
    expect(printed.length - answered.length).toBe(6);
    expect(printed.filter(({ fn }) => !(fn! in READINGS) && !(fn! in NOT_ANSWERED))).toEqual([]);
  });

  it("each name a source that sources.csv describes", () => {
    const known = new Set(rowsOf("mill/sources.csv").map(({ key }) => key));
    expect(printed.filter(({ source }) => !known.has(source!))).toEqual([]);
  });

  it.each(answered)("$id, $source: $fn $inputs is $expected $unit", ({ fn, inputs, expected, tol_abs }) => {
    checked();
    const answer = READINGS[fn!]!(...(JSON.parse(inputs!) as never[]));
    expect(Math.abs(answer - Number(expected)), `answers ${answer}`).toBeLessThanOrEqual(
      Number(tol_abs) + LAST_BINARY_DIGITS,
    );
  });
});
