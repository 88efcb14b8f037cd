import { table } from "../../cells/spread";
import { endViewSvg } from "../../math/sawing/end-view/end-view";
import { planCut } from "../../math/sawing/cut-plan/plan-cut";
import { CUT_REQUEST } from "./cut-request";

/**
 * The end of the log with the boards of the plan that CUTPLAN answers for the same cells: SVG text in a single cell.
 * It is no worksheet function; the hosts show the picture beside the sheet.
 */
export const endView = table(CUT_REQUEST, (request) => [[endViewSvg(planCut(request))]]);
