import { mustBeAbove } from "../errors";

/**
 * Wood that each tooth takes.
 *
 * @formula bite = feed * pitch / speed, feed and band speed both in feet per minute
 * @source plain geometry: the log's travel while the band moves by one tooth
 */
export function toothBiteIn({ feedFpm, speedFpm, pitchIn }: Bite): number {
  mustBeAbove(0, speedFpm, "band speed (ft/min)");
  return (feedFpm * pitchIn) / speedFpm;
}

/**
 * Feed at which each tooth takes a wanted bite.
 *
 * @formula feed = bite * speed / pitch
 * @source plain geometry: the log's travel while the band moves by one tooth
 */
export function feedForBiteFpm({ biteIn, speedFpm, pitchIn }: FeedForBite): number {
  mustBeAbove(0, pitchIn, "tooth pitch (in)");
  return (biteIn * speedFpm) / pitchIn;
}

/**
 * Share of the gullet that the solid wood of one cut would fill.
 *
 * @formula share = bite * depth / (pitch * gullet depth / 1.75)
 * @source common practice, no source but a sharpening firm's trade note: gullet area about pitch times depth over 1.75
 */
export function gulletFillShare({ biteIn, depthIn, pitchIn, gulletIn }: GulletFill): number {
  mustBeAbove(0, pitchIn, "tooth pitch (in)");
  mustBeAbove(0, gulletIn, "gullet depth (in)");
  const gulletAreaIn2 = (pitchIn * gulletIn) / GULLET_SHAPE;
  return (biteIn * depthIn) / gulletAreaIn2;
}

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
