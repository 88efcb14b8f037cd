/** Words that stand in every question and tell nothing. */
export const FILLER: ReadonlySet<string> = new Set(
  (
    "a am an and any are as at be by can come could did do does for from get give had has have how i if in into is it its " +
    "let make many me mine much must my need of off on or our out over per put should so some that the them this to up use " +
    "want was we what when where which will with would you your"
  ).split(" "),
);

/** Words that mean nearly the same at the mill: a question may use any of them. Common practice, no source. */
const ALIKE = [
  "heavy weight weigh pounds",
  "wide width breadth",
  "tall height high",
  "thick thickness",
  "long length",
  "deep depth",
  "big large largest biggest",
  "hp horsepower power",
  "truck trailer payload haul",
  "trip run haul",
  "strap straps chain tiedown tie-down tie",
  "sling lifting hoist crane",
  "blade band saw",
  "tension strain",
  "sharpen sharpening dull",
  "beam timber mantel post",
  "slice cookie round",
  "bug bugs beetle beetles insect insects",
  "rot rotten decay hollow unsound",
  "crooked sweep bowed bent",
  "warped cupped twisted bowed",
  "flatten surfacing planing sled",
  "dry drying seasoning",
  "wet green",
  "meter moisture",
  "humidity humid damp",
  "fraction sixteenths tape",
  "circumference girth round",
  "invoice bill",
  "charge fee price",
  "cost expense",
  "worth value bid",
  "profit margin",
  "partner share split",
  "wax seal sealer coat",
  "wheel pulley sheave",
  "rpm turns speed",
  "bend sag deflection",
  "plank board lumber",
  "slab live-edge flitch",
  "uneven variation stray thin",
  "firewood cord cords slabwood",
  "sawdust kerf",
  "drop falls fall",
];

/** What else the trade says for a word. */
export const MEANINGS: ReadonlyMap<string, ReadonlySet<string>> = meanings();

function meanings(): Map<string, Set<string>> {
  const found = new Map<string, Set<string>>();
  for (const group of ALIKE.map((words) => words.split(" ")))
    for (const word of group) {
      const others = found.get(word) ?? new Set();
      for (const other of group) if (other !== word) others.add(other);
      found.set(word, others);
    }
  return found;
}
