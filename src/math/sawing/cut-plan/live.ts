import { sumOf } from "../../numbers";
import { halfAcrossAt, halfUpAt, type CutJob, type Log } from "./cut-job";
import type { Board } from "./board";
import { edgedFlitches, type Flitches } from "./flitch";
import { flatsIn } from "./guides";
import { firstCut, type FirstCut } from "./first-cut";
import type { Outline, Pass, Sawn, View } from "./plan";
import { stepsWithin } from "./scale-steps";
import { bestStack, worthOf, type Stack, type WorthAt } from "./stack";
import { sectionsOf, straightBoards } from "./straight-flitch";
import { sweptBoards, sweptLog } from "./swept-flitch";
import { widthMenus } from "./width-menu";

/**
 * Live sawing, through and through: every pass drops the blade by one board and one kerf.
 *
 * @formula by dynamic program: f(j) is the greatest of 0 and V(j - t) + f(j - t - k) over the products, and the first
 *   cut is the j of the greatest f(j)
 * @source plain geometry: chords of ellipses; the stack by dynamic programming over the steps of the saw-head scale
 */
export function sawLive(job: CutJob): Sawn {
  const swept = job.sweep && sweptLog(job.log, job.sweep);
  const menus = widthMenus(job);
  const boards = swept
    ? sweptBoards(job, swept, menus, flatsIn(job))
    : straightBoards(job, sectionsOf(job), menus, flatsIn(job));
  const topIn = swept?.topIn ?? 2 * halfUpAt(job.log, job.log.lengthIn);
  const sawn = sawDown(job, topIn, edgedFlitches(job, boards, menus));
  const middle = swept && bowedMiddle(swept, job.log);
  return { ...sawn, views: [{ ...viewOfLog(job, swept?.pithIn[0]), middle, boards: placed(sawn.passes) }] };
}

/** What the best stack from the top down is worth. */
export function stackWorth(job: CutJob, topIn: number, flitches: Flitches): number {
  return worthOf(stackDown(job, topIn, flitches).stack);
}

/** A stack sawn from the top down, from the best first cut. */
export function sawDown(job: CutJob, topIn: number, flitches: Flitches): Omit<Sawn, "views"> {
  const { stepIn } = job;
  const { stack, worthAt } = stackDown(job, topIn, flitches);
  const first = firstCut(job, stack, job.bedSteps, worthAt);
  if (!first) return { total: 0, boardFeet: 0, passes: [] };
  const boards = boardsOf(job, first, flitches);
  return {
    total: sumOf(boards, ({ value }) => value),
    boardFeet: sumOf(boards, ({ boardFeet }) => boardFeet),
    firstCut: {
      chosenIn: first.face * stepIn,
      lowestIn: first.lowest * stepIn,
      highestIn: first.highest * stepIn,
    },
    passes: passesDown(job, first.face * stepIn, boards),
  };
}

export function stackDown(job: CutJob, topIn: number, flitches: Flitches): { stack: Stack; worthAt: WorthAt } {
  const { stepIn, products } = job;
  const worthAt = (product: number, face: number) =>
    flitches.value(product, (face - products[product]!.greenSteps) * stepIn);
  return { stack: bestStack(job, stepsWithin(topIn, stepIn), job.bedSteps, worthAt), worthAt };
}

function boardsOf(job: CutJob, first: FirstCut, flitches: Flitches): Board[] {
  let face = first.face;
  return first.drops.map((product) => {
    const board = flitches.board(product, (face - job.products[product]!.greenSteps) * job.stepIn);
    face -= job.products[product]!.greenSteps + job.kerfSteps;
    return board;
  });
}

/** The first pass takes the top slab; each later one frees the board above it. Boards run from the top down. */
export function passesDown(job: CutJob, firstCutIn: number, boards: readonly Board[]): Pass[] {
  const first: Pass = { number: 1, bladeHeightIn: firstCutIn, copies: 1, task: { kind: "first cut" } };
  const rest = boards.map((board, i): Pass => {
    const dropIn = board.product.greenIn + job.kerfIn;
    return { number: i + 2, bladeHeightIn: board.lowIn - job.kerfIn, dropIn, board, copies: 1 };
  });
  return [first, ...rest];
}

/** The boards that passes free, to be drawn. */
export function placed(passes: readonly Pass[]): View["boards"] {
  return passes.flatMap(({ board, number }) => (board ? [{ board, pass: number }] : []));
}

/** The log as it lies for its first cut. */
export function viewOfLog(job: CutJob, endPithIn?: number): View {
  const outline = (z: number): Outline => {
    const halfUpIn = halfUpAt(job.log, z);
    const levelIn = endPithIn ?? halfUpAt(job.log, job.log.lengthIn);
    return { halfAcrossIn: halfAcrossAt(job.log, z), halfUpIn, pithIn: job.lies === "flat" ? halfUpIn : levelIn };
  };
  const ends = { butt: outline(job.log.lengthIn), smallEnd: outline(0) };
  return { lies: "log", ...ends, guidesIn: job.guideOpeningIn, boards: [] };
}

function bowedMiddle(swept: ReturnType<typeof sweptLog>, log: Log): View["middle"] {
  const at = swept.pithIn.length >> 1;
  return {
    halfAcrossIn: halfAcrossAt(log, log.lengthIn / 2),
    halfUpIn: halfUpAt(log, log.lengthIn / 2),
    pithIn: swept.pithIn[at]!,
    acrossIn: swept.acrossIn[at]!,
  };
}
