import { inches, mayBeZero, named, number } from "../../cells/read";
import { table, type TableCell } from "../../cells/spread";
import { residueOf } from "../../math/sawing/residue";

/**
 * Sawdust, slabs and edgings of a log or a day: cubic feet, loose yards, cords.
 *
 * The sum is known: it is the wood of the logs less that of the boards. How it parts is an estimate, one cut for each
 * board. Cuts that open a face and edge boards turn some slab into sawdust. Give the thickness as sawn, and board feet of
 * that thickness; bark comes on top. Loose sawdust takes 2.5 times the space of the wood (common practice, no source).
 *
 * @customfunction RESIDUE
 * @returns A table: part, cubic feet of wood, loose cubic yards, cords, how far it is known
 * @example =BOLE.RESIDUE(40, 280, "4/4", "1/8") gives a table of 4 rows
 * @example =BOLE.RESIDUE(40, 500, "4/4", "1/8") gives #N/A
 * @caution Fine dust burns and harms lungs: keep it away from sparks, and wear a mask where it hangs in the air.
 * @see KERFLOSS
 * @words waste, sawdust pile, slab wood, firewood, edgings, byproduct, mulch, how much sawdust, cords of slabs, sawdust heap
 */
export const RESIDUE = table(
  {
    /** Cubic feet of wood in the logs. */
    logsFt3: named("cubicfeet", number),
    /** Board feet sawn from them. */
    boardFeet: mayBeZero(number),
    /** Thickness of the boards as sawn. */
    thicknessIn: inches,
    /** Width of the saw cut. */
    kerfIn: inches,
  },
  (sawing): TableCell[][] => {
    const parts = residueOf(sawing);
    const whole = parts.reduce((sum, { solidFt3 }) => sum + solidFt3, 0);
    return [
      ["part", "cubic feet", "loose cubic yards", "cords", "how far known"],
      ...parts.map(({ part, solidFt3, looseYd3, cords }) => [part, solidFt3, looseYd3, cords, "estimate"]),
      ["both", whole, undefined, undefined, "logs less boards"],
    ];
  },
);
