import { box, line, stroked, WOOD, type Point } from "../../drawing/marks";

/** A board or piece: wood within a thin line. */
export function piece(x: number, y: number, width: number, height: number): string {
  return stroked(box(x, y, width, height, WOOD), { thick: 1 });
}

/** A line thinner than the outlines of the log, in dashes where they are given. */
export function thin(from: Point, to: Point, dashes?: string): string {
  return stroked(line(from, to), { dashes, thick: 1 });
}
