import { describe, expect, it } from "vitest";
import { breretonVolume } from "../../../src/math/logs/brereton";
import { huberVolume, smalianVolume } from "../../../src/math/logs/cubic";
import { doyleBoardFeet } from "../../../src/math/logs/doyle";
import { hoppusVolume } from "../../../src/math/logs/hoppus";
import { jasCubicMeters } from "../../../src/math/logs/jas";
import { overrunPercent } from "../../../src/math/logs/net-scale";
import { scalingDiameterIn } from "../../../src/math/logs/scaling-diameter";
import { CM_PER_IN, M_PER_FT } from "../../../src/math/units";
import { rowsOf } from "../../csv";
import { printedValuesOf } from "../../printed";

const checked = printedValuesOf("Log volumes, overrun and scaling");

describe("published worked figures", () => {
  const figures = rowsOf("logs/cubic_and_misc_worked_examples.csv");
  const answers: Record<string, (inputs: string) => [answer: number, tolerance: number]> = {
    // printed with 0.785 for pi / 4 = 0.7854, so a twentieth of a percent is allowed
    huber: () => [huberVolume({ middleIn: 40 / CM_PER_IN, lengthFt: 10 / M_PER_FT, unit: "m3" }), 1.256 * 0.0006],
    smalian: () => [
      smalianVolume({ smallIn: 12 / CM_PER_IN, largeIn: 20 / CM_PER_IN, lengthFt: 6 / M_PER_FT, unit: "m3" }),
      0.0005,
    ],
    brereton_metric: () => [
      breretonVolume({ smallIn: 60 / CM_PER_IN, largeIn: 60 / CM_PER_IN, lengthFt: 12 / M_PER_FT, unit: "m3" }),
      0.0005,
    ],
    // the whole meters that the taper came from, worked back from the volume of a 60-cm log
    jas_under_6m: () => {
      const m3 = jasCubicMeters({ diameterIn: 60 / CM_PER_IN, lengthFt: 7.6 / M_PER_FT });
      return [2 * (Math.sqrt((m3 * 10_000) / 7.6) - 60) + 4, 0.02]; // V has three decimals
    },
    doyle: () => [doyleBoardFeet({ diameterIn: 20, lengthFt: 10 }), 0],
    // a quarter girth of 12 in over 1 ft is 1 hoppus foot
    hoppus_m3: () => [1 / hoppusVolume({ girthIn: 48, lengthFt: 1, unit: "m3" }), 5e-7],
    hoppus_ft: (inputs) =>
      inputs.endsWith("m3")
        ? [hoppusVolume({ girthIn: 48, lengthFt: 1, unit: "m3" }), 0.00001] // printed 0.03605, cut from 0.036054
        : [hoppusVolume({ girthIn: 48, lengthFt: 1, unit: "ft3" }), 0.0005],
  };

  it.each(figures)("$rule: $inputs is $published ($source)", ({ rule, inputs, published }) => {
    const [answer, tolerance] = answers[rule!]!(inputs!);
    checked();
    expect(Math.abs(answer - Number(published))).toBeLessThanOrEqual(tolerance);
  });

  it.each([
    [145, 100, 45, "Fahey and Martin 1975, recovery ratio 145 %"],
    [123, 100, 23, "Fahey and Martin 1975, recovery ratio 123 %"],
    [201163, 209910, -4.2, "Grantham 1953, tally 201,163 bf against 209,910 bf"],
    [150, 100, 50, "Black Hills study: 150 % recovery is 50 % overrun"],
  ])("overrun of %d sawn on %d scaled is %d percent (%s)", (sawnBf, scaledBf, percent) => {
    checked();
    expect(Math.abs(overrunPercent({ sawnBf, scaledBf }) - percent)).toBeLessThan(0.05);
  });

  it("halves 8 and 13 to 10, as the Idaho contest rules do", () => {
    checked();
    expect(scalingDiameterIn({ diametersIn: [8, 13], rounding: "nearest" })).toBe(10);
  });
});
