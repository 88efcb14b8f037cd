import { count, feet, inches, optional } from "../../cells/read";
import { spread } from "../../cells/spread";
import { stackHeightIn, stickerCount } from "../../math/drying/stickers";

/**
 * Stickers for a stack: a row under every layer, with one at each end.
 *
 * The bottom layer has its row too, on the bolsters.
 *
 * @customfunction STICKERS
 * @param length Length of the boards. A bare number is feet; 8'6" and 2.4 m work too.
 * @param spacing Widest gap between stickers. A bare number is inches.
 * @param layers Layers of boards.
 * @returns Number of stickers
 * @example =BOLE.STICKERS(8, 16, 10) gives 70
 * @example =BOLE.STICKERS(8, 16, 2.5) gives #VALUE!
 * @words stacking, sticks, stacking sticks
 * @see STACKHEIGHT
 * @picture stack
 */
export function STICKERS(length: unknown[][], spacing: unknown[][], layers: unknown[][]): unknown[][] {
  return spread(
    {
      lengthFt: feet(length, "length"),
      spacingIn: inches(spacing, "spacing"),
      layers: count(layers, "layers"),
    },
    stickerCount,
  );
}

/**
 * Height of a stickered stack, with a sticker under every layer.
 *
 * @customfunction STACKHEIGHT
 * @param layers Layers of boards.
 * @param thickness Board thickness. A bare number is inches; 5/4 works too.
 * @param sticker Sticker thickness. A bare number is inches.
 * @param [base] Height of what it stands on. A bare number is inches; none when left out.
 * @returns Inches
 * @example =BOLE.STACKHEIGHT(20, "5/4", 0.75, 12) gives 52
 * @example =BOLE.STACKHEIGHT(20, "5/4", "thick") gives #VALUE!
 * @caution A tall, narrow stack can fall on someone: keep it level, on firm bolsters, and tie or brace it.
 * @words stack, pile height
 * @see STICKERS
 * @picture stack
 */
export function STACKHEIGHT(
  layers: unknown[][],
  thickness: unknown[][],
  sticker: unknown[][],
  base?: unknown[][],
): unknown[][] {
  return spread(
    {
      layers: count(layers, "layers"),
      thicknessIn: inches(thickness, "thickness"),
      stickerIn: inches(sticker, "sticker"),
      baseIn: optional(inches(base, "base"), 0),
    },
    stackHeightIn,
  );
}
