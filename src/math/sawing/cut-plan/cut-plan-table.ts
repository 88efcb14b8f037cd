import type { CutRequest } from "./cut-request";
import { cantFits } from "./cant";
import { inchesText } from "../inches-text";
import type { Pass, Plan } from "./plan";
import { planCut } from "./plan-cut";

type Row = (string | number | undefined)[];

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

/**
 * The cut plan as a table: a row for every pass, the total, then what a sawyer should know beside it.
 *
 * @formula the plan of the greatest total: f(j) = max over products of V + f(j - t - k), blade height = lower face of the board - kerf
 * @source plain geometry: straight taper, elliptical ends, boards square-edged; exact by dynamic programming on the steps of the saw-head scale
 * @range a log up to 300 in and 300 ft whose butt goes between the blade guides, or does after flats; up to about 4 million cuts to weigh
 * @checked 8 of 8 plans worked separately, to 1e-6 board feet; 610 of 610 small logs against a search of everything; all boards inside 570 random logs and a kerf apart; live sawing 0 to 21 % over 85 printed cells of the International 1/4 rule from 10 in up
 */
export function cutPlanTable(request: CutRequest): Row[] {
  const plan = planCut(request);
  return [
    HEADINGS,
    ...plan.passes.map((pass) => passRow(pass, plan.job.byValue)),
    row({ pass: "total", "board feet": plan.boardFeet, value: plan.job.byValue ? plan.total : undefined }),
    ...remarks(plan),
  ];
}

function passRow({ number, bladeHeightIn, dropIn, board, copies, note }: Pass, byValue: boolean): Row {
  if (!board) return row({ pass: number, "blade height": bladeHeightIn, note });
  const widths = board.widthsIn.length === 1 ? board.widthsIn[0] : board.widthsIn.map(inchesText).join(" + ");
  const remarks = [board.product.name, note].filter((remark) => remark !== "");
  return row({
    pass: number,
    "blade height": bladeHeightIn,
    thickness: board.product.tallyIn,
    width: widths,
    length: board.lengthFt,
    "board feet": copies * board.boardFeet,
    drop: dropIn,
    sawn: board.product.greenIn,
    value: byValue ? copies * board.value : undefined,
    note: remarks.join(", "),
  });
}

/** What the numbers mean for the work: a name, its figure, and a sentence at the right. */
function remarks(plan: Plan): Row[] {
  const rows: Row[] = [];
  const say = (pass: string, figure: number | undefined, note: string) =>
    rows.push(row({ pass, "blade height": figure, note }));
  const { opening } = plan;
  if (plan.passes.length === 0) say("no board", undefined, whyNone(plan));
  if (opening) say(`opening face`, opening.chosenIn, openingRemark(plan, opening));
  const shimIn = shimUnderSmallEndIn(plan);
  if (shimIn > 0)
    say("shim", shimIn, `inches to raise the small end off the bed, so that the pith is level${whenShimmed(plan)}`);
  say("log holds", plan.logBoardFeet, "board feet of solid wood");
  if (plan.boardFeet > 0) {
    const share = plan.boardFeet / plan.mostBoardFeet;
    say(
      "share reached",
      share,
      `of the ${plan.mostBoardFeet.toFixed(1)} board feet that no plan with this kerf can pass`,
    );
  }
  for (const warning of plan.warnings) say("warning", undefined, warning);
  return rows;
}

/** Why a log holds no board, where a setting alone forbids them all. */
function whyNone({ job }: Plan): string {
  if (job.lengthsFt.length === 0) return "no length goes into this log with its trim: see minimum length and trim";
  if (job.pattern !== "slab" && job.widths.length === 0)
    return "no width goes into this log: see widths, or minimum and maximum width";
  if (job.pattern === "cant" && !job.cantWidths.some((width) => cantFits(job, width)))
    return "no cant as wide as these goes into this log: see cant widths";
  return "none of these products comes out of this log";
}

/** Nothing for a log that lies flat or bowed on the bed. */
function shimUnderSmallEndIn({ job }: Plan): number {
  const level = job.lies === "split" || job.pattern === "cant" || job.pattern === "quarter";
  return level && !job.sweep ? (job.log.taperInPerIn * job.log.lengthIn) / 2 : 0;
}

/** A sawn face lies on the bed by itself. */
function whenShimmed({ job }: Plan): string {
  if (job.pattern === "cant") return "; none while the log lies on its flat, and again under the turned cant";
  return job.pattern === "quarter" ? "; none under the quarters" : "";
}

function openingRemark({ job }: Plan, { lowestIn, highestIn }: NonNullable<Plan["opening"]>): string {
  if (job.openingSteps !== undefined) return "as set; leave the setting out to see the best";
  const what = job.pattern === "cant" ? " of the turned cant" : "";
  if (lowestIn === highestIn)
    return `the height${what} that gives this total with these drops; one scale step off gives less`;
  return `any height${what} from ${inchesText(lowestIn)} to ${inchesText(highestIn)} gives the same total with the same drops; this is the middle`;
}

function row(cells: Record<string, string | number | undefined>): Row {
  return HEADINGS.map((heading) => cells[heading]);
}
