import { contentOf, shown } from "../cell";
import { editDistance } from "../edit-distance";
import { HandedOn, Unreadable } from "../error";
import { changed, declared, type Declaration } from "./argument";
import { UNSEEN } from "./digits";

/** A list of names: each key with the other spellings it is known by. */
export type Names<K extends string> = Readonly<Record<K, readonly string[]>>;

/** How many near misses a message offers, and how many names a list may have to be shown whole. */
const OFFERED = 3;
const SHORT_LIST = 6;

/** A spelling this many letters longer or shorter is no near miss, and is not compared letter by letter. */
const MOST_EDITS = 5;

/** One name out of a list, in any case, with spaces and hyphens alike. The formula gets the list's key. */
export function oneOf<K extends string>(names: Names<K>): Declaration<K> {
  return declared({ kind: "word", words: Object.keys(names) }, "name", (cell, as) => keyIn(names, cell, as));
}

/** Text as it stands, such as the name of a function. */
export const text = declared<string>({ kind: "text" }, "name", (cell, as) => textIn(cell, as, "text"));

const YES_NO: Names<"yes" | "no"> = { yes: ["y", "true", "1"], no: ["n", "false", "0"] };

/** Yes or no, TRUE or FALSE, 1 or 0 as in the sheet's own functions; a blank is no. */
export const yesNo: Declaration<boolean> = changed(
  declared<boolean>({ kind: "yes or no", words: ["yes", "no"] }, "name", (cell, as) =>
    typeof cell === "boolean" ? cell : cell === 1 || keyIn(YES_NO, cell, as) === "yes",
  ),
  { optional: true, default: false },
  (argument) => ({ ...argument, needed: null, whenBlank: () => false }),
);

function keyIn<K extends string>(names: Names<K>, cell: unknown, name: string): K {
  const keys = Object.keys(names);
  const given = textIn(cell, name, keys.length <= SHORT_LIST ? `one of ${keys.join(", ")}` : "a name");
  const spellings = spellingsOf(names);
  const key = spellings.get(plain(given)) ?? spellings.get(plain(turnedRound(given)));
  if (key === undefined) throw new Unreadable(name, offer(names, given), shown(given));
  return key as K;
}

function textIn(cell: unknown, name: string, wanted: string): string {
  const content = contentOf(cell);
  if (typeof content === "string") return content;
  if (content !== null && typeof content === "object") throw new HandedOn(content.error, name);
  throw new Unreadable(name, wanted, shown(cell));
}

/** A spelling without what people write differently: capitals, hyphens, dots, fraction signs. */
function plain(spelling: string): string {
  return spelling
    .replace(UNSEEN, "")
    .replace(/[¼-¾⅐-⅞]/g, (fraction) => ` ${fraction.normalize("NFKC")}`)
    .normalize("NFKD")
    .replace(/[\u0300-\u036f]/g, "")
    .replace(/⁄/g, "/")
    .toLowerCase()
    .replace(/[\s\-‐-―_.,'"″”]+/g, " ")
    .trim();
}

/** "Oak, white" as handbooks list it is white oak. */
function turnedRound(spelling: string): string {
  const [noun, ...rest] = spelling.split(",");
  return rest.length === 1 ? `${rest[0]} ${noun}` : spelling;
}

const known = new WeakMap<object, Map<string, string>>();

function spellingsOf(names: Names<string>): Map<string, string> {
  let spellings = known.get(names);
  if (!spellings) {
    const entries = Object.entries(names);
    spellings = new Map(entries.flatMap(([key, others]) => others.map((other) => [plain(other), key] as const)));
    for (const [key] of entries) spellings.set(plain(key), key);
    known.set(names, spellings);
  }
  return spellings;
}

/** What a message offers for an unknown name: the whole of a short list, or the nearest of a long one. */
function offer(names: Names<string>, given: string): string {
  const keys = Object.keys(names);
  if (keys.length <= SHORT_LIST) return `one of ${keys.join(", ")}`;
  const wanted = plain(given);
  const distances = new Map<string, number>();
  for (const [spelling, key] of spellingsOf(names)) {
    const apart = Math.abs(wanted.length - spelling.length);
    const near = apart <= MOST_EDITS ? editDistance(wanted, spelling) : apart;
    const distance = Math.min(near, wordsApart(wanted, spelling), distances.get(key) ?? Infinity);
    distances.set(key, distance);
  }
  const nearest = keys.sort((a, b) => distances.get(a)! - distances.get(b)!).slice(0, OFFERED);
  return `a known name (nearest: ${nearest.join(", ")})`;
}

/**
 * Names that share a word are near, however many letters the others have: English walnut is offered black walnut. A slip
 * of one letter is nearer.
 */
function wordsApart(wanted: string, spelling: string): number {
  const words = wanted.split(" ");
  const known = spelling.split(" ");
  const shared = words.filter((word) => known.includes(word)).length;
  return shared === 0 ? Infinity : 1 + (words.length + known.length - 2 * shared) / 2;
}
