import { describe, expect, it } from "vitest";
import { mustBeAbove, mustBeAtLeast, mustBeBelow, mustBeBetween } from "../../src/math/errors";

describe("a refusal", () => {
  it("names the quantity, both limits and what was given", () =>
    expect(() => mustBeBetween(6, 20, 21, "diameter (in)")).toThrow("diameter (in): wanted 6 to 20, got 21"));
  it("spares the reader digits that say nothing", () =>
    expect(() => mustBeBelow(1 / 3, 2 / 3, "friction")).toThrow("friction: wanted less than 0.333333, got 0.666667"));
  it("keeps all digits where fewer would show the limit itself", () =>
    expect(() => mustBeAtLeast(4, 3.9999999, "diameter (in)")).toThrow("wanted 4 or more, got 3.9999999"));
  it("lets the limit itself through only where it has an answer", () => {
    expect(() => mustBeAtLeast(4, 4, "diameter (in)")).not.toThrow();
    expect(() => mustBeBetween(4, 5, 5, "diameter (in)")).not.toThrow();
    expect(() => mustBeAbove(4, 4, "diameter (in)")).toThrow("wanted more than 4, got 4");
    expect(() => mustBeBelow(4, 4, "diameter (in)")).toThrow("wanted less than 4, got 4");
  });
  it("refuses what is not a number", () => expect(() => mustBeAtLeast(0, NaN, "size (in)")).toThrow("got NaN"));
});
