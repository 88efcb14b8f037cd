import { describe, expect, it } from "vitest";
import { jasCubicMeters } from "../../../src/math/logs/jas";
import { CM_PER_IN, M_PER_FT } from "../../../src/math/units";
import { rowsOf } from "../../csv";

describe("the Japanese agricultural standard", () => {
  const jas = (cm: number, m: number) => jasCubicMeters({ diameterIn: cm / CM_PER_IN, lengthFt: m / M_PER_FT });

  it.each(rowsOf("logs/GENERATED_jas_vectors.csv"))(
    "$measured_cm cm by $length_m m is $v_3dp m3, by the traders' formula",
    ({ measured_cm, length_m, v_3dp }) => {
      expect(jas(Number(measured_cm), Number(length_m))).toBe(Number(v_3dp));
    },
  );

  it("goes by whole centimeters under 14, by even ones from there", () => {
    expect(jas(13.99, 4)).toBe(jas(13, 4));
    expect(jas(15.99, 4)).toBe(jas(14, 4));
    expect(jas(13, 4)).toBeGreaterThan(jas(12, 4));
  });

  it("answers from 1 cm, and not under it", () => {
    expect(jas(1, 4)).toBeGreaterThanOrEqual(0);
    expect(() => jas(0.9, 4)).toThrow("JAS diameter (whole cm): wanted 1 or more, got 0");
  });
});
