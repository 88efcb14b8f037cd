import { count, inches, oneOf, optional } from "../../cells/read";
import { spread } from "../../cells/spread";
import { tiedownLimitLb, type TiedownGear } from "../../math/haul/tiedown-limit";

const GEAR_NAMES = {
  chain: ["chains"],
  webbing: ["synthetic webbing", "strap", "straps", "web", "ratchet strap"],
  "wire rope": ["cable", "steel cable", "wire"],
} as const satisfies Record<TiedownGear, readonly string[]>;

/**
 * Pounds that a tie-down without a mark of its maker counts for, by the federal tables.
 *
 * A marked limit always rules. A chain without a grade mark counts as grade 30, wire rope as 6x37 with a fiber core. Grade
 * 80 at 5/16 in stands below grade 70 in the law as printed. Fiber rope and steel strapping were not seen. A worn, cut or
 * knotted tie-down counts for nothing, whatever its size.
 *
 * @customfunction TIEDOWNLIMIT
 * @returns Pounds
 * @example =BOLE.TIEDOWNLIMIT("chain", "3/8", 70) gives 6600
 * @example =BOLE.TIEDOWNLIMIT("chain", "3/8") gives 2650
 * @example =BOLE.TIEDOWNLIMIT("strap", 2) gives 2000
 * @example =BOLE.TIEDOWNLIMIT("chain", 0.4) gives #N/A
 * @caution The weakest part rules: hook, binder, anchor point or winch may hold less. Take damaged gear out of use.
 * @see TIEDOWNS
 * @words chain strength, strap limit, working load limit, wll, grade 70, transport chain, cable, binder, unmarked chain, chain rating, strap rating, unmarked
 */
export const TIEDOWNLIMIT = spread(
  {
    /** What it is. */
    gear: oneOf(GEAR_NAMES),
    /** Size of the chain or rope, or width of the strap, as the law lists it. */
    sizeIn: inches,
    /** Grade marked on a chain: 30, 43, 70, 80 or 100; without a mark 30. */
    grade: optional(count),
  },
  tiedownLimitLb,
);
