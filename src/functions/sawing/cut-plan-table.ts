import type { TableCell } from "../../cells/spread";
import type { Pass, Plan } from "../../math/sawing/cut-plan/plan";
import { planCut } from "../../math/sawing/cut-plan/plan-cut";
import { inchesText } from "../../math/inches-text";
import type { PlanRequest } from "./cut-request";
import { productText } from "./product-text";
import { heightIn, type HeightUnit } from "./heights";
import { firstCutRemark, noBoardRemark, passNote, shimRemark, warningsOf } from "./plan-remarks";

type Row = TableCell[];

const HEADINGS = [
  "pass",
  "blade height",
  "thickness",
  "width",
  "length",
  "board feet",
  "drop",
  "sawn",
  "value",
  "note",
];

/** The cut plan as a table: a row for every pass, the total, then what a sawyer should know beside it. */
export function cutPlanTable(request: PlanRequest): Row[] {
  const plan = planCut(request);
  const { job, passes, total, boardFeet } = plan;
  const unit = request.settings.unit ?? "in";
  return [
    HEADINGS,
    ...passes.map((pass) => passRow(pass, job.byValue, unit)),
    row({ pass: "total", "board feet": boardFeet, value: job.byValue ? total : undefined }),
    ...remarks(plan, unit),
    ...warningsOf(plan, request).map((note) => row({ pass: "warning", note })),
  ];
}

function passRow(pass: Pass, byValue: boolean, unit: HeightUnit): Row {
  const { number, bladeHeightIn, dropIn, board, copies } = pass;
  const notes = [board ? productText(board.product) : "", passNote(pass)].filter((note) => note !== "");
  const cells = { pass: number, "blade height": heightIn(unit, bladeHeightIn), note: notes.join(", ") };
  if (!board) return row(cells);
  return row({
    ...cells,
    thickness: board.product.tallyIn,
    width: board.widthsIn.length === 1 ? board.widthsIn[0] : board.widthsIn.map(inchesText).join(" + "),
    length: board.lengthFt,
    "board feet": copies * board.boardFeet,
    drop: dropIn === undefined ? undefined : heightIn(unit, dropIn),
    sawn: board.product.greenIn,
    value: byValue ? copies * board.value : undefined,
  });
}

/** What the numbers mean for the work: a name, its figure, and a sentence at the right. */
function remarks(plan: Plan, unit: HeightUnit): Row[] {
  const { firstCut, shimIn, logBoardFeet, boardFeet, mostBoardFeet, whyNone } = plan;
  const rows: Row[] = [];
  const say = (pass: string, figure: number | undefined, note: string) =>
    rows.push(row({ pass, "blade height": figure, note }));
  if (whyNone) say("no board", undefined, noBoardRemark(whyNone));
  if (firstCut) say("first cut", heightIn(unit, firstCut.chosenIn), firstCutRemark(plan, firstCut, unit));
  if (shimIn > 0) say("shim", heightIn(unit, shimIn), shimRemark(plan, unit));
  say("log holds", logBoardFeet, "board feet of solid wood");
  if (boardFeet > 0)
    say(
      "share reached",
      boardFeet / mostBoardFeet,
      `of the ${mostBoardFeet.toFixed(1)} board feet that no plan with this kerf can pass`,
    );
  return rows;
}

function row(cells: Record<string, string | number | undefined>): Row {
  return HEADINGS.map((heading) => cells[heading]);
}
