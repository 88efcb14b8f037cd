import { table } from "../cells/spread";
import { planCut } from "../math/sawing/cut-plan/plan-cut";
import { CUT_REQUEST } from "./sawing/cut-request";
import { endViewSvg } from "./sawing/end-view/end-view";

/** The end of the log with the boards of the plan, asked for as CUTPLAN is. It is no worksheet function: its cell is SVG. */
const endView = table(CUT_REQUEST, (request) => [[endViewSvg(planCut(request), request.settings.unit)]]);

/** The end of a log as SVG, for the cells that CUTPLAN is asked with; nothing where they give no plan. */
export function planDrawing(cells: readonly (unknown[][] | undefined)[]): string | undefined {
  const drawn = endView(...cells)[0]?.[0];
  return typeof drawn === "string" ? drawn : undefined;
}
