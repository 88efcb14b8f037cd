import { formulaOf, typed, type Typed } from "./typed";

/** What a person typed about a log, by field. */
export interface AskedOfLog {
  diameter: string;
  length: string;
  thicknesses: string;
  kerf: string;
  pattern: string;
  settings: Readonly<Record<string, string>>;
}

/** The arguments of CUTPLAN in their order. What stands at its default is left out. */
export function cutArguments({ diameter, length, thicknesses, kerf, pattern, settings }: AskedOfLog): Typed[] {
  const usual = pattern === "live";
  return [
    typed(diameter),
    typed(length),
    products(thicknesses),
    typed(kerf),
    usual ? typed("") : typed(pattern),
    settingRows(settings),
  ];
}

export function cutPlanFormula(parts: readonly Typed[]): string {
  return formulaOf("CUTPLAN", parts);
}

/** `5/4, 8/4` is a column of two thicknesses; cells or a single one stay what they are. */
function products(text: string): Typed {
  const sizes = text
    .split(/[,;]/)
    .map((size) => size.trim())
    .filter((size) => size !== "");
  return sizes.length > 1 && !text.trim().startsWith("{") ? typed(`{${sizes.map(asConstant).join(";")}}`) : typed(text);
}

function settingRows(settings: Readonly<Record<string, string>>): Typed {
  const given = Object.entries(settings).filter(([, value]) => value.trim() !== "");
  return typed(given.length > 0 ? `{${given.map(([name, value]) => `"${name}",${asSetting(value)}`).join(";")}}` : "");
}

/** A zero is written as text: a number 0 in a table of settings could be a blank. */
function asSetting(value: string): string {
  const constant = asConstant(value);
  return Number(constant) === 0 ? `"${value.trim()}"` : constant;
}

/** What may stand in an array constant: a number, or text in quotes. */
function asConstant(text: string): string {
  const part = typed(text);
  return part.kind === "value" && !part.piece.startsWith("{") ? part.piece : `"${text.trim().replaceAll('"', '""')}"`;
}
