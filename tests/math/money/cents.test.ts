import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { centsIn, lineAmount } from "../../../src/math/money/cents";

const amount = (quantity: number, price: number) => lineAmount({ quantity, price });

describe("an invoice line", () => {
  it.each([
    [1.005, 1, 1.01],
    [1.115, 100, 111.5],
    [2.675, 1, 2.68],
    [1.0049, 1, 1.0],
    [0.145, 10, 1.45],
    [0.0145, 100, 1.45],
    [8.345, 1, 8.35],
    [1.1, 0.05, 0.06],
    [3, 0.335, 1.01],
    [0.1 + 0.2, 0.05, 0.02],
    [79.06, 6.5, 513.89],
    [0.001, 1, 0],
    [1e-9, 1e-9, 0],
    [1234567.5, 1, 1234567.5],
  ])("%d at %d is %d", (quantity, price, wanted) => expect(amount(quantity, price)).toBe(wanted));

  it("rounds half a cent away from zero on a return as on a sale", () => {
    expect(amount(-1.005, 1)).toBe(-1.01);
    expect(amount(1.005, -1)).toBe(-1.01);
    expect(amount(-1.005, -1)).toBe(1.01);
    expect(amount(-1.0049, 1)).toBe(-1);
  });

  it("rounds every half cent from 0.005 to 99.995 up, as typed", () => {
    for (let cents = 0; cents < 10_000; cents++) {
      const typed = Number(`${Math.floor(cents / 100)}.${String(cents % 100).padStart(2, "0")}5`);
      expect(Math.round(amount(typed, 1) * 100)).toBe(cents + 1);
    }
  });

  it("agrees with whole-number arithmetic on quantities in thousandths and prices in cents", () => {
    const thousandths = fc.integer({ min: -1_000_000, max: 1_000_000 });
    fc.assert(
      fc.property(thousandths, fc.integer({ min: 0, max: 100_000 }), (quantity, price) => {
        const size = Math.floor((Math.abs(quantity) * price + 500) / 1000);
        expect(Math.round(amount(quantity / 1000, price / 100) * 100)).toBe(quantity < 0 ? 0 - size : size);
      }),
      { seed: 12 },
    );
  });

  it("does not depend on which is called the quantity", () => {
    const number = fc.double({ min: -1e6, max: 1e6, noNaN: true });
    fc.assert(
      fc.property(number, number, (a, b) => {
        expect(amount(a, b)).toBe(amount(b, a));
      }),
      { seed: 12 },
    );
  });

  it("is counted in whole cents however large the amount", () => {
    expect(centsIn(1.5e30)).toBe(1.5e32);
    expect(centsIn(-4e26)).toBe(-4e28);
  });

  it("ends where a sheet no longer holds the cents", () => {
    expect(amount(1e13, 1)).toBe(1e13);
    expect(() => amount(1.1e13, 1)).toThrow("amount of the line");
    expect(() => amount(1e200, 1e200)).toThrow("amount of the line");
  });
});

describe("cents in an amount", () => {
  it("are whole, a half away from zero", () => {
    expect([0, 1.005, -1.005, 12.34, 1e6].map(centsIn)).toEqual([0, 101, -101, 1234, 1e8]);
  });
});
