import { NoAnswer } from "../../math/errors";
import type { SourceRows } from "./source-rows";
import sources from "../sources.json";

const HEADINGS = ["What", "Formula", "Source", "Range", "Grade"];
const { rows, functions }: SourceRows = sources;

/** Where a worksheet function's numbers come from: a row for every formula it rests on. */
export function sourceTable({ name }: { name: string }): string[][] {
  return [HEADINGS, ...functions[functionNamed(name)]!.map((place) => rows[place]!)];
}

/** The function of Bole that a person means, with or without BOLE. before it, or BOLE_ where a name takes no dot. */
export function functionNamed(name: string): string {
  const wanted = name
    .trim()
    .toUpperCase()
    .replace(/^=?(?:BOLE[._])?/, "")
    .replace(/\(.*$/, "");
  if (!Object.hasOwn(functions, wanted))
    throw new NoAnswer(`name: wanted a function of Bole, such as LOGSCALE, got "${name.slice(0, 40)}"`);
  return wanted;
}
