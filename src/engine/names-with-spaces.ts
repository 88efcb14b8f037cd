import type * as EngineFormula from "@univerjs/engine-formula";
import { isMended } from "./mended";

/** Finds a defined name with a space after it, as in =Opening_face + 1: the engine looks it up with the space. */
export function findNamesBesideSpaces({ DefinedNamesService }: typeof EngineFormula): void {
  const insides = DefinedNamesService.prototype;
  if (isMended(insides)) return;
  const found = insides.getValueByName;
  insides.getValueByName = function (workbook, name) {
    return found.call(this, workbook, name.trim());
  };
}
