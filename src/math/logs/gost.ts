import { mustBeBetween, NoAnswer } from "../errors";
import { GOST_2708_75 } from "./gost.table";
import { mustBeScalable } from "./log";
import { centimeters, meters } from "./metric";
import { downTo, toDecimals } from "../rounding";

type Row = (typeof GOST_2708_75)[number];

const THINNEST_CM = GOST_2708_75[0]!.diameterCm;
const THICKEST_CM = GOST_2708_75[GOST_2708_75.length - 1]!.diameterCm;
/** From here the standard goes by even centimeters. */
const EVEN_FROM_CM = 14;
/** The widest step between printed lengths that is bridged. */
const WIDEST_STEP_M = 1;
/** The standard prints three decimals for small volumes, two for large ones. */
const SMALL_VOLUME_M3 = 0.2;

/**
 * Cubic meters in a log by the table of GOST 2708-75, from its top diameter under bark.
 *
 * The standard goes by tenths of a meter, its reprints by halves: between printed lengths the volume is interpolated on
 * a straight line. Diameters are taken down to the printed class; the standard's own rounding (GOST 2292-88) was not
 * seen. Most cells stand in one reprint only.
 *
 * @formula by table: the printed cell for d and L, in a straight line between printed lengths;
 *   d = down(cm) if cm < 14, else down(cm, 2) [cm]; cm = decimals(2.54 * diameterIn, 6) [cm];
 *   L = down(decimals(0.3048 * lengthFt, 6) * 10) / 10 [m]
 * @source GOST 2708-75
 * @range 10 to 38 cm, and for each diameter the lengths its row was seen with; none at 36 cm between 8.5 and 10 m, where reprints differ
 * @checked 282 of 282 cells seen (111 of them in two reprints or more); one conflict and the 88 cells of odd diameters are left out
 */
export function gostCubicMeters({ diameterIn, lengthFt }: { diameterIn: number; lengthFt: number }): number {
  mustBeScalable({ diameterIn, lengthFt }, { rule: "GOST", smallestIn: 0 });
  const measuredCm = centimeters(diameterIn);
  const diameterCm = downTo(measuredCm < EVEN_FROM_CM ? 1 : 2, measuredCm);
  mustBeBetween(THINNEST_CM, THICKEST_CM, diameterCm, "GOST 2708-75 diameter, down to the printed class (cm)");
  const lengthM = downTo(1, meters(lengthFt) * 10) / 10;
  return volumeInRow(
    GOST_2708_75.find((row) => row.diameterCm === diameterCm)!,
    lengthM,
  );
}

function volumeInRow({ diameterCm, volumes }: Row, lengthM: number): number {
  const [shortest] = volumes[0]!;
  const [longest] = volumes[volumes.length - 1]!;
  mustBeBetween(shortest, longest, lengthM, `GOST 2708-75 length (m) at ${diameterCm} cm`);
  const above = volumes.findIndex(([printed]) => printed >= lengthM);
  const [longer, more] = volumes[above]!;
  if (longer === lengthM) return more;
  const [shorter, less] = volumes[above - 1]!;
  if (longer - shorter > WIDEST_STEP_M)
    throw new NoAnswer(
      `GOST 2708-75 length (m) at ${diameterCm} cm: wanted up to ${shorter} or from ${longer}, got ${lengthM}; reprints differ at 9 m (1.18 and 1.13 m3)`,
    );
  const between = less + ((more - less) * (lengthM - shorter)) / (longer - shorter);
  return toDecimals(more > SMALL_VOLUME_M3 ? 2 : 3, between);
}
