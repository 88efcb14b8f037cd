import { genusOf, SPECIES_TABLE, type Species } from "./species";

/** Records that stray farther from their mean than a log customarily does from the table lie far apart. */
const FAR_APART = 0.15;

/** In a genus with fewer other species than this, to be the lightest or heaviest of it says nothing. */
const FEW_SIBLINGS = 2;

/** How strong the specific gravity of a species is, in a few words: one record, or records far apart, are weak. */
export function evidenceOf(species: Species): string {
  const { records } = species;
  if (!records) return "good: national table";
  const doubts = [oneRecord(records), farApart(species), outsideItsGenus(species)].filter(
    (doubt) => doubt !== undefined,
  );
  return doubts.length > 0 ? `weak: ${doubts.join(", ")}` : `fair: mean of ${records.count} records`;
}

function oneRecord({ count }: { count: number }): string | undefined {
  return count === 1 ? "one record" : undefined;
}

function farApart({ records, specificGravity }: Species): string | undefined {
  const { least, most } = records!;
  const strays = Math.max(most - specificGravity, specificGravity - least) / specificGravity;
  return strays > FAR_APART ? `records from ${least} to ${most}` : undefined;
}

function outsideItsGenus({ name, latin, specificGravity }: Species): string | undefined {
  const others = SPECIES_TABLE.filter((other) => other.name !== name && genusOf(other.latin) === genusOf(latin));
  const gravities = others.map((other) => other.specificGravity);
  if (gravities.length < FEW_SIBLINGS) return undefined;
  const mean = gravities.reduce((sum, gravity) => sum + gravity, 0) / gravities.length;
  if (specificGravity < Math.min(...gravities, mean * (1 - FAR_APART))) return "far lighter than the rest of its genus";
  if (specificGravity > Math.max(...gravities, mean * (1 + FAR_APART))) return "far heavier than the rest of its genus";
  return undefined;
}
