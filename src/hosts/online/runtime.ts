import { ask } from "../../engine/ask";
import { registry } from "../../functions/registry";
import { cellsGiven, onlineAnswer } from "./cells";
import { onlineName } from "./name";

/** What a function of the script answers to the arguments that the online sheet called it with. */
export function answer(name: string, given: ArrayLike<unknown>): unknown {
  const cells = Array.from(given, cellsGiven) as unknown[][][];
  return onlineAnswer(ask(onlineName(name), registry[name]!, cells));
}
