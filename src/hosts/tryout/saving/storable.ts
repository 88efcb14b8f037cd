import { functionsIn } from "../../../formula/functions";
import { pointsOutside } from "../../../formula/references";
import { tokensOf } from "../../../formula/tokens";
import { isWellFormed } from "../../../formula/well-formed";
import { Refused } from "../../../xlsx/refused";

/** As long as a formula may be in a file. */
const LONGEST_FORMULA = 8192;

/** A formula that Excel could not read would make the whole file a damaged one, so it is refused by name. */
export function mustBeStorable(place: string, formula: string): void {
  const why = whyNot(formula);
  if (why) throw new Refused(`${place} holds ${formula.slice(0, 80)}, ${why}: change it or take it out`);
}

function whyNot(formula: string): string | undefined {
  if (formula.length > LONGEST_FORMULA)
    return `a formula of ${formula.length} signs, of which a file takes ${LONGEST_FORMULA}`;
  const tokens = tokensOf(formula);
  if (functionsIn(tokens).some((name) => name === "LET" || name === "LAMBDA"))
    return "which a copy cannot hold, since LET and LAMBDA give names of their own";
  if (tokens.some(({ kind, text }) => kind === "sign" && text === "#"))
    return "which a copy cannot hold, since it points at a spilled answer with #";
  if (tokens.some(({ kind, text }) => kind === "sign" && text === "@"))
    return "which a copy cannot hold, since it takes one cell of several with @";
  if (tokens.some(({ kind, text }) => kind === "bracket" && text.includes("@")))
    return "which a copy cannot hold, since it asks a table for this row";
  if (pointsOutside(formula)) return `which a copy cannot hold, since it points at ${pointsOutside(formula)}`;
  return isWellFormed(formula) ? undefined : "which is not a formula that Excel can read";
}
