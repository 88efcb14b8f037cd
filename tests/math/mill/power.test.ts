import { describe, expect, it } from "vitest";
import { motorAmps, sawPowerHp, torqueLbfFt } from "../../../src/math/mill/power";
import { rowsOf } from "../../csv";

describe("power", () => {
  it("of a cut is its energy times the wood removed: 396,000 psi on 1 in3 a minute is 1 hp", () => {
    expect(sawPowerHp({ kerfIn: 0.1, depthIn: 10, feedFpm: 1 / 12, energyPsi: 396000 })).toBeCloseTo(1, 12);
  });

  it("of a cut in metric: 30 MPa, 2 mm kerf, 600 mm deep, 6 m/min takes 3.6 kW", () => {
    // 0.002 m x 0.6 m x 0.1 m/s = 0.00012 m3/s, times 30e6 J/m3; a horsepower is 745.7 W.
    const hp = sawPowerHp({ kerfIn: 2 / 25.4, depthIn: 600 / 25.4, feedFpm: 6 / 0.3048, energyPsi: 30 * 145.03774 });
    expect(hp * 0.7456999).toBeCloseTo(3.6, 5);
  });

  it("of 10 hp at 1,750 rpm is a torque of 30.0 lbf ft (answer from memory)", () => {
    expect(torqueLbfFt({ powerHp: 10, rpm: 1750 })).toBeCloseTo(30.0, 1);
  });

  it("of 1 hp at 5,252 rpm is 1 lbf ft, the handbooks' round figure for 33,000 / 2 pi", () => {
    expect(torqueLbfFt({ powerHp: 1, rpm: 5252 })).toBeCloseTo(1, 4);
  });

  it("has no torque on a standing shaft", () => {
    expect(() => torqueLbfFt({ powerHp: 10, rpm: 0 })).toThrow("shaft speed (rpm)");
  });
});

describe("the current of a three-phase motor", () => {
  it("of 10 hp at 230 V, efficiency and power factor whole, is 7,460 W over 398.4 V: 18.73 A", () => {
    expect(motorAmps({ powerHp: 10, volts: 230, efficiencyPercent: 100, powerFactorPercent: 100 })).toBeCloseTo(
      18.73,
      2,
    );
  });

  it("comes within 10 % of the electrical code's table from 5 to 50 hp, a band of sense: the table is what wiring goes by", () => {
    const larger = rowsOf("mill/nec_430_250_three_phase.csv").filter(({ hp }) => Number(hp) >= 5);
    const cells = larger.flatMap((row) =>
      [208, 230, 460, 575].map((volts) => ({ powerHp: Number(row["hp"]), volts, printed: Number(row[`${volts}V`]) })),
    );
    expect(cells).toHaveLength(36);
    for (const { powerHp, volts, printed } of cells) {
      const ratio = motorAmps({ powerHp, volts }) / printed;
      expect(ratio, `${powerHp} hp at ${volts} V`).toBeGreaterThan(0.9);
      expect(ratio, `${powerHp} hp at ${volts} V`).toBeLessThan(1.1);
    }
  });

  it("under 5 hp is not told by the usual figures, which fall up to two fifths short of the table there", () => {
    const own = { efficiencyPercent: 75, powerFactorPercent: 70 };
    expect(motorAmps({ powerHp: 5, volts: 230 })).toBeGreaterThan(13);
    expect(motorAmps({ powerHp: 2, volts: 230, ...own })).toBeGreaterThan(5);
    for (const given of [{}, { efficiencyPercent: 75 }, { powerFactorPercent: 70 }])
      expect(() => motorAmps({ powerHp: 4.9, volts: 230, ...given })).toThrow(
        "motor (hp) without its own efficiency and power factor: wanted 5 or more, got 4.9",
      );
  });

  it("has no answer without volts, nor for shares over the whole", () => {
    expect(() => motorAmps({ powerHp: 10, volts: 0 })).toThrow("line voltage (V)");
    expect(() => motorAmps({ powerHp: 10, volts: 230, efficiencyPercent: 120 })).toThrow(
      "motor efficiency (%): wanted more than 0, up to 100, got 120",
    );
    expect(() => motorAmps({ powerHp: 10, volts: 230, powerFactorPercent: 0 })).toThrow("power factor (%)");
  });
});
