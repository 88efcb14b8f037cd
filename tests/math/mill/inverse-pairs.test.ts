import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { bandStrainLbf, bandStressPsi } from "../../../src/math/mill/band";
import { beltCentersIn, beltLengthIn } from "../../../src/math/mill/belt";
import { chainCentersIn, chainLinks, sprocketDiameterIn } from "../../../src/math/mill/chain";
import { driveHertz, motorRpm } from "../../../src/math/mill/motor";
import { pulleyRpm, pulleySizeIn, pulleyTrainRpm } from "../../../src/math/mill/pulleys";
import { rimRpm, rimSpeedFpm } from "../../../src/math/mill/rim";
import { ramForceLbf, ramPressurePsi } from "../../../src/math/mill/ram";
import { feedForBiteFpm, toothBiteIn } from "../../../src/math/mill/tooth";

const runs = { seed: 20240229, numRuns: 500 };
const from = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const size = from(0.5, 80);
const rpm = from(10, 4000);

/** To one part in a thousand million. */
function expectSame(answer: number, wanted: number): void {
  expect(Math.abs(answer - wanted), `${answer} for ${wanted}`).toBeLessThanOrEqual(1e-9 * Math.abs(wanted));
}

describe("there and back comes to where it began", () => {
  it("for the size of a pulley and the speed it gives", () => {
    fc.assert(
      fc.property(rpm, size, rpm, from(0, 20), (motor, driverIn, wantedRpm, slipPercent) => {
        const drivenIn = pulleySizeIn({ rpm: motor, driverIn, wantedRpm, slipPercent });
        expectSame(pulleyRpm({ rpm: motor, driverIn, drivenIn, slipPercent }), wantedRpm);
      }),
      runs,
    );
  });

  it("for a train of pulleys and the same train the other way round, without slip", () => {
    const drive = fc.record({ driverIn: size, drivenIn: size });
    fc.assert(
      fc.property(rpm, fc.array(drive, { minLength: 1, maxLength: 4 }), (motor, drives) => {
        const back = drives.map(({ driverIn, drivenIn }) => ({ driverIn: drivenIn, drivenIn: driverIn }));
        expectSame(pulleyTrainRpm({ rpm: pulleyTrainRpm({ rpm: motor, drives }), drives: back }), motor);
      }),
      runs,
    );
  });

  it("for the speed of a rim and the turns it asks for", () => {
    fc.assert(
      fc.property(size, rpm, (diameterIn, turns) => {
        expectSame(rimRpm({ diameterIn, speedFpm: rimSpeedFpm({ diameterIn, rpm: turns }) }), turns);
      }),
      runs,
    );
  });

  it("for a drive's frequency, through motor, pulleys and wheel to the band's speed", () => {
    const motor = fc.constantFrom(
      { poles: 2, nameplateRpm: 3520 },
      { poles: 4, nameplateRpm: 1750 },
      { poles: 6, nameplateRpm: 1160 },
      { poles: 4, nameplateRpm: 1440, baseHertz: 50 },
      { poles: 8, nameplateRpm: undefined },
    );
    fc.assert(
      fc.property(from(500, 9000), size, size, size, motor, (speedFpm, wheelIn, driverIn, drivenIn, plate) => {
        const hertz = driveHertz({ speedFpm, wheelIn, driverIn, drivenIn, ...plate });
        const turns = pulleyRpm({ rpm: motorRpm({ hertz, ...plate }), driverIn, drivenIn });
        // The motor's speed is what is left of the field's after the slip: a slow one loses digits, never more than 1e-9.
        expectSame(rimSpeedFpm({ diameterIn: wheelIn, rpm: turns }), speedFpm);
      }),
      runs,
    );
  });

  it("for the length of a belt and its centers, from touching pulleys to far apart", () => {
    fc.assert(
      fc.property(size, size, from(0, 400), (pulley1In, pulley2In, apart) => {
        const centersIn = (pulley1In + pulley2In) / 2 + apart;
        const beltIn = beltLengthIn({ pulley1In, pulley2In, centersIn });
        expectSame(beltCentersIn({ pulley1In, pulley2In, beltIn }), centersIn);
      }),
      runs,
    );
  });

  it("for the links of a chain and its centers", () => {
    const teeth = fc.integer({ min: 9, max: 90 });
    fc.assert(
      fc.property(teeth, teeth, from(0, 60), fc.constantFrom(0.375, 0.5, 1), (teeth1, teeth2, apart, pitchIn) => {
        const touching =
          (sprocketDiameterIn({ teeth: teeth1, pitchIn }) + sprocketDiameterIn({ teeth: teeth2, pitchIn })) / 2;
        const centersIn = touching + apart;
        const links = chainLinks({ teeth1, teeth2, centersIn, pitchIn, rounding: "none" });
        expectSame(chainCentersIn({ teeth1, teeth2, links, pitchIn }), centersIn);
      }),
      runs,
    );
  });

  it("for an even count of links, whose centers ask for the same count again", () => {
    for (let links = 106; links <= 400; links += 2) {
      const centersIn = chainCentersIn({ teeth1: 17, teeth2: 65, links, pitchIn: 0.5 });
      expect(chainLinks({ teeth1: 17, teeth2: 65, centersIn, pitchIn: 0.5 })).toBe(links);
    }
  });

  it("for the strain of a band and its stress", () => {
    fc.assert(
      fc.property(from(0.2, 16), from(0.02, 0.1), from(100, 50000), (widthIn, thicknessIn, stressPsi) => {
        const strainLbf = bandStrainLbf({ widthIn, thicknessIn, stressPsi });
        expectSame(bandStressPsi({ widthIn, thicknessIn, strainLbf }), stressPsi);
      }),
      runs,
    );
  });

  it("for the pressure of a ram and its force, on either side", () => {
    fc.assert(
      fc.property(from(10, 50000), size, from(0, 0.99), (forceLbf, boreIn, share) => {
        const rodIn = boreIn * share;
        expectSame(ramForceLbf({ pressurePsi: ramPressurePsi({ forceLbf, boreIn, rodIn }), boreIn, rodIn }), forceLbf);
      }),
      runs,
    );
  });

  it("for the bite of a tooth and its feed", () => {
    fc.assert(
      fc.property(from(1, 300), from(500, 12000), from(0.2, 3), (feedFpm, speedFpm, pitchIn) => {
        const biteIn = toothBiteIn({ feedFpm, speedFpm, pitchIn });
        expectSame(feedForBiteFpm({ biteIn, speedFpm, pitchIn }), feedFpm);
      }),
      runs,
    );
  });
});
