import { mustBeAbove, NoAnswer } from "../errors";

/** One belt drive: the pulley that drives and the pulley it drives, by pitch diameter. */
export interface Drive {
  driverIn: number;
  drivenIn: number;
}

/**
 * Speed of the driven pulley.
 *
 * @formula n2 = n1 * d1 / d2 * speedKept(); n1 = rpm; d1 = driverIn; d2 = drivenIn
 * @source Khurmi & Gupta, chapter 11, Example 11.1, p 333
 * @source Hawkins, volume 8, belt rules
 * @range slip from 0 to 20 %
 * @checked 8 of 8 printed examples, alone and in trains
 */
export function pulleyRpm({ rpm, driverIn, drivenIn, slipPercent = 0 }: PulleyRpm): number {
  mustBeAbove(0, drivenIn, "driven pulley (in)");
  return ((rpm * driverIn) / drivenIn) * speedKept(slipPercent);
}

/**
 * Diameter of the driven pulley that turns at a wanted speed.
 *
 * @formula d2 = d1 * n1 / n2 * speedKept(); n1 = rpm; d1 = driverIn; n2 = wantedRpm
 * @source Khurmi & Gupta, chapter 11, Example 11.1, p 333
 * @source Hawkins, volume 8, belt rules
 * @range slip from 0 to 20 %
 * @checked 3 of 3 printed examples
 */
export function pulleySizeIn({ rpm, driverIn, wantedRpm, slipPercent = 0 }: PulleySize): number {
  mustBeAbove(0, wantedRpm, "wanted speed (rpm)");
  return ((rpm * driverIn) / wantedRpm) * speedKept(slipPercent);
}

/**
 * Speed at the end of several belt drives, each slipping by the same percent.
 *
 * @formula n = n1 * product(d1 / d2) * speedKept()^count(d1); n1 = rpm; d1 = drives.driverIn [in];
 *   d2 = drives.drivenIn [in]
 * @source Khurmi & Gupta, chapter 11, Example 11.1, p 333
 * @range slip from 0 to 20 %
 * @checked 5 of 5 printed examples
 */
export function pulleyTrainRpm({ rpm, drives, slipPercent = 0 }: PulleyTrain): number {
  return drives.reduce((speed, drive) => pulleyRpm({ rpm: speed, ...drive, slipPercent }), rpm);
}

interface PulleyRpm extends Drive {
  rpm: number;
  slipPercent?: number | undefined;
}

interface PulleySize {
  rpm: number;
  driverIn: number;
  wantedRpm: number;
  slipPercent?: number | undefined;
}

interface PulleyTrain {
  rpm: number;
  drives: readonly Drive[];
  slipPercent?: number | undefined;
}

/**
 * A belt that slips by a fifth burns (common practice, no source). More is a bare 1 or 0.5, meant as percent and read as
 * a share, and would set a wheel to run far too fast.
 */
const MOST_SLIP_PERCENT = 20;

/**
 * The share of its speed that a belt hands on.
 *
 * @formula kept = 1 - (slipPercent or 0) / 100
 * @source plain arithmetic
 */
export function speedKept(slipPercent: number): number {
  if (!(slipPercent >= 0 && slipPercent <= MOST_SLIP_PERCENT))
    throw new NoAnswer(
      `belt slip (%): wanted 0 to ${MOST_SLIP_PERCENT}, got ${slipPercent}; one percent is written 1%, a half 0.5%`,
    );
  return 1 - slipPercent / 100;
}
