import { WATER_LB_PER_FT3 } from "../units";
import { FIBER_SATURATION_PCT, mustFitIn } from "./moisture";
import { speciesNamed, type SpeciesName } from "./species";

/** Moisture at which the second printed specific gravity stands. */
const DRY_GRAVITY_MOISTURE_PCT = 12;

/**
 * Pounds in a cubic foot of wood at a moisture; green where none is given.
 *
 * Green, and above 30 %, the wood has its green volume. Below, its volume goes down in a straight line that passes through both
 * specific gravities printed for the species, green and at 12 %.
 *
 * @formula w = 62.4 * Gx * (1 + x / 100); Gx = Gb green and from 30 % up, below Gx = Gb / (1 - Sx / 100) with
 *   Sx = S12 * (30 - x) / (30 - 12) and S12 = 100 * (1 - Gb / G12)
 * @source FPL-GTR-282, Eq 4-14 for the weight, Eq 4-9 and 4-11 for the volume under 30 %
 * @source FIADB REF_SPECIES for specific gravity and green moisture
 * @range moisture from 0 to all that the species can hold (FPL-GTR-282, Eq 4-3)
 */
export function woodWeightLbPerFt3({
  species,
  moisturePercent,
}: {
  species: SpeciesName;
  moisturePercent?: number;
}): number {
  const { specificGravity, greenMoisturePercent } = speciesNamed(species);
  if (moisturePercent === undefined) return WATER_LB_PER_FT3 * specificGravity * (1 + greenMoisturePercent / 100);
  mustFitIn(species, moisturePercent, "moisture");
  return WATER_LB_PER_FT3 * specificGravityAt(species, moisturePercent) * (1 + moisturePercent / 100);
}

/** Pounds in a cubic foot of green heartwood and of green sapwood, as far as the handbook's moisture of them was seen. */
export function heartAndSapLbPerFt3(species: SpeciesName): number[] {
  const { heartwoodMoisturePercent, sapwoodMoisturePercent } = speciesNamed(species);
  return [heartwoodMoisturePercent, sapwoodMoisturePercent]
    .filter((moisturePercent) => moisturePercent !== undefined)
    .map((moisturePercent) => woodWeightLbPerFt3({ species, moisturePercent }));
}

/** Oven-dry weight over the volume at a moisture. */
function specificGravityAt(species: SpeciesName, moisturePercent: number): number {
  const { specificGravity, specificGravityAt12 } = speciesNamed(species);
  if (moisturePercent >= FIBER_SATURATION_PCT) return specificGravity;
  const shrunkAt12 = 1 - specificGravity / specificGravityAt12;
  const way = (FIBER_SATURATION_PCT - moisturePercent) / (FIBER_SATURATION_PCT - DRY_GRAVITY_MOISTURE_PCT);
  return specificGravity / (1 - shrunkAt12 * way);
}
