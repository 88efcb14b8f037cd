import { table } from "../cells/spread";
import { planCut } from "../math/sawing/cut-plan/plan-cut";
import { CUT_REQUEST } from "./sawing/cut-request";
import { endViewSvg } from "./sawing/end-view/end-view";

/** The end of a log as SVG: with the views of a cant beside each other, and one below the other. */
export interface PlanDrawing {
  beside: string;
  below: string;
}

/** The end of the log with the boards of the plan, asked for as CUTPLAN is. It is no worksheet function: its cells are SVG. */
const endView = table(CUT_REQUEST, (request) => {
  const plan = planCut(request);
  return [(["beside", "below"] as const).map((lay) => endViewSvg(plan, request.settings.unit, lay))];
});

/** The end of a log, for the cells that CUTPLAN is asked with; nothing where they give no plan. */
export function planDrawing(cells: readonly (unknown[][] | undefined)[]): PlanDrawing | undefined {
  const [beside, below] = endView(...cells)[0] ?? [];
  return typeof beside === "string" && typeof below === "string" ? { beside, below } : undefined;
}
