import { endView } from "./sawing/end-view";

/** The end of a log as SVG, for the cells that CUTPLAN is asked with; nothing where they give no plan. */
export function planDrawing(cells: readonly (unknown[][] | undefined)[]): string | undefined {
  const [diameter = [], length = [], products = [], kerf = [], pattern, settings] = cells;
  const drawn = endView(diameter, length, products, kerf, pattern, settings)[0]?.[0];
  return typeof drawn === "string" ? drawn : undefined;
}
