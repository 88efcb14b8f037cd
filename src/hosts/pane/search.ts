import MiniSearch, { type SearchOptions } from "minisearch";
import { stemmer } from "stemmer";
import type { Entry } from "../../catalog/entry";
import type { TableSheet } from "../../sheets/definition";
import { FILLER, MEANINGS } from "./search-words";

/** What a question may be about: a function, or a sheet to add. */
export type Hit = { kind: "function"; entry: Entry } | { kind: "sheet"; sheet: TableSheet };

export interface Found {
  hits: Hit[];
  /** Whether every telling word of the question is found in the best of them. */
  everyWord: boolean;
}

/** The fields of a function or a sheet, and how much a word tells that is found there: a name most, then the sawyer's own words. */
const BOOST = { words: 5, name: 4, summary: 3, arguments: 1.2, remarks: 0.6 };

/** A word that is typed half, or with a slip, counts so much of one that is typed well. */
const WEIGHTS = { prefix: 0.5, fuzzy: 0.3 };

/** So many letters of a word may be slips, as a share of it. */
const SLIPS = 0.25;

/** And so much one that only means nearly the same. */
const ALIKE_COUNTS = 0.5;

/** What each word of a phrase adds that the function is known by and the question holds whole. */
const PHRASE_COUNTS = 12;

/** What it adds to a score, as a share of it, for each sheet that asks a function: what every yard needs comes before its equals. */
const EVERYDAY_COUNTS = 0.05;
const MOST_EVERYDAY = 5;

/** The shortest word that a function's name may be run together of. */
const SHORTEST_PART = 3;

/** More hits than a person reads help nobody, and what is far behind the best is not what was meant. */
const MOST_HITS = 12;
const LEAST_SHARE_OF_BEST = 0.25;

interface Text {
  id: number;
  name: string;
  words: string;
  summary: string;
  arguments: string;
  remarks: string;
}

/** Makes the search over the functions and the sheets that can be added; it answers a question with the likeliest first. */
export function searchOver(catalog: readonly Entry[], sheets: readonly TableSheet[]): (question: string) => Found {
  const all: Hit[] = [
    ...catalog.map((entry): Hit => ({ kind: "function", entry })),
    ...sheets.map((sheet): Hit => ({ kind: "sheet", sheet })),
  ];
  const vocabulary = new Set(catalog.flatMap(({ summary, words }) => telling(`${summary} ${words.join(" ")}`)));
  const index = new MiniSearch<Text>({
    fields: Object.keys(BOOST),
    tokenize: wordsIn,
    processTerm: (word) => (FILLER.has(word) ? null : stemmer(word)),
  });
  index.addAll(all.map((hit, id) => ({ id, ...textOf(hit, vocabulary) })));
  const phrases = all.map((hit) =>
    hit.kind === "function"
      ? [...hit.entry.words, partsOf(hit.entry.name, vocabulary)].map((words) => telling(words).map(stemmer))
      : [],
  );
  const askedBySheet = sheets.map((sheet) => new Set(JSON.stringify(sheet).match(/(?<=BOLE\.)[A-Z0-9]+/g)));
  const everyday = all.map((hit) => {
    const times = hit.kind === "function" ? askedBySheet.filter((names) => names.has(hit.entry.name)).length : 0;
    return 1 + EVERYDAY_COUNTS * Math.min(times, MOST_EVERYDAY);
  });
  return (question) => {
    const asked = telling(question);
    const rated = asked.length > 0 ? rate(asked) : [];
    const best = rated[0];
    if (!best) return { hits: [], everyWord: false };
    const near = rated.filter(({ score }) => score >= LEAST_SHARE_OF_BEST * best.score).slice(0, MOST_HITS);
    return { hits: near.map(({ id }) => all[id]!), everyWord: best.words === asked.length };
  };

  /** What has every word of the question goes before what has one of them often: each word counts for itself. */
  function rate(asked: readonly string[]) {
    const rated = new Map<number, { id: number; score: number; words: number }>();
    asked.forEach((word, at) => {
      const isLast = at === asked.length - 1;
      for (const [id, score] of scoresOf(word, isLast)) {
        const so = rated.get(id) ?? { id, score: 0, words: 0 };
        rated.set(id, { id, score: so.score + score, words: so.words + 1 });
      }
    });
    const stems = new Set(asked.map(stemmer));
    for (const one of rated.values()) one.score += PHRASE_COUNTS * longestPhrase(phrases[one.id]!, stems);
    return [...rated.values()]
      .map((one) => ({ ...one, score: one.score * (one.words / asked.length) ** 1.5 * everyday[one.id]! }))
      .sort((a, b) => b.score - a.score || a.id - b.id);
  }

  /** What a word scores in each text: itself, or less what else the trade says for it. */
  function scoresOf(word: string, isLast: boolean): Map<number, number> {
    const scores = new Map<number, number>();
    const add = (query: string, options: SearchOptions, worth: number) => {
      for (const { id, score } of index.search(query, { boost: BOOST, ...options }))
        scores.set(id as number, Math.max(scores.get(id as number) ?? 0, worth * score));
    };
    // Only the last word may be typed half: typing goes on. A slip of the finger is looked for where nothing else is found.
    add(word, { prefix: isLast && word.length > 2, weights: WEIGHTS }, 1);
    for (const other of MEANINGS.get(word) ?? []) add(other, {}, ALIKE_COUNTS);
    if (scores.size === 0 && word.length > 3) add(word, { fuzzy: SLIPS, weights: WEIGHTS }, 1);
    return scores;
  }
}

