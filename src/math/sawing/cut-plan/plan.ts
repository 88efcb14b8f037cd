import type { CutJob } from "./cut-job";
import type { Board } from "./board";
import type { PlanWarning } from "./plan-warning";

/** What a pass does in place of freeing a board, or beside it. */
export type Task =
  /** It takes the slab above the first board. */
  | { kind: "first cut" }
  /** It takes all that lies outside a cant that has no boards on that side. */
  | { kind: "slab"; side: "top" | "bottom"; cantIn: number }
  /** It frees the last board above a cant. */
  | { kind: "cant face"; cantIn: number }
  /** It halves the log, or quarters its halves, through the pith or beside a heart. */
  | { kind: "halve" | "quarter"; heart?: { sizeIn: number; side: "over" | "under" } }
  /** It frees a board from each of the four quarters, off one of their faces. */
  | { kind: "quarter board"; face: "A" | "B" };

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
  task?: Task;
  /** What is turned before the pass: the log over onto its flat, or the cant a quarter onto its round side. */
  turn?: "log over" | "cant a quarter";
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
  lies: "log" | "turned cant";
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

/** How far the first cut may be moved for the same total, the same drops following. */
export interface FirstCutRun {
  chosenIn: number;
  lowestIn: number;
  highestIn: number;
}

/** What sawing by one pattern gives. */
export interface Sawn {
  total: number;
  boardFeet: number;
  firstCut?: FirstCutRun;
  passes: Pass[];
  views: View[];
}

/** What alone keeps every board out of a log. */
export type WhyNone = "lengths" | "widths" | "cant widths" | "timber" | "products";

/** The sawing plan of a log. The total is in board feet, or in money less the cost of the passes. */
export interface Plan extends Sawn {
  job: CutJob;
  warnings: PlanWarning[];
  /** How far the small end is raised off the bed, so that the pith is level; nothing for a log that lies flat or bowed. */
  shimIn: number;
  /** Where no board comes out of the log, why. */
  whyNone?: WhyNone;
  logBoardFeet: number;
  mostBoardFeet: number;
  mostWithoutKerf: number;
}
