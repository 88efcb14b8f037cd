import type * as EngineFormula from "@univerjs/engine-formula";
import { isMended } from "./mended";

type Nodes = ReturnType<EngineFormula.LexerTreeBuilder["sequenceNodesBuilder"]>;

/**
 * Keeps a formula as it was typed. When a cell is left the grid spells its numbers anew, .50 as 0.5, and as soon as
 * one gets longer or shorter it cuts all the text behind it in the wrong places: =BOLE.LOGSCALE(20,12.0,"Doyle")
 * became =BOLE.LOGSCALE(20,12,","Doy"). A number that is handed over as plain text is left alone.
 */
export function keepNumbersAsTyped({ LexerTreeBuilder, sequenceNodeType }: typeof EngineFormula): void {
  const insides = LexerTreeBuilder.prototype;
  if (isMended(insides)) return;
  const built = insides.sequenceNodesBuilder;
  insides.sequenceNodesBuilder = function (formula): Nodes {
    const nodes = built.call(this, formula);
    if (!formula.startsWith("=")) return nodes;
    return nodes?.map((node) =>
      typeof node === "object" && node.nodeType === sequenceNodeType.NUMBER ? node.token : node,
    );
  };
}
