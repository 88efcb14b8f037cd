import type { OrderRequest } from "../../../../src/math/sawing/order-plan/order-request";
import { totalOf } from "./check-plan";

/** Pieces of every line. */
type Made = readonly number[];

/**
 * The least total of a small order by trying everything: every flitch at every height, every run, every way of placing pieces
 * in strips and strips side by side, every set of logs. Only pieces over the count are left out, which nobody wants.
 */
export function leastTotal(request: OrderRequest): number {
  const { order, logs, settings = {} } = request;
  let reached = new Map<string, { made: Made; takes: number }>([["", { made: order.map(() => 0), takes: 0 }]]);
  for (const log of logs) {
    const next = new Map(reached);
    const takes = settings.least === "cost" ? log.cost! : woodOf(request, log);
    for (const yielded of everyYield(request, log))
      for (const before of reached.values()) {
        const made = capped(request, sum(before.made, yielded));
        const key = made.join();
        const all = before.takes + takes;
        if (all < (next.get(key)?.takes ?? Infinity)) next.set(key, { made, takes: all });
      }
    reached = next;
  }
  return Math.min(...[...reached.values()].map(({ made, takes }) => totalOf(request, made, takes)));
}

function woodOf(
  { settings = {} }: OrderRequest,
  { diameter, length, "large end": large }: OrderRequest["logs"][number],
) {
  const butt = large ?? diameter + ((settings.taper ?? 0.5) * length) / 4;
  return (((Math.PI / 4) * length * 12) / 6 / 144) * (diameter ** 2 + (diameter + butt) ** 2 + butt ** 2);
}

/** All that one log can give, from its lowest face up. */
function everyYield(request: OrderRequest, log: OrderRequest["logs"][number]): Made[] {
  const { order, kerfIn, settings = {} } = request;
  const step = settings["scale step"] ?? 1 / 32;
  const steps = (size: number) => Math.floor(size / step + 0.5 + 1e-9);
  const lengthIn = 12 * log.length;
  const butt = log["large end"] ?? log.diameter + ((settings.taper ?? 0.5) * lengthIn) / 48;
  const kerf = steps(kerfIn);
  const greens = [...new Set(order.map(({ thickness }) => steps(thickness + 1 / 8)))];
  const top = Math.floor(butt / step + 1e-6);
  const under: Map<string, Made>[] = [];
  const all = new Map<string, Made>();
  for (let face = 0; face <= top; face++) {
    const here = new Map<string, Made>();
    here.set(
      "",
      order.map(() => 0),
    );
    for (const green of greens) {
      const below = face - green - kerf;
      if (below < 0) continue;
      const widthAt = (runIn: number) => {
        const z = lengthIn - runIn;
        const radius = (log.diameter + ((butt - log.diameter) * z) / lengthIn) / 2;
        const off = Math.max(Math.abs((face - green) * step - butt / 2), Math.abs(face * step - butt / 2));
        return off < radius ? Math.floor((2 * Math.sqrt(radius ** 2 - off ** 2)) / step + 1e-6) : 0;
      };
      for (const flitch of everyFlitch(request, green, lengthIn, widthAt))
        for (const low of under[below]!.values()) {
          const made = capped(request, sum(low, flitch));
          here.set(made.join(), made);
        }
    }
    under.push(here);
    for (const [key, made] of here) all.set(key, made);
  }
  return [...all.values()];
}

/** All that one flitch can give. */
function everyFlitch(
  request: OrderRequest,
  green: number,
  lengthIn: number,
  widthAt: (runIn: number) => number,
): Made[] {
  const { order, kerfIn, settings = {} } = request;
  const step = settings["scale step"] ?? 1 / 32;
  const steps = (size: number) => Math.floor(size / step + 0.5 + 1e-9);
  const lines = order.flatMap(({ thickness }, line) => (steps(thickness + 1 / 8) === green ? [line] : []));
  const crosscutIn = settings["crosscut kerf"] ?? kerfIn;
  const strips: { made: Made; wide: number; long: number }[] = [];
  const grow = (made: Made, wide: number, long: number, from: number) => {
    if (long > 0) strips.push({ made, wide, long });
    for (let i = from; i < lines.length; i++) {
      const { width, length } = order[lines[i]!]!;
      const longer = long + (long > 0 ? crosscutIn : 0) + 12 * length + (settings.trim ?? 0);
      if (longer > lengthIn + 1e-9) continue;
      const more = made.map((count, line) => count + (line === lines[i] ? 1 : 0));
      grow(more, Math.max(wide, steps(width)), longer, i);
    }
  };
  grow(
    order.map(() => 0),
    0,
    0,
    0,
  );
  const found = new Map<string, Made>();
  const rip = steps(settings["rip kerf"] ?? kerfIn);
  const side = (made: Made, wide: number, long: number, from: number) => {
    if (long > 0) {
      const useful = capped(request, made);
      found.set(useful.join(), useful);
    }
    for (let i = from; i < strips.length; i++) {
      const strip = strips[i]!;
      const wider = wide + (long > 0 ? rip : 0) + strip.wide;
      const longest = Math.max(long, strip.long);
      if (wider <= widthAt(longest)) side(sum(made, strip.made), wider, longest, i);
    }
  };
  side(
    order.map(() => 0),
    0,
    0,
    0,
  );
  return [...found.values()];
}

function sum(a: Made, b: Made): Made {
  return a.map((count, line) => count + b[line]!);
}

function capped({ order }: OrderRequest, made: Made): Made {
  return made.map((count, line) =>
    order[line]!.count === "stock" ? count : Math.min(count, order[line]!.count as number),
  );
}
