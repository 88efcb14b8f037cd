import { mustBeBetween } from "../errors";

/** Moisture at which the cell walls are full and no water lies free: shrinkage starts here (FPL-GTR-190, p. 4-2). */
export const FIBER_SATURATION_PCT = 30;

/** Specific gravity of the cell wall itself, from the handbook's equation. */
export const CELL_WALL_GRAVITY = 1.54;

/**
 * The most water a wood can hold, percent of its oven-dry weight: every cavity full.
 *
 * @formula MC = 100 * (1.54 - G) / (1.54 * G); G = specificGravity
 * @source FPL-GTR-282, Eq 4-3
 */
export function mostMoisturePercent({ specificGravity }: { specificGravity: number }): number {
  mustBeBetween(0.1, CELL_WALL_GRAVITY, specificGravity, "specific gravity");
  return (100 * (CELL_WALL_GRAVITY - specificGravity)) / (CELL_WALL_GRAVITY * specificGravity);
}

/** Refuses a moisture the wood cannot hold. `which` tells two moistures apart: "moisture", "from". */
export function mustFitIn(
  wood: { name: string; specificGravity: number },
  moisturePercent: number,
  which: string,
): void {
  const most = mostMoisturePercent(wood);
  mustBeBetween(
    0,
    Number(most.toFixed(1)),
    moisturePercent,
    `${which} (% of oven-dry weight; all that ${wood.name} can hold)`,
  );
}
