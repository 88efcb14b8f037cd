import { sumOf } from "../../numbers";
import { NEAR } from "../../rounding";
import { IN_PER_FT } from "../../units";
import { boardOf, type Board } from "./board";
import { cantFits, freePlaces, plannedCant, type Place } from "./cant";
import { offPith } from "./cant-place";
import { halfAcrossAt, halfUpAt, type BoardWidth, type CutJob, type Product } from "./cut-job";
import { edgedFlitches, type EdgedBoards, type Flitches } from "./flitch";
import { mustGoBetweenGuides } from "./guides";
import { jacket, jacketBoards, jacketWorth } from "./jacket";
import { passesDown, stackDown, viewOfLog } from "./live";
import type { Sawn } from "./plan";
import { boardsUnder, SAME_WORTH } from "./stack";
import { quarterTurned, sectionsOf, straightBoards } from "./straight-flitch";
import { widthMenus } from "./width-menu";

/** One way up of the timber: the side that the cant has, and the side that is left of it after the quarter turn. */
interface Stood {
  width: BoardWidth;
  product: Product;
}

/**
 * A timber with the heart in it, and boards out of the sides: the log is sawn to a cant as wide as one side of the timber,
 * centred about the pith to half a scale step; the cant is turned a quarter, and sawn into boards, the timber, and boards
 * again. Both ways up are tried, and every place of the timber that holds the pith. The timber is as long as a full
 * section goes.
 *
 * @formula by dynamic program: the greatest, over ways up and places of the timber, of the jackets outside the cant, the
 *   stacks above and below the timber, and the timber itself
 * @source plain geometry: chords of ellipses; the stacks by dynamic programming over the steps of the saw-head scale
 */
export function sawTimber(job: CutJob): Sawn {
  mustGoBetweenGuides(job);
  const menus = widthMenus(job);
  const sections = sectionsOf({ ...job, lies: "split" });
  const turned = quarterTurned(sections, job);
  const pithIn = halfUpAt(job.log, job.log.lengthIn);
  const placesFor = freePlaces(job, edgedFlitches(job, straightBoards(job, sections, menus), menus));
  const ways = waysUp(job).flatMap((stood): Way[] => {
    const place = cantFits(job, stood.width) && nearestToPith(placesFor(stood.width), pithIn);
    if (!place) return [];
    const boards = straightBoards(job, turned, menus, pithIn - place.lowIn, place.highIn - pithIn);
    const core = bestCore(job, stood, boards, edgedFlitches(job, boards, menus));
    return core ? [{ place, core, total: place.jacketsWorth + core.total }] : [];
  });
  if (ways.length === 0) return { total: 0, boardFeet: 0, passes: [], views: [viewOfLog({ ...job, lies: "split" })] };
  const { place, core } = ways.reduce((best, way) => (way.total > best.total + SAME_WORTH ? way : best));
  const boards = core.boards();
  return plannedCant(job, place, {
    total: core.total,
    boardFeet: sumOf(boards, ({ boardFeet }) => boardFeet),
    passes: passesDown(job, boards[0]!.highIn, boards),
  });
}

/** The best plan with the timber one way up. */
interface Way {
  place: Place;
  core: Core;
  total: number;
}

/** In the middle of the log to half a scale step, so that every height can be set on the scale. */
function nearestToPith(places: readonly Place[], pithIn: number): Place | undefined {
  return [...places].sort((a, b) => offPith(a, pithIn) - offPith(b, pithIn))[0];
}

/** A timber of four like sides stands one way only. */
function waysUp({ timber, stepIn }: CutJob): Stood[] {
  if (!timber) return [];
  const [one, other] = timber;
  const stood = (width: BoardWidth, { nominalIn, greenSteps }: BoardWidth): Stood => ({
    width,
    product: { nominalIn, tallyIn: nominalIn, greenSteps, greenIn: greenSteps * stepIn, prices: [], isTimber: true },
  });
  return one.nominalIn === other.nominalIn ? [stood(one, other)] : [stood(one, other), stood(other, one)];
}

/** The cant sawn through: a timber, and what is above and below it. */
interface Core {
  total: number;
  /** From the top down. */
  boards(): Board[];
}

/** The best place of the timber in the turned cant, near the middle first; nothing where it goes nowhere. */
function bestCore(job: CutJob, stood: Stood, edged: EdgedBoards, flitches: Flitches): Core | undefined {
  const { stepIn, kerfSteps, bedSteps } = job;
  const { greenSteps } = stood.product;
  const pithIn = halfAcrossAt(job.log, job.log.lengthIn);
  const up = jacket(job, flitches, 0, 1, 2 * pithIn);
  const { stack } = stackDown(job, 2 * pithIn, flitches);
  let best: (Core & { lengthFt: number }) | undefined;
  for (const low of placesOverThePith(pithIn / stepIn, greenSteps)) {
    const below = low - kerfSteps;
    if (below < bedSteps) continue;
    const timber = timberAt(job, stood, edged, low * stepIn);
    if (!timber) continue;
    const above = up.first - low - greenSteps - kerfSteps;
    const total = jacketWorth(up, above) + timber.value + stack.most[below]!;
    const gain = best ? total - best.total : Infinity;
    // Where timbers count nothing, since they have no price, the longer one is better.
    if (gain < -SAME_WORTH || (gain <= SAME_WORTH && timber.lengthFt <= best!.lengthFt)) continue;
    best = {
      total,
      lengthFt: timber.lengthFt,
      boards: () => [
        ...jacketBoards(job, up, above).reverse(),
        timber,
        ...boardsUnder(job, stack, below).map(({ product, face }) =>
          flitches.board(product, (face - job.products[product]!.greenSteps) * stepIn),
        ),
      ],
    };
  }
  return best;
}

/** Lower faces of the timber, in scale steps, that leave the pith in it: the middle first, then outward. */
function placesOverThePith(pithSteps: number, greenSteps: number): number[] {
  const first = Math.max(0, Math.ceil(pithSteps - greenSteps - NEAR));
  const last = Math.floor(pithSteps + NEAR);
  const places = Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => first + i);
  const offMiddle = (low: number) => Math.abs(low + greenSteps / 2 - pithSteps);
  return places.sort((a, b) => offMiddle(a) - offMiddle(b));
}

/** The timber with its lower face there, as long as it has its full section; nothing where no length has. */
function timberAt(job: CutJob, { width, product }: Stood, edged: EdgedBoards, lowIn: number): Board | undefined {
  const waneIn = job.wane * product.greenIn;
  for (const [i, lengthFt] of job.lengthsFt.entries()) {
    const { usableSteps, ...place } = edged.place(lowIn + waneIn, lowIn + product.greenIn - waneIn, i);
    if (usableSteps < width.greenSteps) continue;
    const boardFeet = (width.nominalIn * product.nominalIn * lengthFt) / IN_PER_FT;
    return boardOf({
      product,
      lowIn,
      lengthFt,
      widthsIn: [width.nominalIn],
      greenWidthsIn: [width.greenSteps * job.stepIn],
      ...place,
      value: (job.byValue ? 0 : boardFeet) - job.passCost,
    });
  }
  return undefined;
}
