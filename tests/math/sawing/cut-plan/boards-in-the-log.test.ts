import { describe, expect, it } from "vitest";
import { planCut } from "../../../../src/math/sawing/cut-plan/plan-cut";
import type { Board } from "../../../../src/math/sawing/cut-plan/board";
import { dice, requestFor, throwLog, type SmallLog } from "./small-logs";

/* Geometry alone: every board is put back into the log it came from. Nothing here knows how a plan is made. */

const NEAR = 1e-6;

interface Box {
  left: number;
  right: number;
  low: number;
  high: number;
}

const bigger = (log: SmallLog, scale: number): SmallLog => ({ ...log, d: log.d * scale, dw: log.dw * scale });

/** Where each of the boards side by side lies across. */
function boxesOf(board: Board, ripKerfIn: number): Box[] {
  const wide = board.greenWidthsIn.reduce((sum, w) => sum + w, 0) + (board.greenWidthsIn.length - 1) * ripKerfIn;
  let left = board.middleIn - wide / 2;
  return board.greenWidthsIn.map((w) => {
    const box = { left, right: left + w, low: board.lowIn, high: board.highIn };
    left += w + ripKerfIn;
    return box;
  });
}

/** Two boxes with wood for a kerf between them, one way or the other. */
function apart(p: Box, q: Box, kerf: number): boolean {
  return (
    p.low >= q.high + kerf - NEAR ||
    q.low >= p.high + kerf - NEAR ||
    p.left >= q.right + kerf - NEAR ||
    q.left >= p.right + kerf - NEAR
  );
}

/** Whether the square corners, past the wane allowed, are inside the section of the log. */
function inside(box: Box, wane: number, a: number, b: number, centre: [x: number, y: number]): boolean {
  const give = wane * (box.high - box.low);
  return [box.left, box.right].every((x) =>
    [box.low + give, box.high - give].every((y) => ((x - centre[0]) / a) ** 2 + ((y - centre[1]) / b) ** 2 <= 1 + NEAR),
  );
}

function lengthwise(board: Board, trim: number): number[] {
  const long = 12 * board.lengthFt + trim;
  return [0, 0.25, 0.5, 0.75, 1].map((share) => board.startIn + share * long);
}

const a = (log: SmallLog, z: number) => (log.dw + (log.T * z) / 48) / 2;
const b = (log: SmallLog, z: number) => (log.d + (log.T * z) / 48) / 2;
const steps = (x: number, g: number) => Math.floor(x / g + 0.5 + 1e-9) * g;

function everyPairApart(boxes: Box[], kerf: number, log: SmallLog): void {
  boxes.forEach((p, i) =>
    boxes.slice(i + 1).forEach((q) => expect(apart(p, q, kerf), JSON.stringify([p, q, log])).toBe(true)),
  );
}

