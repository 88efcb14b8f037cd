/*
 * A second sawyer: the same definitions worked by trying everything, with no table of best stacks, no early end of a
 * search and no code of the planner. Slow; for small logs only.
 */

export interface SmallLog {
  pattern: "live" | "slab" | "cant" | "quarter";
  d: number;
  dw: number;
  L: number;
  T: number;
  flat: boolean;
  sweep: number;
  way: 1 | -1 | 0;
  kerf: number;
  ripKerf: number;
  g: number;
  products: { tally: number; green: number; prices: [from: number, price: number][] }[];
  passCost: number;
  minWidth: number;
  maxWidth: number;
  widthStep: number;
  widths?: number[];
  widthAllow: number;
  minLength: number;
  lengthStep: number;
  trim: number;
  wane: number;
  rip: boolean;
  bedMin: number;
  throat: number;
  cantWidths: number[];
  free: boolean;
  minRing: number;
  heart: number;
}

/** The greatest worth of any plan; or what one stack of a straight log sawn live is worth: its opening face and drops. */
export function bruteForce(o: SmallLog, fixed?: { face: number; drops: readonly number[] }): number {
  const { g, L, T } = o;
  const n = (x: number) => Math.floor(x / g + 0.5 + 1e-9);
  const k = n(o.kerf);
  const a = (z: number) => (o.dw + (T * z) / 48) / 2;
  const b = (z: number) => (o.d + (T * z) / 48) / 2;
  const products = o.products.map((p) => ({ ...p, t: n(p.green) }));
  const Db = 2 * Math.max(a(L), b(L));
  if ((o.pattern === "live" || o.pattern === "slab") && Db > Math.SQRT2 * o.throat) throw new Error("too wide");
  const cap = Db <= o.throat ? Infinity : o.throat / 2;

  const lengths: number[] = [];
  for (let m = 1; m * o.lengthStep <= L; m++) {
    const l = m * o.lengthStep;
    if (l >= o.minLength - 1e-9 && 12 * l + o.trim <= L + 1e-9) lengths.push(l);
  }
  const widths: number[] = o.widths ? o.widths.filter((w) => w <= Db + 1) : [];
  if (!o.widths)
    for (let m = 1; m * o.widthStep <= Db + 1; m++) {
      const w = m * o.widthStep;
      if (w >= o.minWidth - 1e-9 && w <= o.maxWidth + 1e-9) widths.push(w);
    }
  const price = (p: SmallLog["products"][0], w: number) => {
    let found = 0;
    for (const [from, money] of p.prices) if (from <= w + 1e-9) found = money;
    return found;
  };

  /** Every choice of widths that fits into C steps. */
  const G = (p: SmallLog["products"][0], C: number): number => {
    const one = (w: number) => w * price(p, w);
    if (!o.rip) return Math.max(0, ...widths.filter((w) => n(w + o.widthAllow) <= C).map(one));
    let best = 0;
    const add = (from: number, used: number, sum: number) => {
      best = Math.max(best, sum);
      for (let i = from; i < widths.length; i++) {
        const more = used + n(widths[i]! + o.widthAllow) + (used > 0 ? n(o.ripKerf) : 0);
        if (more <= C) add(i, more, sum + one(widths[i]!));
      }
    };
    add(0, 0, 0);
    return best;
  };

  const half = (A: number, B: number, off: number) => A * Math.sqrt(Math.max(0, 1 - (off / B) ** 2));
  /** The worth of a flitch given the usable width at each length. */
  const worth = (p: SmallLog["products"][0], usable: (l: number) => number) =>
    Math.max(
      0,
      Math.max(0, ...lengths.map((l) => (p.tally / 12) * l * G(p, Math.floor(Math.max(0, usable(l)) / g + 1e-6)))) -
        o.passCost,
    );
  const faces = (p: { t: number }, y1: number) => {
    const t = p.t * g;
    return [y1 + o.wane * t, y1 + t - o.wane * t] as const;
  };
  const z0 = (l: number) => L - 12 * l - o.trim;

  /** All stacks under a face, tried one after another. */
  const stacks = (j: number, bed: number, V: (p: (typeof products)[0], y1: number) => number): number => {
    let best = 0;
    for (const p of products) {
      if (j - p.t - k < bed) continue;
      const v = V(p, (j - p.t) * g);
      if (v > 0) best = Math.max(best, v + stacks(j - p.t - k, bed, V));
    }
    return best;
  };
  const fromAnyFace = (H: number, V: (p: (typeof products)[0], y1: number) => number) => {
    let best = 0;
    for (let j = 0; j <= Math.floor(H / g + 1e-6); j++) best = Math.max(best, stacks(j, n(o.bedMin), V));
    return best;
  };

  if (o.pattern === "live" && o.sweep > 0) {
    const stations = Array.from({ length: Math.round(L / 6) + 1 }, (_, i) => i * 6);
    const c = (z: number) => 4 * o.sweep * (z / L) * (1 - z / L);
    const Y0 = -Math.min(...stations.map((z) => o.way * c(z) - b(z)));
    const yc = (z: number) => Y0 + o.way * c(z);
    const H = Math.max(...stations.map((z) => yc(z) + b(z)));
    const across = (z: number) => (o.way === 0 ? c(z) : 0);
    return fromAnyFace(H, (p, y1) => {
      const [y1p, y2p] = faces(p, y1);
      const hm = (z: number) => Math.min(half(a(z), b(z), y1p - yc(z)), half(a(z), b(z), y2p - yc(z)), cap);
      return worth(p, (l) => {
        let W = 0;
        for (const s of stations) {
          const board = stations.filter((z) => z >= s && z <= s + 12 * l + o.trim);
          if (s + 12 * l + o.trim > L + 1e-9 || board.some((z) => hm(z) === 0)) continue;
          const right = Math.min(...board.map((z) => across(z) + hm(z)));
          const left = Math.max(...board.map((z) => across(z) - hm(z)));
          W = Math.max(W, right - left);
        }
        return W;
      });
    });
  }

  const pith = (z: number) => (o.flat ? b(z) : b(L));
  if (o.pattern === "live") {
    const V = (p: (typeof products)[0], y1: number) => {
      const [y1p, y2p] = faces(p, y1);
      return worth(p, (l) => {
        const z = z0(l);
        return 2 * Math.min(half(a(z), b(z), y1p - pith(z)), half(a(z), b(z), y2p - pith(z)), cap);
      });
    };
    if (!fixed) return fromAnyFace(2 * b(L), V);
    let face = fixed.face;
    let total = 0;
    for (const drop of fixed.drops) {
      const p = products[drop]!;
      const v = V(p, (face - p.t) * g);
      face -= p.t + k;
      if (v === 0 || face < n(o.bedMin)) return 0;
      total += v;
    }
    return total;
  }

  if (o.pattern === "slab")
    return fromAnyFace(2 * b(L), (p, y1) => {
      const hm = (z: number) => Math.min(half(a(z), b(z), y1 - pith(z)), half(a(z), b(z), y1 + p.t * g - pith(z)), cap);
      const l = Math.max(0, ...lengths);
      const w = 2 * hm(0) >= o.minWidth - 1e-9 ? Math.floor((2 * hm(L / 3)) / o.widthStep + 1e-6) * o.widthStep : 0;
      return Math.max(0, (p.tally / 12) * l * w * price(p, w) - o.passCost);
    });

  if (o.pattern === "cant") {
    const B = b(L);
    const jackets = (inner: number): number => {
      // heights from the pith outward; both sides are alike
      let best = 0;
      for (const p of products) {
        const outer = inner + p.t * g;
        if (outer > B + 1e-9) continue;
        const [y1p, y2p] = faces(p, inner);
        const v = worth(p, (l) => 2 * Math.min(half(a(z0(l)), b(z0(l)), y1p), half(a(z0(l)), b(z0(l)), y2p)));
        if (v > 0) best = Math.max(best, v + jackets(outer + k * g));
      }
      return best;
    };
    let best = 0;
    for (const wc of o.cantWidths) {
      const wg = g * n(wc + o.widthAllow);
      if (wg > 2 * B + 1e-9) continue;
      const bottoms: number[] = [];
      if (o.free) {
        for (let j = 0; j * g - B <= 1e-9; j++)
          if (j * g - B + wg >= -1e-9 && j * g + wg <= 2 * B + 1e-9) bottoms.push(j * g - B);
      } else bottoms.push(-wg / 2);
      for (const bottom of bottoms) {
        const top = bottom + wg;
        const through = fromAnyFace(2 * a(L), (p, y1) => {
          const [y1p, y2p] = faces(p, y1);
          return worth(p, (l) => {
            const z = z0(l);
            const hm = Math.min(half(b(z), a(z), y1p - a(L)), half(b(z), a(z), y2p - a(L)));
            return hm > 0 ? Math.min(hm, top) - Math.max(-hm, bottom) : 0;
          });
        });
        best = Math.max(best, through + jackets(top + k * g) + jackets(-bottom + k * g));
      }
    }
    return best;
  }

  const R = b;
  const corner = Math.max(k * g, o.heart) / 2;
  const slope = Math.tan((o.minRing * Math.PI) / 180);
  const off = (p: (typeof products)[0], x: number, y: number) => {
    const yOut = y + p.t * g;
    const xs = Math.max(x, slope * yOut);
    return worth(p, (l) => {
      const inside = R(z0(l)) ** 2 - yOut ** 2;
      return inside > 0 ? Math.sqrt(inside) - xs : 0;
    });
  };
  const quarter = (i: number, j: number): number => {
    let best = 0;
    for (const p of products) {
      const fromA = off(p, corner + i * g, corner + j * g);
      if (fromA > 0) best = Math.max(best, fromA + quarter(i, j + p.t + k));
      const fromB = off(p, corner + j * g, corner + i * g);
      if (fromB > 0) best = Math.max(best, fromB + quarter(i + p.t + k, j));
    }
    return best;
  };
  return 4 * quarter(0, 0);
}
