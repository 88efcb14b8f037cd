import { upTo } from "../rounding";
import { IN_PER_FT } from "../units";

/**
 * Stickers in a stack: a row of them under every layer, the bottom one too, one at each end of the row.
 *
 * @formula n = layers * (max(1, up(12 * lengthFt / spacingIn)) + 1)
 * @source plain arithmetic
 */
export function stickerCount(stack: { lengthFt: number; spacingIn: number; layers: number }): number {
  const gaps = upTo(1, (stack.lengthFt * IN_PER_FT) / stack.spacingIn);
  return stack.layers * (Math.max(1, gaps) + 1);
}

/**
 * Height of a stickered stack, with a sticker under every layer.
 *
 * @formula H = baseIn + layers * (thicknessIn + stickerIn)
 * @source plain arithmetic
 */
export function stackHeightIn(stack: {
  layers: number;
  thicknessIn: number;
  stickerIn: number;
  baseIn: number;
}): number {
  return stack.baseIn + stack.layers * (stack.thicknessIn + stack.stickerIn);
}
