import { sum } from "../numbers";
import { mustBeAbove, NoAnswer } from "../errors";

/** One load aboard, and how far it lies ahead of the axle; behind it, below zero. */
interface Load {
  weightLb: number;
  positionFt: number;
}

/**
 * Percent of a trailer's whole weight that rests on the hitch; below zero the trailer lifts the hitch.
 *
 * The empty trailer's own share is measured on a scale or taken from its maker.
 *
 * @formula share = (100 * hitch + (emptyLb or 0) * (emptySharePercent or 0)) / total;
 *   hitch = sum(w * x) / hitchFt [lb]; total = sum(w) + (emptyLb or 0) [lb]; w = loads.weightLb [lb];
 *   x = loads.positionFt [ft]
 * @source plain arithmetic: moments about the axle
 * @range loads behind the hitch; an empty weight and its share together or neither
 * @checked 2 of 2 printed figures (9 and 15 % of 7,000 lb)
 */
export function tongueSharePercent({ loads, hitchFt, emptyLb = 0, emptySharePercent = 0 }: TongueShare): number {
  mustBeAbove(0, hitchFt, "hitch ahead of the axle (ft)");
  if (emptyLb > 0 !== emptySharePercent > 0)
    throw new NoAnswer(
      `empty trailer: wanted its weight and the percent of it on the hitch, both or neither, ` +
        `got ${emptyLb} lb and ${emptySharePercent} %`,
    );
  if (!(emptySharePercent < 100))
    throw new NoAnswer(`empty trailer on the hitch (%): wanted 0 or more and less than 100, got ${emptySharePercent}`);
  for (const { positionFt } of loads)
    if (!(positionFt <= hitchFt))
      throw new NoAnswer(`load ahead of the axle (ft): wanted up to the hitch, ${hitchFt}, got ${positionFt}`);
  const onHitchLb = sum(loads.map(({ weightLb, positionFt }) => (weightLb * positionFt) / hitchFt));
  const totalLb = sum(loads.map(({ weightLb }) => weightLb)) + emptyLb;
  mustBeAbove(0, totalLb, "weight of trailer and load (lb)");
  return (100 * onHitchLb + emptyLb * emptySharePercent) / totalLb;
}

interface TongueShare {
  loads: readonly Load[];
  hitchFt: number;
  emptyLb?: number | undefined;
  emptySharePercent?: number | undefined;
}