describe("boards put back into the log", () => {
  it("lie inside a straight log and a kerf apart, live", () => {
    const roll = dice(1);
    for (let i = 0; i < 150; i++) {
      const log = bigger(throwLog(roll, "live"), 3);
      if (Number.isFinite(log.throat)) log.throat *= 3;
      const plan = planCut(requestFor(log));
      const boards = plan.passes.flatMap(({ board }) => board ?? []);
      for (const board of boards)
        for (const z of lengthwise(board, log.trim)) {
          expect(z >= -NEAR && z <= log.L + NEAR).toBe(true);
          const pith = log.flat ? b(log, z) : b(log, log.L);
          for (const box of boxesOf(board, steps(log.ripKerf, log.g)))
            expect(inside(box, log.wane, a(log, z), b(log, z), [0, pith]), JSON.stringify([box, z, log])).toBe(true);
        }
      const rips = steps(log.ripKerf, log.g);
      const stack = boards.map((board) => ({ left: -99, right: 99, low: board.lowIn, high: board.highIn }));
      everyPairApart(stack, steps(log.kerf, log.g), log);
      boards.forEach((board) => everyPairApart(boxesOf(board, rips), rips, log));
      plan.passes.forEach(({ bladeHeightIn }) => expect(bladeHeightIn).toBeGreaterThan(log.bedMin - NEAR));
    }
  });

  it("lie inside a bowed log at every station", () => {
    const roll = dice(2);
    for (let i = 0; i < 80; i++) {
      const log = bigger(throwLog(roll, "live", true), 2);
      if (Number.isFinite(log.throat)) log.throat *= 2;
      const bow = (z: number) => 4 * log.sweep * (z / log.L) * (1 - z / log.L);
      const stations = Array.from({ length: log.L / 6 + 1 }, (_, s) => 6 * s);
      const rest = Math.max(...stations.map((z) => b(log, z) - log.way * bow(z)));
      for (const { board } of planCut(requestFor(log)).passes) {
        if (!board) continue;
        const end = board.startIn + 12 * board.lengthFt + log.trim;
        expect(board.startIn >= 0 && end <= log.L + NEAR).toBe(true);
        for (const z of stations.filter((s) => s >= board.startIn && s <= end)) {
          const centre: [number, number] = [log.way === 0 ? bow(z) : 0, rest + log.way * bow(z)];
          for (const box of boxesOf(board, steps(log.ripKerf, log.g)))
            expect(inside(box, log.wane, a(log, z), b(log, z), centre), JSON.stringify([box, z, log])).toBe(true);
        }
      }
    }
  });

  it("make slabs no wider than their narrow face a third from the small end, a kerf apart", () => {
    const roll = dice(3);
    for (let i = 0; i < 120; i++) {
      const log = bigger(throwLog(roll, "slab"), 3);
      if (Number.isFinite(log.throat)) log.throat *= 3;
      const boards = planCut(requestFor(log)).passes.flatMap(({ board }) => board ?? []);
      const z = log.L / 3;
      const pith = log.flat ? b(log, z) : b(log, log.L);
      for (const board of boards)
        for (const box of boxesOf(board, 0))
          expect(inside(box, 0, a(log, z), b(log, z), [0, pith]), JSON.stringify([box, log])).toBe(true);
      everyPairApart(
        boards.flatMap((board) => boxesOf(board, 0)),
        steps(log.kerf, log.g),
        log,
      );
    }
  });

  it.each(["cant", "timber"] as const)(
    "lie in the jackets and the cant of one log sawn %s, a kerf apart",
    (pattern) => {
      const roll = dice(4);
      for (let i = 0; i < 100; i++) {
        const log = bigger(throwLog(roll, pattern), 2);
        const plan = planCut(requestFor(log));
        const [first, turned] = plan.views;
        if (!turned) continue;
        const kerf = steps(log.kerf, log.g);
        const rips = steps(log.ripKerf, log.g);
        const cant = { left: -99, right: 99, low: first!.cant!.lowIn, high: first!.cant!.highIn };
        const sides = first!.boards.map(({ board }) => board);
        everyPairApart(
          [cant, ...sides.map((s) => ({ left: -99, right: 99, low: s.lowIn, high: s.highIn }))],
          kerf,
          log,
        );
        for (const board of sides)
          for (const z of lengthwise(board, log.trim))
            for (const box of boxesOf(board, rips))
              expect(inside(box, log.wane, a(log, z), b(log, z), [0, b(log, log.L)]), JSON.stringify([box, log])).toBe(
                true,
              );
        for (const { board } of turned.boards) {
          for (const box of boxesOf(board, rips)) {
            // Turned, what was up in the log lies to the right: the cant's faces bound the boards.
            expect(box.right <= cant.high - b(log, log.L) + NEAR && box.left >= cant.low - b(log, log.L) - NEAR).toBe(
              true,
            );
            for (const z of lengthwise(board, log.trim))
              expect(inside(box, log.wane, b(log, z), a(log, z), [0, a(log, log.L)]), JSON.stringify([box, log])).toBe(
                true,
              );
          }
        }
        const stack = turned.boards.map(({ board }) => ({
          left: -99,
          right: 99,
          low: board.lowIn,
          high: board.highIn,
        }));
        everyPairApart(stack, kerf, log);
        const timbers = turned.boards.filter(({ board }) => board.product.isTimber).map(({ board }) => board);
        expect(timbers.length, JSON.stringify(log)).toBe(pattern === "timber" ? 1 : 0);
        for (const { lowIn, highIn, widthsIn, product } of timbers) {
          expect(lowIn <= a(log, log.L) + NEAR && highIn >= a(log, log.L) - NEAR).toBe(true);
          expect([...widthsIn, product.nominalIn].sort()).toEqual([...log.timber].sort());
          expect(cant.high - cant.low).toBeCloseTo(steps(widthsIn[0]!, log.g), 9);
        }
      }
    },
  );

  it("lie in a quarter of the log, a kerf apart, with the rings at the angle asked for", () => {
    const roll = dice(5);
    for (let i = 0; i < 120; i++) {
      const log = bigger(throwLog(roll, "quarter"), 1.6);
      const kerf = steps(log.kerf, log.g);
      const rips = steps(log.ripKerf, log.g);
      const boards = planCut(requestFor(log)).views[0]!.quarter!.boards;
      const boxes = boards.flatMap(({ board, face }) =>
        boxesOf(board, rips).map((box) => {
          const off = { low: box.low, high: box.high, left: box.left, right: box.right };
          const seen = face === "A" ? off : { low: off.left, high: off.right, left: off.low, right: off.high };
          return { seen, off, board };
        }),
      );
      for (const { off, seen, board } of boxes) {
        const corner = Math.max(kerf, log.heart) / 2 - NEAR;
        expect(seen.left >= corner && seen.low >= corner).toBe(true);
        for (const z of lengthwise(board, log.trim))
          expect(off.right ** 2 + off.high ** 2).toBeLessThan(b(log, z) ** 2 + NEAR);
        const worst = (Math.atan2(off.left, off.high) * 180) / Math.PI;
        expect(worst).toBeGreaterThan(log.minRing - 1e-4);
      }
      const ripped = (p: (typeof boxes)[0], q: (typeof boxes)[0]) => (p.board === q.board ? rips : kerf);
      boxes.forEach((p, n) =>
        boxes.slice(n + 1).forEach((q) => expect(apart(p.seen, q.seen, ripped(p, q))).toBe(true)),
      );
    }
  });
});
