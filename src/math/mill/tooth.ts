import { mustBeAbove, mustBeBelow } from "../errors";

/**
 * Wood that each tooth takes.
 *
 * @formula bite = v * p / c; v = feedFpm; c = speedFpm; p = pitchIn
 * @source plain geometry: the log's travel while the band moves by one tooth
 * @range a feed under the speed of the band
 */
export function toothBiteIn({ feedFpm, speedFpm, pitchIn }: Bite): number {
  mustBeAbove(0, speedFpm, "band speed (ft/min)");
  mustBeBelow(speedFpm, feedFpm, "feed (ft/min), which is slower than the band");
  return (feedFpm * pitchIn) / speedFpm;
}

/**
 * Feed at which each tooth takes a wanted bite.
 *
 * @formula v = bite * c / p; bite = biteIn; c = speedFpm; p = pitchIn
 * @source plain geometry: the log's travel while the band moves by one tooth
 * @range a bite under the pitch
 */
export function feedForBiteFpm({ biteIn, speedFpm, pitchIn }: FeedForBite): number {
  mustBeAbove(0, pitchIn, "tooth pitch (in)");
  mustBeBelow(pitchIn, biteIn, BITE);
  return (biteIn * speedFpm) / pitchIn;
}

/**
 * Share of the gullet that the solid wood of one cut would fill.
 *
 * @formula share = bite * depth / A; A = p * g / 1.75 [in2]; bite = biteIn; depth = depthIn; p = pitchIn;
 *   g = gulletIn
 * @source common practice, no source but a sharpening firm's trade note: gullet area about pitch times depth over 1.75
 * @range a bite under the pitch
 */
export function gulletFillShare({ biteIn, depthIn, pitchIn, gulletIn }: GulletFill): number {
  mustBeAbove(0, pitchIn, "tooth pitch (in)");
  mustBeAbove(0, gulletIn, "gullet depth (in)");
  mustBeBelow(pitchIn, biteIn, BITE);
  const gulletAreaIn2 = (pitchIn * gulletIn) / GULLET_SHAPE;
  return (biteIn * depthIn) / gulletAreaIn2;
}

const BITE = "bite (in), which is less than from tooth to tooth";

/** A gullet is round at the bottom and leans: its area is that of the box round it over this. */
const GULLET_SHAPE = 1.75;

interface Bite {
  feedFpm: number;
  speedFpm: number;
  pitchIn: number;
}

interface FeedForBite {
  biteIn: number;
  speedFpm: number;
  pitchIn: number;
}

interface GulletFill {
  biteIn: number;
  depthIn: number;
  pitchIn: number;
  gulletIn: number;
}
