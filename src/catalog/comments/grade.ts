/** How far a number can be trusted, by where its formula comes from. The first that fits decides. */
const GRADES: readonly [grade: string, beginning: RegExp][] = [
  ["from memory", /^from memory/i],
  ["common practice", /^common practice/i],
  ["plain arithmetic", /^plain (?:geometry|arithmetic)/i],
  ["published", /./],
];

/**
 * The grade of a formula, or of a function by all the formulas it rests on, from their `@source` lines. Where they
 * differ every grade is named, so that nothing from memory passes for published; plain arithmetic is named only where
 * there is nothing else.
 */
export function gradeOf(sources: readonly string[]): string {
  const found = new Set(sources.map(gradeOfSource));
  if (found.size > 1) found.delete("plain arithmetic");
  const ordered = ["published", "common practice", "from memory", "plain arithmetic"].filter((grade) =>
    found.has(grade),
  );
  const [first = "plain arithmetic", ...rest] = ordered;
  return rest.length === 0 ? first : `${first}, in part ${rest.join(" and ")}`;
}

function gradeOfSource(source: string): string {
  return GRADES.find(([, beginning]) => beginning.test(source))![0];
}