/** How many words the longest of a function's own phrases has that stands in the question word for word. */
function longestPhrase(phrases: readonly string[][], stems: ReadonlySet<string>): number {
  const whole = phrases.filter((phrase) => phrase.every((word) => stems.has(word)));
  return Math.max(0, ...whole.map(({ length }) => length));
}

function textOf(hit: Hit, vocabulary: ReadonlySet<string>): Omit<Text, "id"> {
  if (hit.kind === "sheet") {
    const { title, lead, columns } = hit.sheet;
    const headings = columns.map(({ heading }) => heading).join(" ");
    return { name: title, words: "sheet form", summary: lead, arguments: headings, remarks: "" };
  }
  const { name, words, summary, params, returns, remarks, topic, examples } = hit.entry;
  const settings = params.flatMap((param) => param.settings ?? []);
  return {
    name: `${name} ${partsOf(name, vocabulary)}`,
    words: words.join(" "),
    summary: `${summary} ${returns}`,
    arguments: [...params, ...settings].map((one) => `${one.name} ${one.text}`).join(" "),
    remarks: [...remarks, topic, ...examples.map(({ formula }) => formula)].join(" "),
  };
}

/** The words that a name is run together of: pulley size for PULLEYSIZE; nothing where they are not all known. */
function partsOf(name: string, vocabulary: ReadonlySet<string>): string {
  const rest = name.toLowerCase();
  const split = (text: string): string[] | undefined => {
    if (text === "") return [];
    for (let end = text.length; end >= SHORTEST_PART; end--) {
      const [part, after] = [text.slice(0, end), text.slice(end)];
      const others = vocabulary.has(part) && part !== rest ? split(after) : undefined;
      if (others) return [part, ...others];
    }
    return undefined;
  };
  return split(rest)?.join(" ") ?? "";
}

/** The telling words of a question; where none tells anything, all. */
function telling(question: string): string[] {
  const words = wordsIn(question);
  const some = words.filter((word) => !FILLER.has(word));
  return some.length > 0 ? some : words;
}

function wordsIn(text: string): string[] {
  return text.toLowerCase().match(/[a-z0-9½¼¾/]+/g) ?? [];
}
