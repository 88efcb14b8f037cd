import fc from "fast-check";
import { describe, expect, it } from "vitest";
import * as mill from "../../src/functions/mill";
import { column, one, refused, type Cell } from "./sheet";

describe("the mill's functions in a sheet", () => {
  it("answer a whole column at once, and a blank row with 0", () => {
    const rpm = mill.PULLEYRPM(column(1750, 0, 3450), one(6), column(12, 12, 6));
    expect(rpm[0]).toEqual([875]);
    expect(rpm[1]).toEqual([refused("#VALUE!", /rpm/)]);
    expect(mill.PULLEYRPM(column(1750, 0), one(6), column(12, null))).toEqual(column(875, 0));
    expect(rpm[2]).toEqual([3450]);
    expect(mill.RIMSPEED(column(36, 0), column(530, null))[1]).toEqual([0]);
  });

  it("name what is missing in a row that is begun", () => {
    expect(mill.BELTLENGTH(one(6), one(null), one(30))).toEqual([[refused("#VALUE!", /^pulley2: /)]]);
    expect(mill.DRIVEHERTZ(one(5000), one(36), one(6), one(18), one(""))).toEqual([[refused("#VALUE!", /^poles: /)]]);
  });

  it("read metric sizes, speeds and forces as the same as inches, feet per minute and pounds", () => {
    const [[inch]] = mill.RIMSPEED(one(36), one(530)) as [[number]];
    const [[metric]] = mill.RIMSPEED(one("914.4 mm"), one(530)) as [[number]];
    expect(metric).toBeCloseTo(inch, 6);
    const [[pounds]] = mill.BANDSTRESS(one(2500), one(1.25), one(0.045)) as [[number]];
    const [[newtons]] = mill.BANDSTRESS(one("11.12055 kN"), one("31.75 mm"), one("1.143 mm")) as [[number]];
    expect(newtons / pounds).toBeCloseTo(1, 5);
    const [[fpm]] = mill.BANDCENTRIFUGAL(one(5000)) as [[number]];
    const [[mps]] = mill.BANDCENTRIFUGAL(one("25.4 m/s")) as [[number]];
    expect(mps).toBeCloseTo(fpm, 6);
    const [[psi]] = mill.SAWPOWER(one(0.08), one(24), one(20), one(4351.132)) as [[number]];
    const [[mpa]] = mill.SAWPOWER(one(0.08), one(24), one(20), one("30 MPa")) as [[number]];
    expect(mpa).toBeCloseTo(psi, 5);
  });

  it("read slip as 2 or 2% or a percent cell of 0.02, and refuse a bare 1 with the way to write one percent", () => {
    const slipping = (slip: Cell) => mill.PULLEYRPM(one(1750), one(6), one(12), one(slip));
    expect(slipping(2)).toEqual([[857.5]]);
    expect(slipping("2%")).toEqual([[857.5]]);
    expect(slipping(0.02)).toEqual([[857.5]]);
    expect(slipping("0.5%")[0]![0]).toBeCloseTo(870.625, 9);
    for (const slip of [1, 0.5, 0.25]) expect(slipping(slip)).toEqual([[refused("#N/A", /one percent is written 1%/)]]);
  });

  it("take a train of pulleys as two lists, with the slip of each belt", () => {
    expect(mill.PULLEYTRAIN(one(150), column(750, 900), column(450, 150))).toEqual([[1500]]);
    expect(mill.PULLEYTRAIN(one(150), column(750, 900, null), column(450, 150, null))).toEqual([[1500]]);
    expect(mill.PULLEYTRAIN(one(150), column(750, 900), column(450, null))).toEqual([[refused("#VALUE!", /row 2/)]]);
    expect(mill.PULLEYTRAIN(one(150), column(750, 900), one(450))).toEqual([[500]]);
  });

  it("take a belt for open unless it is said to cross", () => {
    const belt = (crossed?: Cell) => mill.BELTLENGTH(one(18), one(6), one(96), one(crossed))[0]![0];
    for (const open of [undefined, null, 0, false, "no"]) expect(belt(open)).toBeCloseTo(230.074, 3);
    for (const crossed of [true, "yes", "TRUE"]) expect(belt(crossed)).toBeGreaterThan(230.1);
    expect(belt("maybe")).toEqual(refused("#VALUE!", /^crossed: /));
  });

  it("bring an error of an input cell on unchanged", () => {
    expect(mill.TORQUE(one("#REF!"), one(1750))).toEqual([[{ error: "#REF!", message: expect.any(String) as string }]]);
  });

  it("give a warming of 0 degrees no answer but 0, and cooling below zero", () => {
    expect(mill.BANDHEATING(one(0))).toEqual([[0]]);
    expect(mill.BANDHEATING(one(-10))[0]![0]).toBeCloseTo(-1950, 9);
  });

  it("tell a screw that holds from one that does not, in TRUE and FALSE", () => {
    expect(mill.SCREWHOLDS(column(1, 1), one(0.2), column(1, 4))).toEqual([[true], [false]]);
  });

  it("never set a wheel too fast by half a percent of slip read as half of the speed", () => {
    expect(mill.PULLEYSIZE(one(1750), one(6), one(500), one(0.5))).toEqual([[refused("#N/A", /belt slip/)]]);
    expect(mill.PULLEYTRAIN(one(1750), one(6), one(12), one(0.5))).toEqual([[refused("#N/A", /belt slip/)]]);
  });

  it("never call a head safe by a friction of 15 meant as percent", () => {
    expect(mill.SCREWHOLDS(one(1), one(0.2), one(4), one(15))).toEqual([[refused("#N/A", /0\.15 or 15%/)]]);
    expect(mill.SCREWHOLDS(one(1), one(0.2), one(4), one("15%"))).toEqual([[false]]);
  });

  it("say what stops a screw, a motor, a ram, a tube and a chain, with the limit", () => {
    expect(mill.SCREWTORQUE(one(1000), one(1), one(0.9), one(4), one(0.6))).toEqual([
      [refused("#N/A", /cannot be raised.*: wanted less than 0\.4/)],
    ]);
    expect(mill.MOTORRPM(one(60), one(5))).toEqual([[refused("#N/A", /even number, 2 or more, got 5/)]]);
    expect(mill.MOTORRPM(one(1), one(4), one(1750))).toEqual([[refused("#N/A", /more than 1\.66.*, got 1$/)]]);
    expect(mill.RAMPRESSURE(one(2500), one(2), one(2.5))).toEqual([
      [refused("#N/A", /less than the bore, 2, got 2.5/)],
    ]);
    expect(mill.TUBEWEIGHT(one(6), one(2), one(1.5), one(20))).toEqual([[refused("#N/A", /up to 0\.5/)]]);
    expect(mill.CHAINLINKS(one(17), one(17), one(1), one(0.5))).toEqual([[refused("#N/A", /sprockets touch/)]]);
  });

  it("answer the frequency that brings the band back to the speed asked for, cell by cell", () => {
    const speed = fc.double({ min: 1000, max: 9000, noNaN: true });
    fc.assert(
      fc.property(speed, (wanted) => {
        const hertz = mill.DRIVEHERTZ(one(wanted), one(36), one(6), one(18), one(4), one(1750));
        const wheel = mill.PULLEYRPM(mill.MOTORRPM(hertz, one(4), one(1750)), one(6), one(18));
        const [[reached]] = mill.RIMSPEED(one(36), wheel) as [[number]];
        expect(Math.abs(reached / wanted - 1)).toBeLessThan(1e-9);
      }),
      { seed: 36, numRuns: 100 },
    );
  });
});
