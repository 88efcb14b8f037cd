import { boardLength, count, inches, optional } from "../../cells/read";
import { spread } from "../../cells/spread";
import { stackHeightIn, stickerCount } from "../../math/drying/stickers";

/**
 * Stickers for a stack: a row under every layer, with one at each end.
 *
 * The bottom layer has its row too, on the bolsters.
 *
 * @customfunction STICKERS
 * @returns Number of stickers
 * @example =BOLE.STICKERS(8, 16, 10) gives 70
 * @example =BOLE.STICKERS(8, 16, 2.5) gives #VALUE!
 * @words stacking, sticks, stacking sticks
 * @see STACKHEIGHT
 * @picture stack
 */
export const STICKERS = spread(
  {
    /** Length of the boards. */
    lengthFt: boardLength,
    /** Widest gap between stickers. */
    spacingIn: inches,
    /** Layers of boards. */
    layers: count,
  },
  stickerCount,
);

/**
 * Height of a stickered stack, with a sticker under every layer.
 *
 * @customfunction STACKHEIGHT
 * @returns Inches
 * @example =BOLE.STACKHEIGHT(20, "5/4", 0.75, 12) gives 52
 * @example =BOLE.STACKHEIGHT(20, "5/4", "thick") gives #VALUE!
 * @caution A tall, narrow stack can fall on someone: keep it level, on firm bolsters, and tie or brace it.
 * @words stack, pile height, how tall is a stack, how high
 * @see STICKERS
 * @picture stack
 */
export const STACKHEIGHT = spread(
  {
    /** Layers of boards. */
    layers: count,
    /** Board thickness. */
    thicknessIn: inches,
    /** Sticker thickness. */
    stickerIn: inches,
    /** Height of what it stands on. */
    baseIn: optional(inches, 0),
  },
  stackHeightIn,
);
