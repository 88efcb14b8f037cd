/** What the page needs of an entry of the catalog. */
export interface Entry {
  name: string;
  summary: string;
  params: { name: string; optional: boolean; text: string }[];
  returns: string;
  examples: { formula: string; result: string }[];
  cautions: string[];
  words: string[];
  grade: string;
}

/** The catalog as the server has it; an empty one still leaves a working sheet. */
export async function loadCatalog(): Promise<Entry[]> {
  const answer = await fetch("catalog.json");
  if (!answer.ok) return [];
  const entries = (await answer.json()) as Partial<Entry>[];
  return entries.map((entry) => ({
    name: entry.name ?? "",
    summary: entry.summary ?? "",
    params: entry.params ?? [],
    returns: entry.returns ?? "",
    examples: entry.examples ?? [],
    cautions: entry.cautions ?? [],
    words: entry.words ?? [],
    grade: entry.grade ?? "",
  }));
}

/** Entries in which every word of the search occurs; those whose name starts with it come first. */
export function search(catalog: Entry[], wanted: string): Entry[] {
  const words = wanted.toLowerCase().split(/\s+/).filter(Boolean);
  if (words.length === 0) return [];
  const text = (entry: Entry) => [entry.name, entry.summary, ...entry.words].join(" ").toLowerCase();
  const found = catalog.filter((entry) => words.every((word) => text(entry).includes(word)));
  const first = (entry: Entry) => (entry.name.toLowerCase().startsWith(words[0] ?? "") ? 0 : 1);
  return found.sort((a, b) => first(a) - first(b) || a.name.localeCompare(b.name));
}

/** `BOLE.EMC(temperature, humidity)` */
export function signature(entry: Entry): string {
  const params = entry.params.map(({ name, optional }) => (optional ? `[${name}]` : name));
  return `BOLE.${entry.name}(${params.join(", ")})`;
}
