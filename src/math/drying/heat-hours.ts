import { mustBeAbove, mustBeBetween, NoAnswer } from "../errors";
import { HEAT_TIMES_UPPER_MIN } from "./heat-times.table";

const MINUTES_PER_HOUR = 60;
/** The one chamber temperature the table was printed for, degrees Fahrenheit, and how near to it a kiln is read: 71 °C does. */
const CHAMBER_F = 160;
const READ_TO_F = 0.5;
/** What the centre must reach, degrees Fahrenheit: a chamber whose wet bulb is lower takes far longer. */
const CENTER_F = 133;

const SIZES_IN = [4, 6, 8, 10, 12];
const STARTS_F = [40, 50, 60];
const DEPRESSIONS_F = [2, 4, 6, 8, 10, 12];

interface Heating {
  sizeIn: number;
  startF: number;
  chamberF: number;
  wetBulbF: number;
}

/**
 * Hours to bring the centre of a square pine timber to 133 degF, by the upper limit that the table prints.
 *
 * Between printed sizes, starting temperatures and wet-bulb depressions the logarithms are interpolated in straight
 * lines: the table follows powers of all three within 0.3 %. Nothing is stretched past its edge, and where a neighbor
 * was not to be had there is no answer.
 *
 * @formula by table: ln(minutes) interpolated in straight lines over ln(size), ln(start) and ln(depression) between
 *   printed values; depression = max(160, chamberF) - wetBulbF [°F]
 * @source FPL-GTR-190, Table 20-8, the numbers in parentheses
 * @source FPL-RP-607 for their meaning, the upper end of a 99 % interval
 * @range timbers 4 to 12 in square; wood at 40 to 60 degF; chamber at 160 degF, half a degree either way; wet bulb 148 to 158 degF
 */
export function heatHours({ sizeIn, startF, chamberF, wetBulbF }: Heating): number {
  mustBeBetween(CHAMBER_F - READ_TO_F, CHAMBER_F + READ_TO_F, chamberF, "chamber dry bulb (°F; the table has 160)");
  mustBeAbove(CENTER_F, wetBulbF, "wet bulb (°F; under it the table's times do not hold)");
  const size = place(SIZES_IN, sizeIn, "size (in)");
  const start = place(STARTS_F, startF, "wood at the start (°F)");
  const depressionF = Math.max(CHAMBER_F, chamberF) - wetBulbF; // the larger one takes longer
  const depression = place(DEPRESSIONS_F, depressionF, "wet-bulb depression (°F)");
  let logMinutes = 0;
  for (const [sizeAt, sizeShare] of size)
    for (const [startAt, startShare] of start)
      for (const [depressionAt, depressionShare] of depression)
        logMinutes += sizeShare * startShare * depressionShare * Math.log(printed(sizeAt, startAt, depressionAt));
  return Math.exp(logMinutes) / MINUTES_PER_HOUR;
}

/** The printed values next to a given one, with the share of each: one where it is printed itself, else two. */
function place(printedValues: readonly number[], given: number, what: string): [value: number, share: number][] {
  mustBeBetween(printedValues[0]!, printedValues[printedValues.length - 1]!, given, what);
  if (printedValues.includes(given)) return [[given, 1]];
  const above = printedValues.findIndex((value) => value > given);
  const [low, high] = [printedValues[above - 1]!, printedValues[above]!];
  const share = Math.log(given / low) / Math.log(high / low);
  return [
    [low, 1 - share],
    [high, share],
  ];
}

function printed(sizeIn: number, startF: number, depressionF: number): number {
  const row = HEAT_TIMES_UPPER_MIN.find(([depression, start]) => depression === depressionF && start === startF);
  const minutes = row?.[2 + SIZES_IN.indexOf(sizeIn)];
  if (minutes === undefined)
    throw new NoAnswer(
      `heating time: no figure seen in Table 20-8 for ${sizeIn} in, ${startF} °F at the start, wet bulb ${depressionF} °F under the chamber`,
    );
  return minutes;
}
