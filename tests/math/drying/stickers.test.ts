import { describe, expect, it } from "vitest";
import { stackHeightIn, stickerCount } from "../../../src/math/drying/stickers";

describe("stickers", () => {
  it("stand at both ends and no farther apart than asked: 7 to an 8-foot board at 16 in", () => {
    expect(stickerCount({ lengthFt: 8, spacingIn: 16, layers: 1 })).toBe(7);
    expect(stickerCount({ lengthFt: 8.1, spacingIn: 16, layers: 1 })).toBe(8);
    expect(stickerCount({ lengthFt: 8, spacingIn: 16, layers: 10 })).toBe(70);
  });

  it("are two to a layer of boards shorter than the spacing", () => {
    expect(stickerCount({ lengthFt: 1, spacingIn: 24, layers: 3 })).toBe(6);
  });

  it("come out even where the length divides evenly, in metric too", () => {
    // 2.4 m at 0.6 m: four gaps, whatever binary makes of the quotient
    expect(stickerCount({ lengthFt: 2.4 / 0.3048, spacingIn: 0.6 / 0.0254, layers: 1 })).toBe(5);
  });

  it("lie under every layer of the stack's height", () => {
    expect(stackHeightIn({ layers: 20, thicknessIn: 1.25, stickerIn: 0.75, baseIn: 12 })).toBe(52);
  });
});
