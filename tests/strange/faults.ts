import { unzipSync } from "fflate";
import { SaxesParser } from "saxes";
import type { Engine } from "../../src/engine/engine";
import { converted } from "../../src/hosts/terminal/file/convert";
import { recalculated } from "../../src/hosts/terminal/file/recalc";
import { shared } from "../../src/hosts/terminal/file/share";
import { SHEET, strangeWorkbook, type Habits } from "./workbook";

const AT = new Date("2026-03-01T14:05:00Z");
/** The parts of a shared copy that may say more than before; all others are the same, byte for byte. */
const MAY_GROW = new Set(["[Content_Types].xml", "xl/workbook.xml", "xl/_rels/workbook.xml.rels", SHEET]);

/** What is wrong with a workbook of such habits after `recalc`, `share` and `convert`; nothing where all is well. */
export async function faultOf(habits: Habits, engine: Engine): Promise<string | undefined> {
  const before = strangeWorkbook(habits);
  try {
    const [fresh, copy] = [await recalculated(before, engine, AT), await shared(before, engine, AT)];
    return (
      partFault(before, fresh.bytes, new Set([SHEET]), false) ??
      partFault(before, copy.bytes, MAY_GROW, true) ??
      cellFault(before, fresh.bytes, habits, false) ??
      cellFault(before, copy.bytes, habits, true) ??
      (await wayFault(before))
    );
  } catch (fault) {
    return `refused: ${(fault as Error).message}`;
  }
}

/** Spelled for the online sheet, a workbook says the same but for the functions' names; and back, the very same. */
async function wayFault(before: Uint8Array): Promise<string | undefined> {
  const there = await converted(before, AT, "online");
  const back = await converted(there.bytes, AT, "excel");
  const says = (bytes: Uint8Array) => {
    const { cells, behind } = read(bytes);
    return JSON.stringify([[...cells], behind]);
  };
  const moved =
    partFault(before, there.bytes, new Set([SHEET]), false) ?? partFault(before, back.bytes, new Set([SHEET]), false);
  if (moved) return moved;
  if (says(there.bytes) !== says(before).replace(/_xldudf_BOLE_/gi, "BOLE_"))
    return "for the online sheet it says more or less";
  return says(back.bytes) === says(before) ? undefined : "back from the online sheet it says more or less";
}

function partFault(before: Uint8Array, after: Uint8Array, may: ReadonlySet<string>, mayHaveMore: boolean) {
  const [old, made] = [partsOf(before), partsOf(after)];
  for (const [name, content] of old) {
    const now = made.get(name);
    if (!now) return `the part ${name} is gone`;
    if (!may.has(name) && Buffer.compare(content, now) !== 0) return `the part ${name} changed`;
  }
  const more = [...made.keys()].find((name) => !old.has(name));
  return more && !mayHaveMore ? `there is a part ${more}` : undefined;
}

function partsOf(bytes: Uint8Array): Map<string, Uint8Array> {
  return new Map(Object.entries(unzipSync(bytes)).map(([name, content]) => [name.replaceAll("\\", "/"), content]));
}

interface Read {
  /** By address: the formula's words and attributes, and what the cell shows. */
  cells: Map<string, { formula: string; value: string }>;
  /** What stands behind the rows, tag by tag. */
  behind: string[];
}

/** Every cell and every tag behind the rows is as it was, but for the values of columns C and D, which are right. */
function cellFault(before: Uint8Array, after: Uint8Array, { rows }: Habits, isCopy: boolean): string | undefined {
  const [old, made] = [read(before), read(after)];
  const behind = made.behind.filter((tag) => !tag.startsWith("legacyDrawing"));
  if (JSON.stringify(behind) !== JSON.stringify(old.behind)) return "what stands behind the rows changed";
  if (made.cells.size !== old.cells.size) return `${old.cells.size} cells became ${made.cells.size}`;
  for (const [address, cell] of old.cells) {
    const now = made.cells.get(address);
    const [thickness, width] = rows[Number(address.slice(1)) - 1]!;
    const feet = (thickness * width * 12) / 12;
    const value = { C: String(feet), D: String(feet * 2) }[address[0]!] ?? cell.value;
    const formula = isCopy && address.startsWith("C") ? "" : cell.formula;
    if (now?.value !== value || now.formula !== formula)
      return `${isCopy ? "copied" : "calculated"} ${address} holds ${JSON.stringify(now)}, wanted ${JSON.stringify({ formula, value })}`;
  }
  return undefined;
}

/** A reader of its own, so that no fault of ours can hide itself. */
function read(bytes: Uint8Array): Read {
  const content = partsOf(bytes).get(SHEET)!;
  const text = new TextDecoder(content[0] === 0xff ? "utf-16le" : "utf-8").decode(content);
  const result: Read = { cells: new Map(), behind: [] };
  const parser = new SaxesParser();
  let [row, column, isBehind] = [0, 0, false];
  let cell: { formula: string; value: string } | undefined;
  let into: "formula" | "value" | undefined;
  parser.on("error", (fault) => {
    throw fault;
  });
  parser.on("opentag", ({ name, attributes }) => {
    const local = name.slice(name.indexOf(":") + 1);
    if (isBehind) result.behind.push(`${local} ${JSON.stringify(attributes)}`);
    else if (local === "row") [row, column] = [row + 1, 0];
    else if (local === "c") {
      cell = { formula: "", value: "" };
      result.cells.set("ABCDEFGHIJ"[column++]! + row, cell);
    } else if (local === "f") {
      cell!.formula = JSON.stringify(attributes);
      into = "formula";
    } else if (local === "v" || local === "t") into = "value";
  });
  parser.on("text", (said) => {
    if (isBehind) result.behind.push(said);
    else if (cell && into) cell[into] += said;
  });
  parser.on("closetag", ({ name }) => {
    const local = name.slice(name.indexOf(":") + 1);
    if (local === "sheetData") isBehind = true;
    if (["f", "v", "t"].includes(local)) into = undefined;
  });
  parser.write(text).close();
  return result;
}
