import type { OrderLine, YardLog } from "../../../../src/math/sawing/order-plan/order-job";
import type { OrderRequest } from "../../../../src/math/sawing/order-plan/order-request";

/** Numbers from 0 to 1 that are the same for the same seed (the mulberry32 generator, public domain). */
export function numbersFrom(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

/** An invented yard and an order of a given share of its solid wood, the same for the same seed. */
export function inventedYard(seed: number, logs: number, lines: number, share: number): OrderRequest {
  const next = numbersFrom(seed);
  const oneOf = <T>(all: readonly T[]): T => all[Math.floor(next() * all.length)]!;
  const yard = Array.from({ length: logs }, (_, at): YardLog => {
    const diameter = Math.round((10 + 14 * next() ** 1.5) * 4) / 4;
    const length = oneOf([8, 8, 10, 10, 12, 12, 14, 16]);
    const largeIn = diameter + Math.round((0.5 + next() * 3) * 4) / 4;
    return { row: at + 1, diameter, length: length + 1 / 3, ...(next() < 0.5 && { "large end": largeIn }) };
  });
  const solid = yard.reduce((sum, { diameter, length }) => sum + (Math.PI * (diameter + 0.6) ** 2 * length) / 48, 0);
  const order = Array.from({ length: lines }, (_, at): OrderLine => {
    const thickness = oneOf([1, 1, 1, 1.25, 1.5, 2, 2, 3]);
    const width = oneOf([4, 5, 6, 6, 8, 8, 10]);
    const length = oneOf([4, 5, 6, 8, 8, 10, 10, 12]);
    const wanted = (solid * share * (0.5 + next())) / lines;
    return {
      row: at + 1,
      thickness,
      width,
      length,
      count: Math.max(1, Math.round((wanted * 12) / (thickness * width * length))),
    };
  });
  return { order, logs: yard, kerfIn: 1 / 8, settings: { trim: 2 } };
}
