import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { screwHolds, screwPowerHp, screwRiseIn, screwTorqueLbfIn, threadShape } from "../../../src/math/mill/screw";

describe("a lift screw", () => {
  it("rises by starts times pitch a turn, and comes down by turns below zero", () => {
    expect(screwRiseIn({ turns: 10, pitchIn: 0.25 })).toBe(2.5);
    expect(screwRiseIn({ turns: -4, pitchIn: 0.25, starts: 2 })).toBe(-2);
  });

  it("of 32 mm, two starts of 4 mm, takes 26.18 N m up and 9.77 N m down (Shigley, Example 8-1, answers from memory)", () => {
    const screw = { loadLb: 6400, diameterIn: 32, pitchIn: 4, starts: 2, friction: 0.08 };
    const collar = (6400 * 0.08 * 40) / 2;
    expect(screwTorqueLbfIn(screw) + collar).toBeCloseTo(26180, -1);
    expect(screwTorqueLbfIn({ ...screw, direction: "down" }) + collar).toBeCloseTo(9770, -1);
  });

  it("of 52 mm, 8 mm pitch, lifts 2 kN on 61.838 W at 30 rpm with its collar (Bhandari, Example 6.6)", () => {
    // Trapezoidal thread, half angle 15 degrees; collar of 80 mm at 0.12. The book's turns were not seen: its power and
    // its efficiency of 12.937 % give 0.0040000 m/s, which is 30 rpm of 8 mm. N mm a minute are 1/60000 W.
    const thread = { loadLb: 2000, diameterIn: 52, pitchIn: 8, friction: 0.15 / Math.cos(Math.PI / 12) };
    const threadWatts = (screwPowerHp({ ...thread, riseInPerMin: 240 }) * 12 * 33000) / 60000;
    const collarWatts = (2 * Math.PI * 30 * ((2000 * 0.12 * 80) / 2)) / 60000;
    expect(threadWatts + collarWatts).toBeCloseTo(61.838, 3);
  });

  it("that holds by itself gives back at most half of the work (Housner and Hudson)", () => {
    const size = fc.double({ min: 0.3, max: 4, noNaN: true });
    const part = fc.double({ min: 0.02, max: 0.9, noNaN: true });
    const friction = fc.double({ min: 0.02, max: 0.5, noNaN: true });
    fc.assert(
      fc.property(size, part, fc.integer({ min: 1, max: 4 }), friction, (diameterIn, share, starts, mu) => {
        const thread = { diameterIn, pitchIn: diameterIn * share, starts, friction: mu };
        fc.pre(mu * threadShape(thread).slope < 1);
        const up = screwTorqueLbfIn({ loadLb: 1000, ...thread });
        const given = (1000 * starts * thread.pitchIn) / (2 * Math.PI);
        if (screwHolds(thread)) expect(given / up).toBeLessThanOrEqual(0.5);
        expect(screwTorqueLbfIn({ loadLb: 1000, ...thread, direction: "down" }) > 0).toBe(screwHolds(thread));
      }),
      { seed: 5, numRuns: 500 },
    );
  });

  it("spends the power of its torque at its turns: 300 a minute for 60 in of a 0.2 in pitch", () => {
    const screw = { loadLb: 1000, diameterIn: 1, pitchIn: 0.2 };
    const byTorque = (screwTorqueLbfIn(screw) * 300) / 63025;
    // 63,025 is the handbooks' round figure for 12 * 33,000 / (2 pi), which is 63,025.36.
    expect(screwPowerHp({ ...screw, riseInPerMin: 60 })).toBeCloseTo(byTorque, 4);
  });

  it("takes a friction of 0.15 when none is given, the one of Mott's and Bhandari's examples", () => {
    const screw = { loadLb: 1000, diameterIn: 1, pitchIn: 0.2 };
    expect(screwTorqueLbfIn(screw)).toBe(screwTorqueLbfIn({ ...screw, friction: 0.15 }));
    expect(screwHolds({ diameterIn: 1, pitchIn: 0.38 })).toBe(
      screwHolds({ diameterIn: 1, pitchIn: 0.38, friction: 0.15 }),
    );
  });

  it("as steep as friction is sticky cannot be raised, and the message says under which friction it can", () => {
    const screw = { loadLb: 1000, diameterIn: 1, pitchIn: 0.9, starts: 4 };
    const limit = 1 / threadShape(screw).slope;
    expect(screwTorqueLbfIn({ ...screw, friction: limit * 0.999 })).toBeGreaterThan(0);
    expect(() => screwTorqueLbfIn({ ...screw, friction: limit * 1.001 })).toThrow(
      "cannot be raised on a thread as steep as this: wanted less than 0.479966, got 0.480446",
    );
    expect(screwTorqueLbfIn({ ...screw, friction: limit * 1.001, direction: "down" })).toBeLessThan(0);
  });

  it("takes no friction above 1, which is a percent without its sign: 15 would hold any head up", () => {
    const screw = { diameterIn: 1, pitchIn: 0.2 };
    expect(screwHolds({ ...screw, friction: 1 })).toBe(true);
    for (const friction of [1.01, 15, 0])
      for (const ask of [screwHolds, (given: typeof screw) => screwTorqueLbfIn({ loadLb: 1000, ...given })])
        expect(() => ask({ ...screw, friction } as typeof screw)).toThrow(
          `thread friction: wanted more than 0, up to 1, got ${friction}; 15 percent is 0.15 or 15%`,
        );
  });

  it("has 1 to 20 starts when its rise is asked, too", () => {
    expect(screwRiseIn({ turns: 1, pitchIn: 0.25, starts: 20 })).toBe(5);
    expect(() => screwRiseIn({ turns: 1, pitchIn: 0.25, starts: 21 })).toThrow("thread starts: wanted 1 to 20, got 21");
  });

  it("has no thread as coarse as its own diameter, and no half start", () => {
    expect(() => screwHolds({ diameterIn: 1, pitchIn: 1 })).toThrow(
      "screw pitch (in): wanted less than the diameter, 1, got 1",
    );
    expect(screwHolds({ diameterIn: 1, pitchIn: 0.999 })).toBe(false);
    expect(() => screwHolds({ diameterIn: 1, pitchIn: 0.2, starts: 0 })).toThrow(
      "thread starts: wanted 1 to 20, got 0",
    );
    expect(() => screwHolds({ diameterIn: 1, pitchIn: 0.2, starts: 21 })).toThrow(
      "thread starts: wanted 1 to 20, got 21",
    );
  });
});
