import { inchesText } from "../../../math/inches-text";
import type { View } from "../../../math/sawing/cut-plan/plan";
import { line, stroked, words } from "../../drawing/marks";
import type { Canvas } from "./canvas";

/** What stands beside a cant. */
export function cantText({ lowIn, highIn }: NonNullable<View["cant"]>): string {
  return `cant, ${inchesText(highIn - lowIn)} in as sawn, upper face at ${inchesText(highIn)}`;
}

/** The faces of a cant as they are sawn, on the log or on the cant turned a quarter. */
export function cantMarks({ cant, sides, butt }: View, canvas: Canvas): string[] {
  const face = (from: [number, number], to: [number, number]) =>
    stroked(line([canvas.x(from[0]), canvas.y(from[1])], [canvas.x(to[0]), canvas.y(to[1])]), { thick: 2 });
  if (cant) {
    const faces = [cant.lowIn, cant.highIn].map((aboveIn) => {
      const chord = halfChord(butt.halfAcrossIn, (aboveIn - butt.pithIn) / butt.halfUpIn);
      return face([-chord, aboveIn], [chord, aboveIn]);
    });
    return [...faces, words([canvas.labelX, canvas.y((cant.lowIn + cant.highIn) / 2)], cantText(cant), canvas.font)];
  }
  if (!sides) return [];
  return [-sides.leftIn, sides.rightIn].map((side) => {
    const chord = halfChord(butt.halfUpIn, side / butt.halfAcrossIn);
    return face([side, butt.pithIn - chord], [side, butt.pithIn + chord]);
  });
}

/** Half the chord of an ellipse at a distance from its middle, as a share of the half axis that way. */
function halfChord(halfAxisIn: number, off: number): number {
  return halfAxisIn * Math.sqrt(Math.max(0, 1 - off ** 2));
}
