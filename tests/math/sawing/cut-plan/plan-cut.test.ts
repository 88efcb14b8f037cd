import { describe, expect, it } from "vitest";
import { cutYield, planCut } from "../../../../src/math/sawing/cut-plan/plan-cut";
import { bruteForce } from "./brute-force";
import { stackWorth } from "./brute-force/through";
import { dice, requestFor, throwLog, type SmallLog } from "./small-logs";
import { WORKED_PLANS } from "./worked-plans";

describe("the worked plans", () => {
  for (const worked of WORKED_PLANS) {
    it(`${worked.name}: total, board feet and bounds`, () => {
      const plan = planCut(worked.request);
      expect(Math.abs(plan.total - worked.total)).toBeLessThan(1e-6);
      expect(Math.abs(plan.boardFeet - worked.boardFeet)).toBeLessThan(1e-6);
      expect(plan.logBoardFeet).toBeCloseTo(worked.logBoardFeet, 3);
      expect(plan.mostBoardFeet).toBeCloseTo(worked.mostBoardFeet, 3);
      expect(cutYield(worked.request)).toBe(plan.total);
    });

    const printedFeet = worked.feet;
    if (!printedFeet) continue;
    it(`${worked.name}: the boards`, () => {
      const boards = planCut(worked.request).passes.flatMap((pass) =>
        pass.board ? [{ ...pass, board: pass.board }] : [],
      );
      const feet = boards.map(({ board }) => board.boardFeet).sort((x, y) => x - y);
      expect(feet.length).toBe(printedFeet.length);
      [...printedFeet].sort((x, y) => x - y).forEach((printed, i) => expect(feet[i]).toBeCloseTo(printed, 3));
      if (worked.blades) expect(boards.map(({ bladeHeightIn }) => bladeHeightIn)).toEqual(worked.blades);
    });
  }
});

describe("a second sawyer who tries everything", () => {
  const kinds: [SmallLog["pattern"], count: number, bowed: boolean][] = [
    ["live", 160, false],
    ["live", 100, true],
    ["slab", 120, false],
    ["cant", 110, false],
    ["quarter", 120, false],
    ["timber", 300, false],
  ];
  kinds.forEach(([pattern, count, bowed], kind) => {
    it(`finds no better and no worse total on ${count} small ${bowed ? "bowed " : ""}logs sawn ${pattern}`, () => {
      const roll = dice(20260100 + kind);
      let sawn = 0;
      for (let i = 0; i < count; i++) {
        const log = throwLog(roll, pattern, bowed);
        const total = cutYield(requestFor(log));
        expect(Math.abs(total - bruteForce(log)), JSON.stringify(log)).toBeLessThan(1e-6);
        if (total > 0) sawn++;
      }
      // logs too small for a board agree too easily
      expect(sawn).toBeGreaterThan(count * 0.6);
    });
  });
});

describe("the run of first cuts", () => {
  it("gives the same total from end to end with the same drops, less one step further, and is made in its middle", () => {
    const roll = dice(7);
    let runs = 0;
    for (let i = 0; i < 150; i++) {
      const log = throwLog(roll, "live");
      const plan = planCut(requestFor(log));
      if (!plan.firstCut) continue;
      const { g } = log;
      const drops = plan.passes.flatMap(({ board }) => (board ? plan.job.products.indexOf(board.product) : []));
      const worthFrom = (firstCutIn: number) => stackWorth(log, Math.round(firstCutIn / g), drops);
      const { lowestIn, highestIn, chosenIn } = plan.firstCut;
      expect(plan.passes[0]!.bladeHeightIn).toBe(chosenIn);
      for (let face = lowestIn; face < highestIn + g / 2; face += g)
        expect(Math.abs(worthFrom(face) - plan.total), JSON.stringify([face, log])).toBeLessThan(1e-6);
      expect(worthFrom(lowestIn - g)).toBeLessThan(plan.total - 1e-8);
      // a face above the log is no face
      if (highestIn + g <= log.d + (log.T * log.L) / 48)
        expect(worthFrom(highestIn + g)).toBeLessThan(plan.total - 1e-8);
      expect(Math.abs(chosenIn - (lowestIn + highestIn) / 2)).toBeLessThan(0.51 * g);
      if (highestIn > lowestIn) runs++;
    }
    expect(runs).toBeGreaterThan(30);
  });
});

describe("what every plan keeps to", () => {
  it("is never more lumber than the log could give, and passes drop by board and kerf", () => {
    const roll = dice(8);
    for (let i = 0; i < 200; i++) {
      const log = throwLog(roll, (["live", "slab", "cant", "quarter"] as const)[i % 4]!);
      const plan = planCut(requestFor(log));
      expect(plan.boardFeet).toBeLessThanOrEqual(plan.mostBoardFeet + 1e-9);
      expect(plan.boardFeet).toBeLessThan(plan.mostWithoutKerf);
      const value = plan.passes.reduce((sum, { board, copies }) => sum + (board ? copies * board.value : 0), 0);
      expect(plan.total).toBeCloseTo(value, 9);
      plan.passes.forEach((pass, at) => {
        expect(pass.number).toBe(at + 1);
        if (pass.dropIn !== undefined)
          expect(plan.passes[at - 1]!.bladeHeightIn - pass.bladeHeightIn).toBeCloseTo(pass.dropIn, 9);
      });
    }
  });

  it("gives no less from a longer or a thicker log, or with a finer scale that holds the coarser one", () => {
    const base = { diameterIn: 17.3, lengthFt: 9, kerfIn: 0.125, products: [{ thickness: 1 }, { thickness: 2 }] };
    for (const pattern of ["live", "quarter"] as const) {
      const total = (more: object) => cutYield({ ...base, pattern, ...more });
      expect(total({ lengthFt: 10 })).toBeGreaterThanOrEqual(total({}));
      expect(total({ settings: { "scale step": 1 / 64 } })).toBeGreaterThanOrEqual(total({}) - 1e-9);
      expect(total({ settings: { rip: true } })).toBeGreaterThanOrEqual(total({}));
      expect(total({ settings: { "minimum width": 2 } })).toBeGreaterThanOrEqual(total({}));
      expect(total({ settings: { trim: 4 } })).toBeLessThanOrEqual(total({}));
      expect(total({ kerfIn: 0.25 })).toBeLessThanOrEqual(total({}));
    }
    expect(cutYield({ ...base, diameterIn: 18.3 })).toBeGreaterThan(cutYield(base));
  });

  it("uses flats where the guides ask for them, and no more", () => {
    const slab = (opening?: number) =>
      cutYield({
        diameterIn: 32,
        lengthFt: 10,
        kerfIn: 0.125,
        pattern: "slab",
        products: [{ thickness: 2 }],
        settings: { "guide opening": opening },
      });
    // the butt is 33 1/4 in; at the opening of just that much nothing is lost
    expect(slab(33.25)).toBe(slab());
    expect(slab(33)).toBeLessThanOrEqual(slab());
    expect(slab(33.25 / Math.SQRT2)).toBeLessThan(slab(33));
    expect(() => slab(33.25 / Math.SQRT2 - 0.001)).toThrow("halve or quarter it first");
  });
});
