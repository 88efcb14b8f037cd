import { AIR_DRYING_DAYS } from "../../../math/drying/air-drying-days.table";
import { scribnerDecimalCBoardFeet } from "../../../math/logs/scribner-decimal-c";
import { undersizeFactor } from "../../../math/sawing/target-size";
import { speciesNamed } from "../../../math/wood/species";
import { boundWoodLbPerFt3 } from "../../../math/wood/weight";
import { woodOf } from "../../../math/wood/wood";
import type { Given } from "./worked";
import type { Value } from "./values";

/** What a formula reads out of a table, by the name it asks for it. */
export const BY_CODE: Readonly<Record<string, (given: never) => unknown>> = {
  airDryingDays: ({ species }: { species: keyof typeof AIR_DRYING_DAYS }) => AIR_DRYING_DAYS[species],
  boundWoodLbPerFt3,
  scribnerDecimalCBoardFeet,
  speciesNamed: ({ species }: { species: Parameters<typeof speciesNamed>[0] }) => speciesNamed(species),
  undersizeFactor: ({ percent }: { percent: number }) => undersizeFactor(percent),
  woodOf: ({ species }: { species: Parameters<typeof woodOf>[0] }) => woodOf(species),
};

/** What the table says; nothing where it is asked for by the worksheet function alone. */
export function byCode(name: string, given: Given): Value {
  return BY_CODE[name]?.(given as never) as Value;
}
