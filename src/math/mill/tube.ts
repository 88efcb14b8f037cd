import { mustBeAbove, mustBeBetween, NoAnswer } from "../errors";
import { IN2_PER_FT2, IN_PER_FT } from "../units";
import { STEEL_LB_PER_FT3, STRUCTURAL_MODULUS_PSI } from "./steel";

interface Tube {
  heightIn: number;
  widthIn: number;
  wallIn: number;
}

/** The share of the nominal wall that the AISC tables reckon stiffness with in A500 tube: it may be rolled that thin. */
export const DESIGN_WALL_SHARE = 0.93;

/**
 * Weight of a rectangular steel tube.
 *
 * @formula W = 490 * A * L / 144; A = tubeAreaIn2() [in2]; L = lengthFt
 * @source AISC Manual, tables 1-11 and 1-12
 * @range a wall up to a quarter of the smaller side, where the corners meet
 * @checked 17 of 17 tubes, to 0.3 %
 */
export function tubeWeightLb({ lengthFt, ...tube }: Tube & { lengthFt: number }): number {
  return (STEEL_LB_PER_FT3 * tubeAreaIn2(tube) * lengthFt) / IN2_PER_FT2;
}

/**
 * Sag at the middle of a rectangular steel tube on two supports, under a load at the middle or spread evenly.
 *
 * @formula sag = beamSagIn(inertiaIn4: I); I = tubeInertiaIn4(wallIn: 0.93 * wallIn) [in4]
 * @source Oregon lecture 40, Example 40-1
 * @source AISC Manual, tables 1-11 and 1-12
 * @range a wall up to a quarter of the smaller side, where the corners meet; a sag up to a tenth of the span
 */
export function tubeSagIn({ spanFt, loadLb, spread = false, ...tube }: TubeSag): number {
  mustHaveCorners(tube);
  const inertiaIn4 = tubeInertiaIn4({ ...tube, wallIn: tube.wallIn * DESIGN_WALL_SHARE });
  return beamSagIn({ spanFt, loadLb, spread, inertiaIn4 });
}

/**
 * Sag at the middle of any steel beam on two supports.
 *
 * @formula sag = c * P * l^3 / (29000000 * I); c = 5 / 384 if spread, else 1 / 48; l = 12 * spanFt [in]; P = loadLb;
 *   I = inertiaIn4
 * @source Oregon lecture 40, Example 40-1
 * @range a moment of inertia above 0; a sag up to a tenth of the span, past which the formula, for a nearly straight beam, fails
 * @checked 1 of 1 printed example, a load at the middle
 */
export function beamSagIn({ spanFt, loadLb, spread = false, inertiaIn4 }: BeamSag): number {
  mustBeAbove(0, inertiaIn4, "moment of inertia (in4)");
  const share = spread ? 5 / 384 : 1 / 48;
  const spanIn = spanFt * IN_PER_FT;
  const sagIn = (share * loadLb * spanIn ** 3) / (STRUCTURAL_MODULUS_PSI * inertiaIn4);
  mustBeBetween(0, spanIn / LEAST_SPAN_IN_SAGS, sagIn, "sag (in), by a formula for a beam that stays nearly straight");
  return sagIn;
}

/**
 * Cross-section of steel in a rectangular tube.
 *
 * @formula A = outline - hollow; outline = roundedArea(width: w, height: h, radius: 2 * t) [in2];
 *   hollow = roundedArea(width: w - 2 * t, height: h - 2 * t, radius: t) [in2]; h = heightIn; w = widthIn; t = wallIn
 * @source AISC Manual, tables 1-11 and 1-12
 * @range a wall up to a quarter of the smaller side, where the corners meet
 * @checked 17 of 17 tubes, to 0.4 %
 */
export function tubeAreaIn2(tube: Tube): number {
  mustHaveCorners(tube);
  return roundedArea(outline(tube)) - roundedArea(hollow(tube));
}

/**
 * Moment of inertia of a rectangular tube about its level axis, the height standing.
 *
 * @formula I = outline - hollow; outline = roundedInertia(width: w, height: h, radius: 2 * t) [in4];
 *   hollow = roundedInertia(width: w - 2 * t, height: h - 2 * t, radius: t) [in4]; h = heightIn; w = widthIn;
 *   t = wallIn
 * @source AISC Manual, tables 1-11 and 1-12
 * @range a wall up to a quarter of the smaller side, where the corners meet
 * @checked 17 of 17 tubes about both axes, to 0.6 %
 */
export function tubeInertiaIn4(tube: Tube): number {
  mustHaveCorners(tube);
  return roundedInertia(outline(tube)) - roundedInertia(hollow(tube));
}

/** Long before this a steel beam has bent for good (plain geometry, by any steel's strength). */
const LEAST_SPAN_IN_SAGS = 10;

interface TubeSag extends Tube {
  spanFt: number;
  loadLb: number;
  spread?: boolean | undefined;
}

interface BeamSag {
  spanFt: number;
  loadLb: number;
  spread?: boolean | undefined;
  inertiaIn4: number;
}

interface RoundedRectangle {
  width: number;
  height: number;
  radius: number;
}

function outline({ heightIn, widthIn, wallIn }: Tube): RoundedRectangle {
  return { width: widthIn, height: heightIn, radius: 2 * wallIn };
}

function hollow({ heightIn, widthIn, wallIn }: Tube): RoundedRectangle {
  return { width: widthIn - 2 * wallIn, height: heightIn - 2 * wallIn, radius: wallIn };
}

/**
 * Area of a rectangle with rounded corners.
 *
 * @formula A = width * height - (4 - pi) * radius^2
 * @source plain geometry
 */
export function roundedArea({ width, height, radius }: RoundedRectangle): number {
  return width * height - (4 - Math.PI) * radius ** 2;
}

/**
 * The rectangle's, less what each rounded corner lacks: area, first and second moment from the corner's center.
 *
 * @formula I = width * height^3 / 12 - 4 * corner;
 *   corner = (1 / 3 - pi / 16) * radius^4 + c * radius^3 / 3 + c^2 * (1 - pi / 4) * radius^2 [in4];
 *   c = height / 2 - radius [in]
 * @source plain geometry
 */
export function roundedInertia({ width, height, radius }: RoundedRectangle): number {
  const toCenter = height / 2 - radius;
  const area = (1 - Math.PI / 4) * radius ** 2;
  const first = radius ** 3 / 6;
  const second = (1 / 3 - Math.PI / 16) * radius ** 4;
  return (width * height ** 3) / 12 - 4 * (second + 2 * toCenter * first + toCenter ** 2 * area);
}

function mustHaveCorners({ heightIn, widthIn, wallIn }: Tube): void {
  const thickest = Math.min(heightIn, widthIn) / 4;
  if (!(wallIn > 0 && wallIn <= thickest))
    throw new NoAnswer(
      `tube wall (in): wanted more than 0, up to ${thickest} (a quarter of the smaller side), got ${wallIn}`,
    );
}
