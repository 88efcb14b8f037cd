/** How a log is opened: through and through, in live-edge slabs, to a cant, in quarters, or about a timber. */
export type Pattern = "live" | "slab" | "cant" | "quarter" | "timber";

/** Cants, quarters and timbers are planned with the pith level, however the log was said to lie. */
export function isPithLevel(pattern: Pattern): boolean {
  return pattern !== "live" && pattern !== "slab";
}

/** What boards from a width up are worth, a board foot. */
export interface PriceStep {
  fromWidthIn: number;
  perBoardFoot: number;
}

/** A thickness to be sawn. The tally is what board feet are reckoned with; the green size is what the saw is set to. */
export interface Product {
  nominalIn: number;
  tallyIn: number;
  greenSteps: number;
  greenIn: number;
  /** By rising width. */
  prices: readonly PriceStep[];
  /** The timber that a log is sawn about, which has no thickness of the trade. */
  isTimber?: true;
}

/** A width that may be sold, and how many steps of the scale it takes green. */
export interface BoardWidth {
  nominalIn: number;
  greenSteps: number;
}

/** The log inside bark. Both diameters grow alike from the small end, `taperInPerIn` to the inch of length. */
export interface Log {
  smallUpIn: number;
  smallAcrossIn: number;
  taperInPerIn: number;
  lengthIn: number;
}

/** A bow of the log, as a parabola with its rise in the middle. */
export interface Sweep {
  riseIn: number;
  way: "up" | "down" | "side";
}

/** A log, a mill and what is wanted, with every size of the mill in whole steps of its scale. */
export interface CutJob {
  pattern: Pattern;
  log: Log;
  /** Split: the small end shimmed up until the pith is level. Flat: the log lying on the bed. */
  lies: "split" | "flat";
  sweep?: Sweep;

  stepIn: number;
  kerfSteps: number;
  kerfIn: number;
  ripKerfSteps: number;
  bedSteps: number;
  /** Where the first cut is to be; the best place where nothing is said. */
  firstCutSteps?: number;
  guideOpeningIn?: number;

  products: readonly Product[];
  byValue: boolean;
  passCost: number;

  widths: readonly BoardWidth[];
  minWidthIn: number;
  widthStepIn: number;
  /** Longest first. */
  lengthsFt: readonly number[];
  trimIn: number;
  wane: number;
  rip: boolean;

  cantWidths: readonly BoardWidth[];
  cantOffset: "centred" | "free";
  /** Both sides of a timber. */
  timber?: readonly [BoardWidth, BoardWidth];
  ringAngleDegrees: number;
  heartIn: number;
}

/** Half the log's width at a distance from its small end. */
export function halfAcrossAt(log: Log, fromSmallEndIn: number): number {
  return (log.smallAcrossIn + log.taperInPerIn * fromSmallEndIn) / 2;
}

/** Half the log's height at a distance from its small end. */
export function halfUpAt(log: Log, fromSmallEndIn: number): number {
  return (log.smallUpIn + log.taperInPerIn * fromSmallEndIn) / 2;
}

/** The greater diameter of the butt, which is what has to go between the blade guides. */
export function widestIn(log: Log): number {
  return 2 * Math.max(halfAcrossAt(log, log.lengthIn), halfUpAt(log, log.lengthIn));
}
