import { NoAnswer } from "../errors";

/** A log as a log rule sees it: one diameter and the length. */
export interface Log {
  diameterIn: number;
  lengthFt: number;
}

/** What a rule can scale. */
export interface Limits {
  rule: string;
  smallestIn: number;
  largestIn?: number;
  shortestFt?: number;
  longestFt?: number;
  /** How the sizes are rounded before the rule is asked; the limits are of the rounded sizes. */
  enteredBy?: (log: Log) => Log;
  /** What to do where the diameter, or the length, is outside. */
  diameterAdvice?: string;
  lengthAdvice?: string;
}

/** No tree is thicker or taller (common practice, no source): what is, is a slip of the finger. */
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
  const refuse = (what: string, wanted: string, given: number, advice?: string) =>
    new NoAnswer(`${rule} ${what}: wanted ${wanted}, got ${given}${advice ? `; ${advice}` : ""}`);

  if (!(diameterIn >= smallestIn && diameterIn <= largestIn))
    return refuse("diameter (in)", `${smallestIn} to ${largestIn}`, log.diameterIn, limits.diameterAdvice);
  if (!(lengthFt > 0 && lengthFt >= shortestFt && lengthFt <= longestFt)) {
    const wanted = shortestFt === 0 ? `more than 0, up to ${longestFt}` : `${shortestFt} to ${longestFt}`;
    return refuse("length (ft)", wanted, log.lengthFt, limits.lengthAdvice);
  }
  return undefined;
}
