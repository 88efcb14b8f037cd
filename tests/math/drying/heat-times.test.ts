import { describe, expect, it } from "vitest";
import { heatHours } from "../../../src/math/drying/heat-hours";
import { HEAT_TIMES_UPPER_MIN, HEAT_TIMES_UPPER_TOTALS } from "../../../src/math/drying/heat-times.table";
import { NoAnswer } from "../../../src/math/errors";
import { rowsOf } from "../../csv";

describe("the heating times of square pine timbers, Table 20-8", () => {
  const rows = rowsOf("wood/heat_treat_square_timbers_pine.csv");
  const sizes = [4, 6, 8, 10, 12];

  it("come out whole, by the number in parentheses, and where the copy has none there is no answer", () => {
    expect(rows).toHaveLength(17);
    for (const row of rows)
      for (const sizeIn of sizes) {
        const printed = row[`t${sizeIn}x${sizeIn}_p`];
        const heat = () =>
          heatHours({ sizeIn, startF: Number(row["initial_F"]), chamberF: 160, wetBulbF: 160 - Number(row["wbd_F"]) });
        if (printed === "") expect(heat).toThrow(NoAnswer);
        else expect(heat() * 60, `${sizeIn} in ${row["initial_F"]} ${row["wbd_F"]}`).toBeCloseTo(Number(printed), 6);
      }
  });

  it("add up to their check totals", () => {
    const sum = (at: 2 | 3 | 4 | 5 | 6) => HEAT_TIMES_UPPER_MIN.reduce((total, row) => total + (row[at] ?? 0), 0);
    expect(HEAT_TIMES_UPPER_MIN.length).toBe(HEAT_TIMES_UPPER_TOTALS.rows);
    expect([sum(2), sum(3), sum(4), sum(5), sum(6)]).toEqual([
      HEAT_TIMES_UPPER_TOTALS.four,
      HEAT_TIMES_UPPER_TOTALS.six,
      HEAT_TIMES_UPPER_TOTALS.eight,
      HEAT_TIMES_UPPER_TOTALS.ten,
      HEAT_TIMES_UPPER_TOTALS.twelve,
    ]);
  });

  it("can be interpolated on logarithms: from two neighbors the one between comes back within 1 %", () => {
    const between = (a: [number, number], b: [number, number], at: number) => {
      const share = Math.log(at / a[0]) / Math.log(b[0] / a[0]);
      return Math.exp((1 - share) * Math.log(a[1]) + share * Math.log(b[1]));
    };
    for (const row of rows)
      for (const [low, middle, high] of [
        [4, 6, 8],
        [6, 8, 10],
        [8, 10, 12],
      ] as const) {
        const at = (size: number): [number, number] => [size, Number(row[`t${size}x${size}_p`])];
        if (at(low)[1] && at(high)[1])
          expect(Math.abs(between(at(low), at(high), middle) / at(middle)[1] - 1)).toBeLessThan(0.01);
      }
    for (const size of sizes)
      for (let depression = 2; depression <= 10; depression += 2) {
        const at = (start: number): [number, number] => {
          const row = rows.find((one) => Number(one["wbd_F"]) === depression && Number(one["initial_F"]) === start)!;
          return [start, Number(row[`t${size}x${size}_p`])];
        };
        if (at(60)[1]) expect(Math.abs(between(at(40), at(60), 50) / at(50)[1] - 1)).toBeLessThan(0.01);
      }
  });
});
