/** No name is longer, and what is need not be compared letter by letter. */
const LONGEST = 60;

/** How many letters must be put in, left out or changed to make one word the other (Levenshtein). */
export function editDistance(a: string, b: string): number {
  if (a.length > LONGEST) return a.length;
  let above = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++)
      row.push(Math.min(above[j]! + 1, row[j - 1]! + 1, above[j - 1]! + (a[i - 1] === b[j - 1] ? 0 : 1)));
    above = row;
  }
  return above[b.length]!;
}
