import { placeOf } from "../../../formula/addresses";
import { ADD_IN } from "../../../catalog/about/add-in";
import type { Engine } from "../../../engine/engine";
import { withStoredFunctions } from "../../../formula/functions";
import type { CellChange } from "../../../xlsx/sheet-edit";
import { Changes } from "./changes";
import { openPackage } from "../../../xlsx/package";
import { agrees, calculateBole } from "./plan";
import { Refused } from "../../../xlsx/refused";
import { readBack, type Made, type Unread } from "./made";
import { withCells } from "../../../xlsx/sheet-edit";
import { counted, places, whatElse } from "./words";
import { readCalculating, type Formula } from "./workbook";

/** The workbook with fresh values in the cells that ask our functions and in those that lean on them. */
export async function recalculated(bytes: Uint8Array, engine: Engine, at: Date): Promise<Made> {
  return readBack(bytes, await withFreshValues(bytes, engine, at), at);
}

async function withFreshValues(bytes: Uint8Array, engine: Engine, at: Date): Promise<Unread> {
  const file = openPackage(bytes, at);
  const workbook = readCalculating(file, at);
  const calculated = await calculateBole(workbook, engine, false);
  const { bole, results, doubtful } = calculated;
  if (bole.length === 0) throw new Refused("it holds no BOLE formula, so there is nothing to recalculate");
  const cells = new Map<string, ReadonlySet<string>>();
  for (const sheet of workbook.sheets) {
    const changes = new Changes(sheet);
    for (const result of results) if (result.formula.sheet === sheet.name) changes.show(result);
    for (const formula of sheet.formulas) if (isDead(formula)) changes.add(entered(formula));
    const list = changes.list();
    if (list.length === 0) continue;
    file.put(sheet.part, withCells(sheet.xml, list));
    cells.set(sheet.part, new Set(list.map(placeOf)));
  }
  const dead = bole.filter(isDead);
  const asked = results.filter(({ formula }) => formula.bole);
  const leaning = results.filter(({ formula }) => !formula.bole);
  const changed = results.filter((result) => !agrees(result));
  const doubts = changed.map(({ formula }) => formula).filter((formula) => doubtful.has(formula));
  const sentences = [
    `${counted(asked.length, "BOLE formula")} and ${counted(leaning.length, "formula")} that lean on them calculated`,
    `${counted(changed.length, "cell")} changed`,
    doubts.length > 0 &&
      `${counted(doubts.length, "of the changed cells was", "of the changed cells were")} out of date in the file, or Excel answers otherwise than the engine: check ${places(doubts)}`,
    dead.length > 0 &&
      `${counted(dead.length, "formula")} that Excel would show as #NAME? entered anew: ${places(dead)}`,
    ...whatElse(calculated),
  ];
  return {
    bytes: file.bytes(),
    intended: { cells, parts: new Set() },
    macros: workbook.macros,
    summary: sentences.filter(Boolean).join("; "),
  };
}

/** A call that was typed before the add-in was there stands in the file as it was typed, and Excel never reads it again. */
function isDead({ bole, cell }: Formula): boolean {
  const text = cell.formula?.text ?? "";
  return bole && withStoredFunctions(ADD_IN, text) !== text;
}

function entered({ row, column, cell }: Formula): CellChange {
  return { row, column, formula: withStoredFunctions(ADD_IN, cell.formula!.text), settled: true };
}
