import { describe, expect, it } from "vitest";
import { driveHertz, motorRpm } from "../../../src/math/mill/motor";
import { pulleyRpm } from "../../../src/math/mill/pulleys";
import { rimSpeedFpm } from "../../../src/math/mill/rim";

describe("a motor on a drive", () => {
  it("of 4 poles with 1750 on its plate turns at 1150 rpm on 40 Hz (answer from memory), 50 less than its field", () => {
    expect(motorRpm({ hertz: 40, poles: 4, nameplateRpm: 1750 })).toBe(1150);
  });

  it("of 4 poles and 5 % slip turns at 855 rpm on 30 Hz (practice problem), by the plate it would have there", () => {
    expect(motorRpm({ hertz: 30, poles: 4, nameplateRpm: 0.95 * 900, baseHertz: 30 })).toBeCloseTo(855, 9);
  });

  it("loses the same turns at every frequency", () => {
    for (const hertz of [10, 30, 60, 90])
      expect(motorRpm({ hertz, poles: 4 }) - motorRpm({ hertz, poles: 4, nameplateRpm: 1750 })).toBeCloseTo(50, 9);
  });

  it("of a European plate, 1440 at 50 Hz, turns at its plate's speed there", () => {
    expect(motorRpm({ hertz: 50, poles: 4, nameplateRpm: 1440, baseHertz: 50 })).toBe(1440);
  });

  it.each([0, 1, 3, 2.5, -4])("has no %s poles", (poles) => {
    expect(() => motorRpm({ hertz: 60, poles })).toThrow(`motor poles: wanted an even number, 2 or more, got ${poles}`);
  });

  it("stands still under the frequency of its slip: 50 rpm of 4 poles are 1 2/3 Hz", () => {
    expect(() => motorRpm({ hertz: 5 / 3, poles: 4, nameplateRpm: 1750 })).toThrow("wanted more than 1.66");
    expect(motorRpm({ hertz: 1.7, poles: 4, nameplateRpm: 1750 })).toBeCloseTo(1, 9);
    expect(() => motorRpm({ hertz: 0, poles: 4 })).toThrow("drive frequency (Hz)");
  });

  it("takes a plate speed of 85 to 100 % of its field, which no motor of more poles has, nor one for 50 Hz", () => {
    expect(motorRpm({ hertz: 60, poles: 4, nameplateRpm: 1800 })).toBe(1800);
    expect(motorRpm({ hertz: 60, poles: 4, nameplateRpm: 1530 })).toBe(1530);
    expect(() => motorRpm({ hertz: 60, poles: 4, nameplateRpm: 1801 })).toThrow("wanted 1530 to 1800, got 1801");
    expect(() => motorRpm({ hertz: 60, poles: 4, nameplateRpm: 1529 })).toThrow("wanted 1530 to 1800, got 1529");
    // The fastest plate of 4 poles for 50 Hz, where the base was left at 60
    expect(() => motorRpm({ hertz: 50, poles: 4, nameplateRpm: 1490 })).toThrow("4 poles at a base of 60 Hz");
    expect(() =>
      driveHertz({ speedFpm: 5000, wheelIn: 36, driverIn: 6, drivenIn: 18, poles: 2, nameplateRpm: 1750 }),
    ).toThrow("nameplate speed (rpm) of 2 poles at a base of 60 Hz");
  });

  it("drives a 36 in wheel's band at 5000 fpm through 6 and 18 in pulleys on 54.72 Hz, worked by hand", () => {
    // 5000 * 12 / (36 pi) = 530.52 rpm of the wheel, 1591.55 of the motor, 1641.55 of the field, times 4 / 120
    const hertz = driveHertz({ speedFpm: 5000, wheelIn: 36, driverIn: 6, drivenIn: 18, poles: 4, nameplateRpm: 1750 });
    expect(hertz).toBeCloseTo(54.718, 3);
    expect(() => driveHertz({ speedFpm: 5000, wheelIn: 36, driverIn: 0, drivenIn: 18, poles: 4 })).toThrow(
      "motor pulley (in)",
    );
  });

  it("drives a slipping belt faster: back through motor, belt and wheel comes the band speed asked for", () => {
    const drive = { driverIn: 6, drivenIn: 18, slipPercent: 2 };
    const plate = { poles: 4, nameplateRpm: 1750 };
    const hertz = driveHertz({ speedFpm: 5000, wheelIn: 36, ...drive, ...plate });
    // 1591.55 rpm of the motor over 0.98 are 1624.03, and 1674.03 of the field
    expect(hertz).toBeCloseTo(55.801, 3);
    const wheelRpm = pulleyRpm({ rpm: motorRpm({ hertz, ...plate }), ...drive });
    expect(rimSpeedFpm({ diameterIn: 36, rpm: wheelRpm })).toBeCloseTo(5000, 9);
    expect(() => driveHertz({ speedFpm: 5000, wheelIn: 36, ...drive, ...plate, slipPercent: 21 })).toThrow(
      "belt slip (%): wanted 0 to 20, got 21",
    );
  });
});
