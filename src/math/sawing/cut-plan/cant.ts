import { NEAR } from "../../rounding";
import { sumOf } from "../../numbers";
import { halfAcrossAt, halfUpAt, type BoardWidth, type CutJob } from "./cut-job";
import { bestPlace, type CantPlace } from "./cant-place";
import type { Board } from "./board";
import { edgedFlitches, type Flitches } from "./flitch";
import { mustGoBetweenGuides } from "./guides";
import { jacket, jacketBoards, jacketWorth, type Jacket } from "./jacket";
import { passesDown, placed, sawDown, stackWorth, viewOfLog } from "./live";
import type { Pass, Sawn, View } from "./plan";
import { quarterTurned, sectionsOf, straightBoards } from "./straight-flitch";
import { widthMenus } from "./width-menu";

/** A cant in the log, and the boards outside its faces, from the cant out. */
export interface Place extends CantPlace {
  width: BoardWidth;
  above(): Board[];
  below(): Board[];
}

/**
 * Cant sawing: boards off two sides down to a cant, the cant turned and sawn through. Every cant width is tried, and
 * every place of it where it may be off the middle.
 *
 * @formula by dynamic program: the greatest, over cant widths and places, of the jackets above, the jackets below and
 *   the stack through the turned cant
 * @source plain geometry: chords of ellipses; the stacks by dynamic programming over the steps of the saw-head scale
 */
export function sawCant(job: CutJob): Sawn {
  mustGoBetweenGuides(job);
  const menus = widthMenus(job);
  const sections = sectionsOf({ ...job, lies: "split" });
  const turned = quarterTurned(sections, job);
  const pithIn = halfUpAt(job.log, job.log.lengthIn);
  const topIn = 2 * halfAcrossAt(job.log, job.log.lengthIn);
  const through = ({ lowIn, highIn }: Place) =>
    edgedFlitches(job, straightBoards(job, turned, menus, pithIn - lowIn, highIn - pithIn), menus);

  const outside = edgedFlitches(job, straightBoards(job, sections, menus), menus);
  const widths = job.cantWidths.filter((width) => cantFits(job, width));
  const placesFor = job.cantOffset === "free" ? freePlaces(job, outside) : centredPlace(job, outside);
  const best = bestPlace(widths.map(placesFor), pithIn, (place) => stackWorth(job, topIn, through(place)));
  if (!best) return { total: 0, boardFeet: 0, passes: [], views: [viewOfLog({ ...job, lies: "split" })] };
  return plannedCant(job, best, sawDown(job, topIn, through(best)));
}

/** Whether a cant is no wider than the butt is high. */
export function cantFits({ log, stepIn }: CutJob, { greenSteps }: BoardWidth): boolean {
  return greenSteps * stepIn <= 2 * halfUpAt(log, log.lengthIn) + NEAR;
}

/** The cant in the middle of the log: its faces need not be on the scale of the bed. */
function centredPlace(job: CutJob, outside: Flitches): (width: BoardWidth) => Place[] {
  const pithIn = halfUpAt(job.log, job.log.lengthIn);
  return (width) => {
    const half = (width.greenSteps * job.stepIn) / 2;
    const up = jacket(job, outside, pithIn + half + job.kerfIn, 1);
    const down = jacket(job, outside, pithIn - half - job.kerfIn, -1);
    return [placeOf(job, width, pithIn - half, [up, up.first], [down, down.first])];
  };
}

/** Every place on the scale of the bed where the cant is inside the butt and holds the pith. */
export function freePlaces(job: CutJob, outside: Flitches): (width: BoardWidth) => Place[] {
  const { stepIn, kerfSteps } = job;
  const pithIn = halfUpAt(job.log, job.log.lengthIn);
  const topSteps = Math.floor((2 * pithIn + NEAR) / stepIn);
  // One jacket each way serves every place, because all faces are on the scale.
  const up = jacket(job, outside, 0, 1);
  const down = jacket(job, outside, topSteps * stepIn, -1);
  return (width) => {
    const places: Place[] = [];
    for (let low = 0; low <= topSteps - width.greenSteps; low++) {
      const high = low + width.greenSteps;
      if (low * stepIn > pithIn + NEAR || high * stepIn < pithIn - NEAR) continue;
      const above = up.first - high - kerfSteps;
      const below = down.first - topSteps + low - kerfSteps;
      places.push(placeOf(job, width, low * stepIn, [up, above], [down, below]));
    }
    return places;
  };
}

function placeOf(job: CutJob, width: BoardWidth, lowIn: number, up: [Jacket, number], down: [Jacket, number]): Place {
  return {
    width,
    lowIn,
    highIn: lowIn + width.greenSteps * job.stepIn,
    jacketsWorth: jacketWorth(...up) + jacketWorth(...down),
    above: () => jacketBoards(job, ...up),
    below: () => jacketBoards(job, ...down),
  };
}

/** The passes: one side down to the cant, the other with the log turned over on its flat, then through the cant. */
export function plannedCant(job: CutJob, place: Place, cant: Omit<Sawn, "views">): Sawn {
  const above = place.above().reverse();
  const below = place.below().reverse();
  const cantIn = place.width.nominalIn;
  const first = passesDown(job, above[0]?.highIn ?? place.highIn, above);
  if (above.length === 0) first[0]!.task = { kind: "slab", side: "top", cantIn };
  else first[first.length - 1]!.task = { kind: "cant face", cantIn };

  // Turned over, the upper face of the cant is on the bed, and heights are measured from it.
  const over = below.map((board) => ({
    ...board,
    lowIn: place.highIn - board.highIn,
    highIn: place.highIn - board.lowIn,
  }));
  const second = passesDown(job, over[0]?.highIn ?? place.highIn - place.lowIn, over).map((pass, i) => ({
    ...pass,
    board: below[i - 1],
  }));
  second[0]!.turn = "log over";
  if (below.length === 0) second[0]!.task = { kind: "slab", side: "bottom", cantIn };
  const third = cant.passes.map((pass, i): Pass => (i === 0 ? { ...pass, turn: "cant a quarter" } : pass));
  const passes = [...first, ...second, ...third].map((pass, i): Pass => ({ ...pass, number: i + 1 }));

  const sides = passes.slice(0, first.length + second.length);
  const asItLies = viewOfLog({ ...job, lies: "split" });
  const boards = [...above, ...below];
  return {
    total: sumOf(boards, ({ value }) => value) + cant.total,
    boardFeet: sumOf(boards, ({ boardFeet }) => boardFeet) + cant.boardFeet,
    firstCut: cant.firstCut,
    passes,
    views: [
      { ...asItLies, boards: placed(sides), cant: { lowIn: place.lowIn, highIn: place.highIn } },
      turnedView(job, asItLies, place, placed(passes.slice(sides.length))),
    ],
  };
}

function turnedView(job: CutJob, asItLies: View, place: Place, boards: View["boards"]): View {
  const pithUp = halfUpAt(job.log, job.log.lengthIn);
  const pithIn = halfAcrossAt(job.log, job.log.lengthIn);
  const turn = ({ halfAcrossIn, halfUpIn }: View["butt"]) => ({
    halfAcrossIn: halfUpIn,
    halfUpIn: halfAcrossIn,
    pithIn,
  });
  return {
    lies: "turned cant",
    butt: turn(asItLies.butt),
    smallEnd: turn(asItLies.smallEnd),
    boards,
    sides: { leftIn: pithUp - place.lowIn, rightIn: place.highIn - pithUp },
  };
}
