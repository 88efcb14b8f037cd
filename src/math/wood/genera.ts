import { woodWeightLbPerFt3 } from "./density";
import { GENERA } from "./genera.table";
import { genusOf, SPECIES_TABLE, type Species, type SpeciesName } from "./species";
import { greenEndsLbPerFt3, woodOf } from "./wood";

/** The species that a bare name may mean, those most often sawn first. */
export function speciesOfGenus(word: string): SpeciesName[] {
  const [, marks, first] = GENERA.find(([name]) => name === word) ?? [word, [], []];
  const members = SPECIES_TABLE.filter((species) => marks.some((mark) => isMarked(species, mark)));
  return [...new Set([...first, ...members.map(({ name }) => name)])];
}

/** A genus is marked by its Latin name, which has a capital; other groups by the end of the common name. */
function isMarked({ name, latin }: Species, mark: string): boolean {
  return genusOf(latin) === mark || name.endsWith(mark);
}

/** What a message offers for a bare name: each species with its green weight. Undefined for any other name. */
export function offeredForGenus(word: string): string[] | undefined {
  const species = speciesOfGenus(word);
  return species.length === 0 ? undefined : species.map((name) => `${name} ${greenWeight(name)}`);
}

function greenWeight(name: SpeciesName): string {
  const wood = woodOf(name);
  if (wood.greenMoisturePercent !== undefined) return woodWeightLbPerFt3({ species: name }).toFixed(0);
  return greenEndsLbPerFt3(wood)
    .map((pounds) => pounds.toFixed(0))
    .join("-");
}
