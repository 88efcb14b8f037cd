import { halfAcrossAt, halfUpAt } from "../../../math/sawing/cut-plan/cut-job";
import type { Plan, View } from "../../../math/sawing/cut-plan/plan";
import { inchesText } from "../../../math/inches-text";

const SAWN = {
  live: "sawn live",
  slab: "sawn into live-edge slabs",
  cant: "sawn to a cant",
  quarter: "quarter-sawn",
  timber: "sawn about a timber",
};

/** What the drawing is of, in one line. */
export function headline({ job, boardFeet, total }: Plan): string {
  const { log } = job;
  const across = log.smallAcrossIn === log.smallUpIn ? "" : ` × ${inchesText(log.smallAcrossIn)}`;
  const money = job.byValue ? `, worth ${total.toFixed(2)}` : "";
  return `${inchesText(log.smallUpIn)}${across} in log, ${lengthText(log.lengthIn)} long, ${SAWN[job.pattern]}: ${boardFeet.toFixed(1)} board feet${money}`;
}

/** How the drawing is read. */
export function legend({ job, views }: Plan): string {
  const bowed = views.some(({ middle }) => middle) ? ", middle dotted" : "";
  const over =
    (job.pattern === "cant" || job.pattern === "timber") && views.length > 1
      ? "; boards under the cant: heights from its upper face, the log turned over"
      : "";
  return `small end solid, butt dashed${bowed}; figures at the left: inches above the bed; “at”: blade height${over}; fine rings: how the grain lies, evenly drawn`;
}

/** The drawing in words. */
export function description(plan: Plan): string {
  const { job, passes, logBoardFeet } = plan;
  const butt = `${inchesText(2 * halfUpAt(job.log, job.log.lengthIn))} × ${inchesText(2 * halfAcrossAt(job.log, job.log.lengthIn))}`;
  const boards = passes.reduce((count, { board, copies }) => count + (board ? board.widthsIn.length * copies : 0), 0);
  return (
    `End view to scale. Small end ${inchesText(job.log.smallUpIn)} × ${inchesText(job.log.smallAcrossIn)} in, butt ${butt} in, ` +
    `kerf ${inchesText(job.kerfIn)} in. ${passes.length} passes, ${boards} boards, ${plan.boardFeet.toFixed(2)} board feet ` +
    `out of a log of ${logBoardFeet.toFixed(2)}.`
  );
}

/** A view's title, with how high the small end is to be shimmed where the pith lies level. */
export function titleOf({ job }: Plan, { lies, butt, smallEnd, sides }: View): string {
  const title = lies === "log" ? "log as it lies" : "cant turned a quarter";
  if (job.sweep || smallEnd.pithIn !== butt.pithIn) return title;
  const raisedIn = smallEnd.pithIn - smallEnd.halfUpIn;
  const to16thIn = Math.round(raisedIn * 16) / 16;
  return to16thIn === 0 || sides ? title : `${title}, small end shimmed up ${inchesText(to16thIn)} in`;
}

function lengthText(lengthIn: number): string {
  const feet = Math.floor(lengthIn / 12 + 1e-9);
  const inches = lengthIn - 12 * feet;
  return inches > 1e-6 ? `${feet} ft ${inchesText(inches)} in` : `${feet} ft`;
}
