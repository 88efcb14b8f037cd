import { LOGSCALE } from "../../src/functions";
import { logScaleBoardFeet } from "../../src/math/logs/log-scale";
import { median, sideBySide } from "./side-by-side";

/**
 * What the door costs: 100,000 log rows through cells and spread, as one spilled call, against the bare formula in a
 * loop that makes an answer of the same shape.
 */
const ROWS = 100_000;
const diameters = Array.from({ length: ROWS }, (_, i) => [8 + (i % 400) / 10]);
const lengths = Array.from({ length: ROWS }, (_, i) => [8 + (i % 9)]);
const rule = [["International 1/4"]];

const { first: spilled, second: bare } = sideBySide(
  () => LOGSCALE(diameters, lengths, rule),
  () =>
    diameters.map(([diameterIn], i) => [
      logScaleBoardFeet({
        diameterIn: diameterIn!,
        lengthFt: lengths[i]![0]!,
        rule: "International 1/4",
        rounding: "none",
      }),
    ]),
);
console.log(
  `100,000 logs in one spilled LOGSCALE: ${median(spilled).toFixed(1)} ms; the bare formula in a loop: ` +
    `${median(bare).toFixed(1)} ms; ratio ${(median(spilled) / median(bare)).toFixed(2)} (aim at most 6)`,
);
