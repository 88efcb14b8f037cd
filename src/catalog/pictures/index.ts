import { board, dressed, pack, round, slab } from "./boards";
import { curve, emc } from "./charts";
import { cullBox, cullRing, cullSector } from "./cull";
import type { Picture } from "../../functions/drawing/marks";
import { band, belt, chain, drive, pulleys, rim, train } from "./drives";
import { sling, tongue } from "./haul";
import { girth, log, logTrim, sweep, taper, twoDiameters } from "./log";
import { bending, ram, screw, strain, stretch, tube } from "./mill";
import { patterns } from "./patterns";
import { chord, heads, kerf, readings, target, throat } from "./sawing";
import { cut, teeth } from "./teeth";
import { grain, stack, water } from "./wood";

/** Every picture, under the name that a function's `@picture` line asks for it by. */
export const PICTURES: Readonly<Record<string, Picture>> = {
  log,
  "log-trim": logTrim,
  diameters: twoDiameters,
  girth,
  taper,
  sweep,
  "cull-box": cullBox,
  "cull-sector": cullSector,
  "cull-ring": cullRing,
  board,
  dressed,
  pack,
  round,
  slab,
  grain,
  water,
  stack,
  emc,
  "drying-curve": curve,
  kerf,
  target,
  readings,
  heads,
  chord,
  patterns,
  throat,
  pulleys,
  train,
  drive,
  belt,
  band,
  chain,
  rim,
  screw,
  strain,
  stretch,
  bending,
  ram,
  teeth,
  cut,
  tube,
  sling,
  tongue,
};
