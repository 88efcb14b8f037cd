import type { TableCell } from "../../cells/spread";
import { headHeights } from "../../math/sawing/head-heights";
import { heightIn, type HeightUnit } from "./heights";

/** The settings of the saw head as a table, a row for every pass. */
export function headHeightsTable({
  unit,
  ...asked
}: Parameters<typeof headHeights>[0] & { unit: HeightUnit }): TableCell[][] {
  const passes = headHeights(asked).map(({ bladeHeightIn, dropIn }, at) => [
    at + 1,
    heightIn(unit, bladeHeightIn),
    dropIn === undefined ? undefined : heightIn(unit, dropIn),
    dropIn === undefined ? "first cut" : asked.thicknessIn,
  ]);
  return [["pass", "blade height", "drop", "board"], ...passes];
}
