import { callsOf } from "../../formula/calls";
import { arrayConstant, literal } from "../../formula/literals";
import { registry } from "../../functions/registry";
import { ADD_IN } from "../about/add-in";

/** An example, which is one call of literals: the function's name, and its arguments as cells. */
export function calledWith(formula: string): { name: string; given: unknown[][][] } {
  const [call] = callsOf(ADD_IN, formula);
  if (!call) throw new Error(`An example calls none of Bole's functions: ${formula}`);
  return { name: call.name, given: call.pieces.map((piece) => cellsOf(piece.trim())) };
}

/** What an example answers. */
export function answered(formula: string): unknown[][] {
  const { name, given } = calledWith(formula);
  return registry[name]!(...given);
}

function cellsOf(piece: string): unknown[][] {
  if (piece.startsWith("{")) return arrayConstant(piece);
  return [[piece === "" ? null : (literal(piece) ?? piece)]];
}
