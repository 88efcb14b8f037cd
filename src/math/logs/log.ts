import { apart, NoAnswer } from "../errors";

/** A log as a log rule sees it: one diameter and the length. */
export interface Log {
  diameterIn: number;
  lengthFt: number;
}

/** What a rule can scale. */
export interface Limits {
  rule: string;
  /** Which diameter a message speaks of, where a log has more than one. */
  which?: "small-end" | "outer" | "core";
  smallestIn: number;
  largestIn?: number;
  shortestFt?: number;
  longestFt?: number;
  /** How the sizes are rounded before the rule is asked; the limits are of the rounded sizes. */
  enteredBy?: (log: Log) => Log;
  /** What to do where the diameter is outside, or the length is over the longest. */
  diameterAdvice?: string;
  lengthAdvice?: string;
}

/** No tree is thicker or taller (common practice, no source). A larger number was mistyped. */
export const THICKEST_IN = 300;
export const LONGEST_FT = 300;

/** Refuses what a rule cannot scale, and says both limits. */
export function mustBeScalable(log: Log, limits: Limits): void {
  const refusal = refusalOf(log, limits);
  if (refusal) throw refusal;
}

/** Why a rule cannot scale a log; undefined where it can. */
export function refusalOf(log: Log, limits: Limits): NoAnswer | undefined {
  const { rule, smallestIn, largestIn = THICKEST_IN, shortestFt = 0, longestFt = LONGEST_FT } = limits;
  const { diameterIn, lengthFt } = limits.enteredBy?.(log) ?? log;
  const refuse = (what: string, wanted: string, given: string, advice?: string) =>
    new NoAnswer(`${rule} ${what}: wanted ${wanted}, got ${given}${advice ? `; ${advice}` : ""}`);

  if (!(diameterIn >= smallestIn && diameterIn <= largestIn)) {
    const given = apart(log.diameterIn, diameterIn < smallestIn ? smallestIn : largestIn);
    const which = limits.which ? `${limits.which} ` : "";
    return refuse(`${which}diameter (in)`, `${smallestIn} to ${largestIn}`, given, limits.diameterAdvice);
  }
  if (!(lengthFt > 0 && lengthFt >= shortestFt && lengthFt <= longestFt)) {
    const wanted = shortestFt === 0 ? `more than 0, up to ${longestFt}` : `${shortestFt} to ${longestFt}`;
    const tooLong = lengthFt > longestFt;
    const given = apart(log.lengthFt, tooLong ? longestFt : shortestFt);
    return refuse("length (ft)", wanted, given, tooLong ? limits.lengthAdvice : undefined);
  }
  return undefined;
}
