import type { CutJob } from "./cut-job";
import type { Board } from "./flitch";

/** One pass of the saw. The blade height is that of its lower side: the sawn face left on the log. */
export interface Pass {
  number: number;
  bladeHeightIn: number;
  /** From the pass before, while the log is not turned. */
  dropIn?: number;
  /** What the pass frees; nothing where it takes a slab or opens a face. */
  board?: Board;
  /** How many such boards the whole log gives. */
  copies: number;
  note: string;
}

/** The outline of one end, heights above the bed. */
export interface Outline {
  halfAcrossIn: number;
  halfUpIn: number;
  pithIn: number;
}

/** A board as it is drawn, with the pass that frees it. */
export interface Placed {
  board: Board;
  pass: number;
}

/** The log as one looks at its end in one position on the mill. */
export interface View {
  title: string;
  butt: Outline;
  smallEnd: Outline;
  /** The middle of a bowed log, where it stands out past both ends. */
  middle?: Outline & { acrossIn: number };
  /** The opening of the blade guides, where the log goes between them. */
  guidesIn?: number;
  boards: Placed[];
  /** A cant, and its width. */
  cant?: { lowIn: number; highIn: number };
  /** The sawn sides of a cant that lies turned: how far it reaches to the left and right. */
  sides?: { leftIn: number; rightIn: number };
  /** Boards of one quarter of the log, seen from the pith; `offsetIn` of the quarter's faces from it. */
  quarter?: { offsetIn: number; boards: QuarterBoard[] };
}

/** A board of a quarter: its heights are measured off its face, its middle along it, both from the pith. */
export interface QuarterBoard extends Placed {
  face: "A" | "B";
}

/** How far the opening face may be moved for the same total, the same drops following. */
export interface OpeningRun {
  chosenIn: number;
  lowestIn: number;
  highestIn: number;
}

/** What a pattern found. */
export interface Sawn {
  total: number;
  boardFeet: number;
  opening?: OpeningRun;
  passes: Pass[];
  views: View[];
}

/** The sawing plan of a log. The total is in board feet, or in money less the cost of the passes. */
export interface Plan extends Sawn {
  job: CutJob;
  warnings: string[];
  logBoardFeet: number;
  mostBoardFeet: number;
  mostWithoutKerf: number;
}
