import type { OrderLine, YardLog } from "../../../../src/math/sawing/order-plan/order-job";
import type { OrderRequest } from "../../../../src/math/sawing/order-plan/order-request";

type Line = [thickness: number, width: number, length: number, count: number | "stock", green?: number];
type LogSize = [diameter: number, largeEnd?: number, cost?: number];

/** Lines of an order, one under the other. */
export function order(...lines: Line[]): OrderLine[] {
  return lines.map(([thickness, width, length, count, green], at) => ({
    row: at + 1,
    thickness,
    width,
    length,
    count,
    ...(green !== undefined && { "green size": green }),
  }));
}

/** Logs 4 in over their nominal feet. */
export function logs(lengthFt: number, sizes: LogSize[], from = 1): YardLog[] {
  return sizes.map(([diameter, largeEnd, cost], at) => ({
    row: from + at,
    diameter,
    length: lengthFt + 1 / 3,
    ...(largeEnd !== undefined && { "large end": largeEnd }),
    ...(cost !== undefined && { cost }),
  }));
}

/** Five orders worked twice, in different ways, from the same definitions. Totals to four decimals. They are no published yields. */
export const WORKED_ORDERS: readonly {
  name: string;
  request: OrderRequest;
  wood: readonly number[];
  total: number;
  /** What the linear programme comes to. */
  programme: number;
  sawn: readonly number[];
  short?: number;
}[] = [
  {
    name: "which of four logs",
    request: {
      order: order([2, 8, 8, 4], [1, 6, 8, 4]),
      logs: logs(8, [[12], [13], [14], [17]]),
      kerfIn: 1 / 8,
      settings: { trim: 2 },
    },
    wood: [85.5548, 99.7583, 115.0527, 167.4807],
    total: 115.0527,
    programme: 99.2478,
    sawn: [3],
  },
  {
    name: "strips that are crosscut, two logs of five",
    request: {
      order: order([2, 8, 12, 3], [2, 6, 6, 6], [1, 4, 12, 8], [1, 6, 4, 6]),
      logs: [...logs(12, [[10], [12, 14], [13.5], [15, 18]]), ...logs(8, [[11]], 5)],
      kerfIn: 1 / 8,
      settings: { trim: 2 },
    },
    wood: [93.8056, 136.6884, 164.5546, 220.3696, 72.4421],
    total: 292.8117,
    programme: 270.1825,
    sawn: [4, 5],
  },
  {
    name: "an order that cannot be filled",
    request: {
      order: order([3, 10, 10, 7], [1, 6, 10, 6]),
      logs: logs(10, [[12], [14], [11]]),
      kerfIn: 3 / 16,
      settings: { trim: 2 },
    },
    wood: [108.2484, 145.1639, 91.8196],
    total: 2113.6527,
    programme: 2113.6527,
    sawn: [1, 2, 3],
    short: 25,
  },
  {
    name: "least cost, with stock for the shelf",
    request: {
      order: order([1, 8, 8, 12], [1, 4, 8, "stock"]),
      logs: logs(8, [
        [12, undefined, 30],
        [13, undefined, 22],
        [15, undefined, 60],
        [16, undefined, 38],
        [11, undefined, 15],
      ]),
      kerfIn: 1 / 8,
      settings: { trim: 2, least: "cost" },
    },
    wood: [85.5548, 99.7583, 131.4378, 148.9139, 72.4421],
    total: 36.9182,
    programme: 31.4591,
    sawn: [2, 5],
  },
  {
    name: "logs that lie flat, wane, guides and a bed",
    request: {
      order: order([1.25, 8, 10, 11, 1.375], [1.25, 5, 5, 14, 1.375]),
      logs: logs(10, [
        [14, 16],
        [15, 17.5],
        [17, 23],
        [11, 12],
      ]),
      kerfIn: 1 / 8,
      settings: {
        trim: 0,
        "log lies": "flat",
        wane: 0.2,
        "bed clearance": 1,
        "guide opening": 16,
        "width allowance": 0.25,
      },
    },
    wood: [152.3963, 178.9417, 272.555, 89.499],
    total: 241.8954,
    programme: 237.7765,
    sawn: [1, 4],
  },
];
