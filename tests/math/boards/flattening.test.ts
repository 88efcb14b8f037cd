import { describe, expect, it } from "vitest";
import { flattening } from "../../../src/math/boards/flattening";

const SLAB = { widthIn: 30, lengthFt: 8, outIn: 0.75, biteIn: 0.125, stepoverIn: 1, feedFpm: 15 };

describe("flattening a slab", () => {
  it.each([
    // By hand: 6 layers of 1/8 in, 30 lanes of 8 ft at 15 ft/min
    [SLAB, { layers: 6, lanes: 30, passes: 180, minutes: 96 }],
    // 0.3 / 0.125 = 2.4, so 3 layers; 20 / 1.5 = 13.3, so 14 lanes; 42 passes of 6 ft at 12 ft/min
    [
      { widthIn: 20, lengthFt: 6, outIn: 0.3, biteIn: 0.125, stepoverIn: 1.5, feedFpm: 12 },
      { layers: 3, lanes: 14, passes: 42, minutes: 21 },
    ],
    [
      { ...SLAB, outIn: 0.1, stepoverIn: 40 },
      { layers: 1, lanes: 1, passes: 1, minutes: 8 / 15 },
    ],
  ])("%j takes what it takes by hand", (slab, wanted) => expect(flattening(slab)).toMatchObject(wanted));

  it("takes no layer more for a size that is a hair over in metric", () => {
    expect(flattening({ ...SLAB, outIn: 19.05 / 25.4, biteIn: 3.175 / 25.4 }).layers).toBe(6);
  });

  it("costs an even slab the thickness that it was out: an arc of one radius over another", () => {
    // The top face stands h over its lowest place, and so does the hollow below it; between the two planes t - h is left
    const thickness = 2.5;
    const face = Array.from({ length: 101 }, (_, i) => 0.5 * (1 - ((i - 50) / 50) ** 2));
    const topPlane = Math.min(...face.map((crown) => crown + thickness));
    const bottomPlane = Math.max(...face);
    expect(flattening({ ...SLAB, outIn: 0.5 }).thicknessLostIn).toBeCloseTo(thickness - (topPlane - bottomPlane), 9);
  });

  it.each(["widthIn", "lengthFt", "outIn", "biteIn", "stepoverIn", "feedFpm"])("refuses %s of 0", (key) =>
    expect(() => flattening({ ...SLAB, [key]: 0 })).toThrow("wanted more than 0, got 0"),
  );
});
