import { WATER_LB_PER_FT3 } from "../units";
import { FIBER_SATURATION_PCT, mustFitIn } from "./moisture";
import { greenMoisturePercentOf, woodOf, type Wood, type WoodGiven } from "./wood";

/** Moisture at which the second printed specific gravity stands. */
const DRY_GRAVITY_MOISTURE_PCT = 12;

/** Share of its green volume that a wood of specific gravity 1 would lose to oven dry, where its own was not seen. */
const VOLUME_LOST_PER_GRAVITY = 0.265;

/**
 * Pounds in a cubic foot of wood at a moisture; green where none is given.
 *
 * Green, and above 30 %, the wood has its green volume. Below, its volume goes down in a straight line that passes through both
 * specific gravities printed for the species, green and at 12 %; where only the first is known, by the handbook's estimate of shrinkage from density.
 *
 * @formula w = 62.4 * Gx * (1 + x / 100); x = moisturePercent or wood.greenMoisturePercent [%];
 *   Gx = Gb if (moisturePercent or 30) >= 30, Gb / (1 - (1 - Gb / G12) * (30 - x) / 18) if G12, else Gb / (1 - 0.265
 *   * Gb * (30 - x) / 30); Gb = wood.specificGravity; G12 = wood.specificGravityAt12; wood = woodOf()
 * @source FPL-GTR-282, Eq 4-14 for the weight, Eq 4-9 and 4-11 for the volume under 30 %
 * @source FPL-GTR-282, Eq 4-13 for the volume where only one specific gravity is known
 * @source FIADB REF_SPECIES for specific gravity and green moisture
 * @source GWDD for the specific gravity of trees that stand in towns
 * @source common practice, no source: their green moisture is the mean of the genus in FIADB REF_SPECIES
 * @range moisture from 0 to all that the species can hold (FPL-GTR-282, Eq 4-3)
 */
export function woodWeightLbPerFt3({
  species,
  moisturePercent,
}: {
  species: WoodGiven;
  moisturePercent?: number;
}): number {
  const wood = woodOf(species);
  if (moisturePercent === undefined)
    return WATER_LB_PER_FT3 * wood.specificGravity * (1 + greenMoisturePercentOf(wood) / 100);
  mustFitIn(wood, moisturePercent, "moisture");
  return weightAtMoistureLbPerFt3(wood, moisturePercent);
}

/** Pounds in a cubic foot of wood at a moisture that it can hold. */
export function weightAtMoistureLbPerFt3(wood: Wood, moisturePercent: number): number {
  return WATER_LB_PER_FT3 * specificGravityAt(wood, moisturePercent) * (1 + moisturePercent / 100);
}

/** Oven-dry weight over the volume at a moisture. */
function specificGravityAt({ specificGravity, specificGravityAt12 }: Wood, moisturePercent: number): number {
  if (moisturePercent >= FIBER_SATURATION_PCT) return specificGravity;
  const under = FIBER_SATURATION_PCT - moisturePercent;
  if (specificGravityAt12 === undefined)
    return specificGravity / (1 - VOLUME_LOST_PER_GRAVITY * specificGravity * (under / FIBER_SATURATION_PCT));
  const shrunkAt12 = 1 - specificGravity / specificGravityAt12;
  return specificGravity / (1 - shrunkAt12 * (under / (FIBER_SATURATION_PCT - DRY_GRAVITY_MOISTURE_PCT)));
}
