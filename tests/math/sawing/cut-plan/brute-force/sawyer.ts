import type { SmallLog } from "../small-logs";

/** A product with its green thickness in steps of the scale. */
export type Product = SmallLog["products"][0] & { thickSteps: number };

/** What a flitch of a product is worth, its lower face at a height. */
export type WorthAt = (product: Product, lowIn: number) => number;

export type Sawyer = ReturnType<typeof sawyerOf>;

/** What all patterns have in common: sizes of the log, lengths, widths and prices of boards, and stacks under a face. */
export function sawyerOf(log: SmallLog) {
  const { g, L, T, d, dw } = log;
  const steps = (inches: number) => Math.floor(inches / g + 0.5 + 1e-9);
  const wholeSteps = (inches: number) => Math.floor(inches / g + 1e-6);
  const halfAcross = (z: number) => (dw + (T * z) / 48) / 2;
  const halfUp = (z: number) => (d + (T * z) / 48) / 2;
  const buttIn = 2 * Math.max(halfAcross(L), halfUp(L));
  const kerfSteps = steps(log.kerf);
  // No blade goes under the bed clearance, not even by less than half a step.
  const bedSteps = Math.ceil(log.bedMin / g - 1e-6);
  const products: Product[] = log.products.map((product) => ({ ...product, thickSteps: steps(product.green) }));
  const lengths = lengthsOf(log);
  const widths = widthsOf(log, buttIn);

  /** The best choice of widths that fits into so many steps, tried one after another. */
  function bestWidths(product: Product, capacity: number): number {
    const worth = (width: number) => width * priceOf(product, width);
    const taken = (width: number) => steps(width + log.widthAllow);
    if (!log.rip) return Math.max(0, ...widths.filter((width) => taken(width) <= capacity).map(worth));
    let best = 0;
    const add = (from: number, used: number, sum: number) => {
      best = Math.max(best, sum);
      for (let i = from; i < widths.length; i++) {
        const more = used + taken(widths[i]!) + (used > 0 ? steps(log.ripKerf) : 0);
        if (more <= capacity) add(i, more, sum + worth(widths[i]!));
      }
    };
    add(0, 0, 0);
    return best;
  }

  /** The worth of a flitch given the usable width at each length. */
  function worthOf(product: Product, usableIn: (lengthFt: number) => number): number {
    const atLength = (lengthFt: number) =>
      (product.tally / 12) * lengthFt * bestWidths(product, wholeSteps(Math.max(0, usableIn(lengthFt))));
    return Math.max(0, Math.max(0, ...lengths.map(atLength)) - log.passCost);
  }

  /** The best of all stacks under any face, tried one after another; only what a flitch is worth is kept in mind. */
  function fromAnyFace(heightIn: number, worth: WorthAt): number {
    const worthAt = products.map((product) => remembered((low) => worth(product, low * g)));
    const under = (face: number): number => {
      let best = 0;
      products.forEach(({ thickSteps }, i) => {
        const low = face - thickSteps;
        if (low - kerfSteps < bedSteps) return;
        const value = worthAt[i]!(low);
        if (value > 0) best = Math.max(best, value + under(low - kerfSteps));
      });
      return best;
    };
    return Math.max(0, ...Array.from({ length: wholeSteps(heightIn) + 1 }, (_, face) => under(face)));
  }

  return {
    steps,
    bedSteps,
    halfAcross,
    halfUp,
    kerfSteps,
    products,
    lengths,
    worthOf,
    fromAnyFace,
    /** The most that the guides let saw on either side of the middle. */
    guided: buttIn <= log.throat ? Infinity : log.throat / 2,
    tooWide: buttIn > Math.SQRT2 * log.throat,
    /** Both faces of a flitch, each moved in by the wane allowed. */
    faces: ({ thickSteps }: Product, lowIn: number) => {
      const wane = log.wane * thickSteps * g;
      return [lowIn + wane, lowIn + thickSteps * g - wane] as const;
    },
    /** Where the thin end of a board lies that ends with the butt. */
    startOf: (lengthFt: number) => L - 12 * lengthFt - log.trim,
  };
}

function remembered(ask: (low: number) => number): (low: number) => number {
  const answers: number[] = [];
  return (low) => (answers[low] ??= ask(low));
}

/** Half the width of an ellipse at a height off its middle. */
export const halfAt = (halfWidth: number, halfHeight: number, off: number) =>
  halfWidth * Math.sqrt(Math.max(0, 1 - (off / halfHeight) ** 2));

export function priceOf({ prices }: Product, width: number): number {
  let found = 0;
  for (const [from, price] of prices) if (from <= width + 1e-9) found = price;
  return found;
}

function lengthsOf({ lengthStep, minLength, trim, L }: SmallLog): number[] {
  const lengths: number[] = [];
  for (let m = 1; m * lengthStep <= L; m++) {
    const length = m * lengthStep;
    if (length >= minLength - 1e-9 && 12 * length + trim <= L + 1e-9) lengths.push(length);
  }
  return lengths;
}

function widthsOf({ widths, widthStep, minWidth, maxWidth }: SmallLog, buttIn: number): number[] {
  if (widths) return widths.filter((width) => width <= buttIn + 1);
  const found: number[] = [];
  for (let m = 1; m * widthStep <= buttIn + 1; m++) {
    const width = m * widthStep;
    if (width >= minWidth - 1e-9 && width <= maxWidth + 1e-9) found.push(width);
  }
  return found;
}
