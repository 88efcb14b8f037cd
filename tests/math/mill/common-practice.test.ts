import { describe, expect, it } from "vitest";
import { bandBendingPsi, bandStressPsi, bandStretchIn } from "../../../src/math/mill/band";
import { sawPowerHp } from "../../../src/math/mill/power";
import { rowsOf } from "../../csv";

/*
 * Rules of the trade without a source (common_practice_no_source.csv). They are no check of a formula: they show that
 * its answers lie where a sawyer expects them.
 */
describe("answers lie where common practice, no source, expects them", () => {
  it("never calling a row of the list published", () => {
    const rows = rowsOf("mill/common_practice_no_source.csv");
    expect(rows).toHaveLength(10);
    for (const { item, status } of rows)
      expect(status, item).toMatch(/no source|from memory|not verified|arithmetic only|use a user input/i);
  });

  it("a pull of 2,500 lbf on a 1 1/2 x 0.045 in band is some 18,500 psi, 0.0062 in on 10 in", () => {
    const stressPsi = bandStressPsi({ strainLbf: 2500, widthIn: 1.5, thicknessIn: 0.045 });
    expect(stressPsi).toBeGreaterThan(18400);
    expect(stressPsi).toBeLessThan(18600);
    expect(bandStretchIn({ stressPsi, gaugeIn: 10 })).toBeCloseTo(0.0062, 4);
  });

  it("a wheel a thousand times as thick as the band bends it to 30,000 psi, the rule being from memory", () => {
    expect(bandBendingPsi({ thicknessIn: 0.042, wheelIn: 42 })).toBeCloseTo(30000, -2);
  });

  it("15 to 60 MPa, from memory, are 0.0055 to 0.022 hp for each cubic inch a minute", () => {
    const hp = (megapascals: number) =>
      sawPowerHp({ kerfIn: 0.5, depthIn: 2, feedFpm: 1 / 12, energyPsi: megapascals * 145.038 });
    expect(hp(15)).toBeCloseTo(0.0055, 4);
    expect(hp(60)).toBeCloseTo(0.022, 3);
  });
});
