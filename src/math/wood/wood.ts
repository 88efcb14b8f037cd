import { mustBeBetween, NoAnswer } from "../errors";
import { WATER_LB_PER_FT3 } from "../units";
import { CELL_WALL_GRAVITY, FIBER_SATURATION_PCT, mostMoisturePercent } from "./moisture";
import { speciesNamed, type SpeciesName } from "./species";

/** A wood where only its density counts: a species, or a specific gravity of the person's own. */
export type WoodGiven = SpeciesName | number;

/** The specific gravities a person's own may lie between: balsa is about the least, lignum vitae the most of all woods. */
export const OWN_GRAVITY = { least: 0.1, most: 1.4 };

/** What the weight of a wood is made of. */
export interface Wood {
  name: string;
  /** oven-dry weight over green volume */
  specificGravity: number;
  /** the least and the most of the records, where more than one is known */
  leastGravity: number;
  mostGravity: number;
  specificGravityAt12: number | undefined;
  greenMoisturePercent: number | undefined;
  /** the green moistures that it may hold as far as is known, or undefined where its own is printed */
  moistureEnds: { least: number; most: number } | undefined;
  /** green moisture of heartwood and sapwood, as far as they are printed */
  partMoisturesPercent: readonly number[];
}

const known = new Map<SpeciesName, Wood>();

/** The wood of a species, or one of which a specific gravity is all that is known. */
export function woodOf(given: WoodGiven): Wood {
  if (typeof given === "number") return woodOfGravity(given);
  let wood = known.get(given);
  if (!wood) known.set(given, (wood = woodOfSpecies(given)));
  return wood;
}

function woodOfGravity(specificGravity: number): Wood {
  mustBeBetween(OWN_GRAVITY.least, OWN_GRAVITY.most, specificGravity, "specific gravity");
  return {
    name: `a wood of specific gravity ${specificGravity}`,
    specificGravity,
    leastGravity: specificGravity,
    mostGravity: specificGravity,
    specificGravityAt12: undefined,
    greenMoisturePercent: undefined,
    moistureEnds: anyMoisture(specificGravity),
    partMoisturesPercent: [],
  };
}

function woodOfSpecies(name: SpeciesName): Wood {
  const species = speciesNamed(name);
  const { specificGravity, specificGravityAt12, greenMoisturePercent, records } = species;
  const parts = [species.heartwoodMoisturePercent, species.sapwoodMoisturePercent];
  const unknown = greenMoisturePercent === undefined ? anyMoisture(specificGravity) : undefined;
  return {
    name,
    specificGravity,
    leastGravity: records?.least ?? specificGravity,
    mostGravity: records?.most ?? specificGravity,
    specificGravityAt12,
    greenMoisturePercent,
    moistureEnds: species.genusMoisturePercent ?? unknown,
    partMoisturesPercent: parts.filter((percent) => percent !== undefined),
  };
}

/** Green wood of which nothing else is known holds something between full cell walls and full cavities. */
function anyMoisture(specificGravity: number) {
  return { least: FIBER_SATURATION_PCT, most: mostMoisturePercent({ specificGravity }) };
}

/** Green moisture of a wood, or a refusal that says what green wood of its density may weigh. */
export function greenMoisturePercentOf(wood: Wood): number {
  if (wood.greenMoisturePercent !== undefined) return wood.greenMoisturePercent;
  const [least, most] = greenEndsLbPerFt3(wood).map((pounds) => pounds.toFixed(0));
  throw new NoAnswer(
    `moisture: none printed for ${wood.name} when green; give one (green it weighs from ${least} to ${most} lb/ft3)`,
  );
}

/** The least and most pounds in a cubic foot of green wood whose own moisture is not printed; nothing where it is. */
export function greenEndsLbPerFt3(wood: Wood): number[] {
  const { moistureEnds, leastGravity, mostGravity } = wood;
  if (!moistureEnds) return [];
  return [greenLb(leastGravity, moistureEnds.least), greenLb(mostGravity, moistureEnds.most)];
}

/** No wood holds more water than its cavities. */
function greenLb(specificGravity: number, moisturePercent: number): number {
  return WATER_LB_PER_FT3 * specificGravity * (1 + heldPercent(specificGravity, moisturePercent) / 100);
}

/**
 * The moisture, or as much of it as wood of a specific gravity can hold.
 *
 * @formula MC = 0 if specificGravity >= 1.54, else min(moisturePercent, mostMoisturePercent())
 * @source plain arithmetic
 */
export function heldPercent(specificGravity: number, moisturePercent: number): number {
  if (specificGravity >= CELL_WALL_GRAVITY) return 0;
  return Math.min(moisturePercent, mostMoisturePercent({ specificGravity }));
}
