import { mustBeAbove, mustBeAtLeast, NoAnswer, short } from "../errors";
import { BF_PER_FT3, FT3_PER_YD3, SOLID_SHARE_OF_STACK, STACKED_FT3_PER_CORD } from "../units";

/** Loose sawdust fills so many times the space of the wood that it was. */
const LOOSE_SAWDUST = 2.5;

/** A part of what a log leaves beside its boards. */
export interface Residue {
  part: "sawdust" | "slabs and edgings";
  solidFt3: number;
  looseYd3?: number;
  cords?: number;
}

/**
 * What logs leave beside their boards: sawdust of the cuts along the boards, and slabs and edgings, which are the rest.
 *
 * The sum of the two is known from the volumes. How it parts is an estimate: one cut for each board, as wide as the board.
 * Cuts that open a face and edge boards make more sawdust and less slab.
 *
 * @formula solidFt3 = [sawdust, slabs] [ft3]; boards = boardFeet / 12 [ft3]; rest = logsFt3 - boards [ft3];
 *   sawdust = min(rest, boards * kerfIn / thicknessIn) [ft3]; slabs = rest - sawdust [ft3]
 * @source plain geometry: the volumes
 * @source RVR solid content, the stack's share of wood, as in the units of a cord
 * @source common practice, no source: loose sawdust takes 2.5 times the space of the wood
 * @range boards of no more wood than the logs; thickness above 0
 */
export function residueOf({ logsFt3, boardFeet, thicknessIn, kerfIn }: Sawing): Residue[] {
  mustBeAbove(0, logsFt3, "volume of the logs (ft3)");
  mustBeAtLeast(0, boardFeet, "board feet");
  mustBeAbove(0, thicknessIn, "thickness (in)");
  mustBeAtLeast(0, kerfIn, "kerf (in)");
  const boardsFt3 = boardFeet / BF_PER_FT3;
  const restFt3 = logsFt3 - boardsFt3;
  if (restFt3 < 0)
    throw new NoAnswer(
      `board feet: wanted up to ${short(logsFt3 * BF_PER_FT3)}, all the wood of the logs, got ${short(boardFeet)}`,
    );
  const sawdustFt3 = Math.min(restFt3, (boardsFt3 * kerfIn) / thicknessIn);
  const slabsFt3 = restFt3 - sawdustFt3;
  return [
    { part: "sawdust", solidFt3: sawdustFt3, looseYd3: (sawdustFt3 * LOOSE_SAWDUST) / FT3_PER_YD3 },
    { part: "slabs and edgings", solidFt3: slabsFt3, cords: slabsFt3 / (STACKED_FT3_PER_CORD * SOLID_SHARE_OF_STACK) },
  ];
}

interface Sawing {
  logsFt3: number;
  boardFeet: number;
  thicknessIn: number;
  kerfIn: number;
}
