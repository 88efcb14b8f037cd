/** A stretch of a formula: text in quotes, a quoted sheet name, a table's brackets, or anything else. */
export interface Piece {
  kind: "text" | "sheet" | "bracket" | "plain";
  text: string;
  unclosed?: boolean;
}

/** Takes a formula apart so that what stands in quotes and brackets can be left alone. */
export function scan(formula: string): Piece[] {
  const pieces: Piece[] = [];
  let at = 0;
  while (at < formula.length) {
    const piece = nextPiece(formula, at);
    pieces.push(piece);
    at += piece.text.length;
  }
  return pieces;
}

/** Changes the plain stretches of a formula and leaves quotes and brackets as they are. */
export function rewritePlain(formula: string, change: (plain: string) => string): string {
  return scan(formula)
    .map((piece) => (piece.kind === "plain" ? change(piece.text) : piece.text))
    .join("");
}

/** The formula with everything in quotes blanked. */
export function outsideQuotes(formula: string): string {
  return scan(formula)
    .map((piece) => (piece.kind === "plain" ? piece.text : " ".repeat(piece.text.length)))
    .join("");
}

function nextPiece(formula: string, at: number): Piece {
  const first = formula[at];
  if (first === '"') return quoted(formula, at, '"', "text");
  if (first === "'") return quoted(formula, at, "'", "sheet");
  if (first === "[") return brackets(formula, at);
  const rest = formula.slice(at).search(/["'[]/);
  return { kind: "plain", text: rest < 0 ? formula.slice(at) : formula.slice(at, at + rest) };
}

function quoted(formula: string, at: number, quote: string, kind: "text" | "sheet"): Piece {
  let end = at + 1;
  for (;;) {
    end = formula.indexOf(quote, end);
    if (end < 0) return { kind, text: formula.slice(at), unclosed: true };
    if (formula[end + 1] !== quote) return { kind, text: formula.slice(at, end + 1) };
    end += 2;
  }
}

/** Brackets nest: Logs[[#This Row],[Dia]]. An apostrophe takes the meaning from the sign after it. */
function brackets(formula: string, at: number): Piece {
  let depth = 0;
  for (let end = at; end < formula.length; end++) {
    if (formula[end] === "'") end += 1;
    else if (formula[end] === "[") depth += 1;
    else if (formula[end] === "]" && --depth === 0) return { kind: "bracket", text: formula.slice(at, end + 1) };
  }
  return { kind: "bracket", text: formula.slice(at), unclosed: true };
}
