import { describe, expect, it } from "vitest";
import { lumberRecovery } from "../../../src/math/sawing/recovery";
import { sawMinutes } from "../../../src/math/sawing/saw-time";

describe("minutes at the mill and recovery", () => {
  it("are plain arithmetic", () => {
    expect(sawMinutes({ cuts: 20, lengthFt: 12, feedFpm: 24, handlingMin: 1.5 })).toBe(40);
    const run = { cuts: 20, lengthFt: 12, feedFpm: 24, handlingMin: 1 };
    expect(() => sawMinutes({ ...run, cuts: -1 })).toThrow("cuts");
    expect(() => sawMinutes({ ...run, lengthFt: -1 })).toThrow("length (ft)");
    expect(() => sawMinutes({ ...run, feedFpm: 0 })).toThrow("feed");
    expect(() => sawMinutes({ ...run, handlingMin: -1 })).toThrow("handling (min a cut)");
  });

  it("count nominal board feet: 7.5 a cubic foot where 53 % of the cube was recovered (PNW-300)", () => {
    const recovered = lumberRecovery({ boardFeet: 7500, cubicFeet: 1000 });
    expect(recovered).toBe(7.5);
    // solid wood alone would be 12 x 0.53 = 6.36
    expect(recovered).toBeGreaterThan(12 * 0.53);
    expect(() => lumberRecovery({ boardFeet: 1, cubicFeet: 0 })).toThrow("cubic feet");
    expect(() => lumberRecovery({ boardFeet: -1, cubicFeet: 1 })).toThrow("board feet");
  });
});
