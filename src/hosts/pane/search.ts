import type { Entry } from "../../catalog/entry";

/** Words that stand in every question and tell nothing. */
const FILLER = new Set(
  "a an and at by can do does for from how i in is it its me much my of on or per the to what which will with".split(
    " ",
  ),
);

/** How much a word tells, by where it was found: a name most, then the sawyer's own words, then the rest. */
const WEIGHTS = { name: 8, words: 5, summary: 3, rest: 1 };

/**
 * The functions that a question is about, the best first and equals in the order of the job. Every word of the question
 * must be found in a function.
 */
export function found(question: string, catalog: readonly Entry[]): Entry[] {
  const asked = wordsOf(question);
  return catalog
    .map((entry) => ({ entry, score: score(question, asked, entry) }))
    .filter(({ score }) => score > 0)
    .sort((a, b) => b.score - a.score)
    .map(({ entry }) => entry);
}

function score(question: string, asked: string[], entry: Entry): number {
  if (asked.length === 0) return 0;
  const name = entry.name.toLowerCase();
  const places = [
    { words: entry.words.flatMap(wordsOf), weight: WEIGHTS.words },
    { words: wordsOf(entry.summary), weight: WEIGHTS.summary },
    {
      words: [...entry.remarks, entry.returns, entry.topic, ...entry.params.map((p) => p.text)].flatMap(wordsOf),
      weight: WEIGHTS.rest,
    },
  ];
  const perWord = asked.map((word) =>
    Math.max(WEIGHTS.name * bestInName(word, name), ...places.map(({ words, weight }) => weight * best(word, words))),
  );
  if (perWord.some((worth) => worth === 0)) return 0;
  const phrase = entry.words.some((words) => words.toLowerCase() === question.trim().toLowerCase());
  return perWord.reduce((sum, worth) => sum + worth, 0) + (phrase ? WEIGHTS.name : 0);
}

/** A whole word counts in full, the beginning of one half: typing goes on. */
function best(asked: string, words: string[]): number {
  if (words.includes(asked)) return 1;
  return words.some((word) => word.startsWith(asked)) ? 0.5 : 0;
}

/** A name is several words run together: PULLEYSIZE is found by pulley and by size. */
function bestInName(asked: string, name: string): number {
  if (name === asked) return 1;
  return asked.length > 2 && name.includes(asked) ? 0.5 : 0;
}

/** The telling words of a text, one log and many logs alike. */
function wordsOf(text: string): string[] {
  const words = text.toLowerCase().match(/[a-z0-9½¼¾/]+/g) ?? [];
  const telling = words.filter((word) => !FILLER.has(word));
  return (telling.length > 0 ? telling : words).map(singular);
}

function singular(word: string): string {
  return word.length > 3 && word.endsWith("s") && !word.endsWith("ss") ? word.slice(0, -1) : word;
}
