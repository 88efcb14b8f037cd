import type { Param, SettingEntry } from "../entry";

/** What a zero means for an argument, as its page says it; nothing for a word. */
export function zeroText({ zero, zeroAs, optional, default: usual, many }: Param): string {
  const blank = many && many !== "rows" ? "passed over" : optional ? "as left out" : "a blank";
  if (zero === "blank") return `0: ${blank}, for it cannot be 0.`;
  if (zero === "none") return `0, "${zeroAs}", "none" and a blank: none.`;
  if (zero === "number") return `0 is 0; a blank is not.`;
  if (zero !== "text") return "";
  const instead = optional ? `; left out: ${usual ?? "the usual"}` : "";
  return `For 0 write "${zeroAs}": a number 0 could be a blank and is refused${instead}.`;
}

/** A setting as an argument that may be left out, so that the same is said of both. */
export function asParam(setting: SettingEntry): Param {
  const { otherwise, ...known } = setting;
  return { ...known, optional: true, ...(otherwise && { default: otherwise }) };
}

/** What the declaration of an argument knows, in a few words: `Bare number: inches. Left out: 12.` */
export function argumentNote({ text, bare, words, default: usual, kind }: Param): string {
  const notes: string[] = [];
  if (bare && !["number", "count", "money"].includes(kind)) notes.push(`Bare number: ${bare}.`);
  if (words && words.length <= MOST_WORDS && !words.every((word) => text.includes(word)))
    notes.push(`One of: ${words.join(", ")}.`);
  if (usual !== undefined && usual !== false) notes.push(`Left out: ${withUnit(usual, bare)}.`);
  return notes.join(" ");
}

/** More words than this are looked up on the page. */
const MOST_WORDS = 12;

function withUnit(usual: string | number | boolean, bare: string | undefined): string {
  if (typeof usual !== "number") return String(usual);
  if (usual === 0) return "none";
  return bare === "percent" ? `${usual} %` : String(usual);
}

/** An argument in one text, as Excel's formula bar shows it. */
export function argumentText(param: Param): string {
  return [param.text, argumentNote(param)].filter(Boolean).join(" ");
}
