import { tapeFeet, tapeInches, type TapeLength } from "../../math/boards/tape-length";

/** Inches as they are read off a tape: 24-1/2. */
export function fractionText(asked: Parameters<typeof tapeInches>[0]): string {
  const tape = tapeInches(asked);
  return sign(tape) + inchText(tape, "-");
}

/** Feet and inches as they are read off a tape: 8'-6 1/2". */
export function feetInchesText(asked: Parameters<typeof tapeFeet>[0]): string {
  const tape = tapeFeet(asked);
  const noInch = tape.whole === 0 && tape.top > 0 ? "0 " : "";
  return `${sign(tape)}${tape.feet}'-${noInch}${inchText(tape, " ")}"`;
}

function inchText({ whole, top, bottom }: TapeLength, between: string): string {
  if (top === 0) return `${whole}`;
  return `${whole > 0 ? `${whole}${between}` : ""}${top}/${bottom}`;
}

function sign({ negative }: TapeLength): string {
  return negative ? "-" : "";
}
