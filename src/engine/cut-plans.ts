import { planDrawing, type PlanDrawing } from "../functions/plan-drawing";
import { keyOf, type Place } from "./messages";

type Cells = (unknown[][] | undefined)[];

/** Remembers what each cell asked CUTPLAN, so that the page can draw the end of its log when the cell is chosen. */
export class CutPlans {
  private asked = new Map<string, { cells: Cells; drawn?: PlanDrawing | undefined }>();

  keep(place: Place, cells: Cells): void {
    this.asked.set(keyOf(place), { cells });
  }

  /** The end view of the plan in a cell, as drawings; nothing where the cell holds no plan. It is drawn once. */
  drawnAt(place: Place): PlanDrawing | undefined {
    const plan = this.asked.get(keyOf(place));
    if (!plan) return undefined;
    if (!("drawn" in plan)) plan.drawn = planDrawing(plan.cells);
    return plan.drawn;
  }
}
