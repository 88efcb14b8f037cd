/**
 * Half the width of a flitch between two heights in an elliptical section of the log. Of its two faces the one further
 * from the pith is the narrower.
 */
export function halfFaceIn(
  halfAcrossIn: number,
  halfUpIn: number,
  pithIn: number,
  lowIn: number,
  highIn: number,
): number {
  const off = Math.max(Math.abs(lowIn - pithIn), Math.abs(highIn - pithIn)) / halfUpIn;
  return off < 1 ? halfAcrossIn * Math.sqrt(1 - off * off) : 0;
}
