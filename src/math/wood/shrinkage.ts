import { NoAnswer } from "../errors";
import { FIBER_SATURATION_PCT, mustFitIn } from "./moisture";
import { speciesNamed, type SpeciesName } from "./species";

/** The way the growth rings run across the width of a piece that shrinks. */
export const SIZE_GRAINS = {
  tangential: ["flat", "flat-sawn", "flatsawn", "flat grain", "plain-sawn", "plainsawn"],
  radial: ["quarter", "quarter-sawn", "quartersawn", "vertical grain", "edge grain"],
} as const;
export const GRAINS = { ...SIZE_GRAINS, volumetric: ["volume"] } as const;
export type Grain = keyof typeof GRAINS;

interface Drying {
  species: SpeciesName;
  fromPercent: number;
  toPercent: number;
  grain: Grain;
}
type DryingOfASize = Drying & { sizeIn: number; grain: keyof typeof SIZE_GRAINS };

/**
 * Percent of its size at the first moisture that a piece shrinks by the second; negative where it swells.
 *
 * @formula S = 100 * (1 - sizeRatio())
 * @source FPL-GTR-282, Eq 4-9
 * @source FPL-GTR-190, Table 4-3 for S0; Table 13-5 where the page of Table 4-3 was not to be had
 * @source common practice, no source: black, pin, scarlet, southern red and cherrybark oak take the row of commercial red
 *   oak in Table 13-5; bur and swamp white oak that of commercial white oak
 * @range moistures from 0 to all that the species can hold; 30 % is the average at which shrinkage starts
 */
export function shrinkagePercent(drying: Drying): number {
  return 100 * (1 - sizeRatio(drying));
}

/**
 * The size a piece dries to.
 *
 * @formula size = sizeIn * sizeRatio()
 * @source FPL-GTR-282, Eq 4-9
 * @source FPL-GTR-190, Table 4-3 for S0; Table 13-5 where the page of Table 4-3 was not to be had
 * @source common practice, no source: oaks without a row of their own take that of commercial red or white oak
 * @range moistures from 0 to all that the species can hold
 */
export function driedSizeIn({ sizeIn, ...drying }: DryingOfASize): number {
  return sizeIn * sizeRatio(drying);
}

/**
 * The size to saw at the first moisture for a piece to be the size wanted at the second.
 *
 * @formula size = sizeIn / sizeRatio()
 * @source FPL-GTR-282, Eq 4-9
 * @source FPL-GTR-190, Table 4-3 for S0; Table 13-5 where the page of Table 4-3 was not to be had
 * @source common practice, no source: oaks without a row of their own take that of commercial red or white oak
 * @range moistures from 0 to all that the species can hold
 */
export function greenSizeIn({ sizeIn, ...drying }: DryingOfASize): number {
  return sizeIn / sizeRatio(drying);
}

/**
 * The size at the second moisture over the size at the first.
 *
 * @formula ratio = left2 / left1; left1 = 1 - S0 / 100 * max(0, 1 - fromPercent / 30) [share left];
 *   left2 = 1 - S0 / 100 * max(0, 1 - toPercent / 30) [share left];
 *   S0 = row.radialPercent if grain = "radial", row.tangentialPercent if grain = "tangential", else
 *   row.volumetricPercent [%]; row = speciesNamed()
 * @source FPL-GTR-282, Eq 4-9
 */
export function sizeRatio({ species, fromPercent, toPercent, grain }: Drying): number {
  mustFitIn(speciesNamed(species), fromPercent, "from");
  mustFitIn(speciesNamed(species), toPercent, "to");
  const toOvendry = shrinkageToOvendryPercent(species, grain);
  return remaining(toOvendry, toPercent) / remaining(toOvendry, fromPercent);
}

/** The share of the green size that is left at a moisture. */
function remaining(toOvendryPercent: number, moisturePercent: number): number {
  return 1 - (toOvendryPercent / 100) * Math.max(0, 1 - moisturePercent / FIBER_SATURATION_PCT);
}

function shrinkageToOvendryPercent(species: SpeciesName, grain: Grain): number {
  const { radialPercent, tangentialPercent, volumetricPercent } = speciesNamed(species);
  const figure = { radial: radialPercent, tangential: tangentialPercent, volumetric: volumetricPercent }[grain];
  if (figure === undefined)
    throw new NoAnswer(
      `${grain} shrinkage: no figure for ${species} in the Wood Handbook's Tables 4-3 and 13-5 as far as they were seen`,
    );
  return figure;
}
