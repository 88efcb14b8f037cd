import { mustBeAtLeast, NoAnswer } from "../errors";
import { mustTaper, smalianFt3 } from "../logs/cubic";
import { hairUnder } from "../rounding";
import { BF_PER_FT3, WATER_LB_PER_FT3 } from "../units";
import { weightAtMoistureLbPerFt3, woodWeightLbPerFt3 } from "./density";
import { mustFitIn } from "./moisture";
import { isForestSpecies, speciesNamed } from "./species";
import { greenEndsLbPerFt3, greenMoisturePercentOf, heldPercent, woodOf, type WoodGiven } from "./wood";

/** How far a green log's weight customarily strays from the table's, either way. */
const CUSTOMARY_BAND = 0.15;

/** The figure asked for: the table's, or the ends of the customary band round it. */
export const WEIGHT_BOUNDS = { typical: [], low: [], high: [] } as const;
type Bound = keyof typeof WEIGHT_BOUNDS;
const BOUND_FACTOR: Record<Bound, number> = {
  typical: 1,
  low: 1 - CUSTOMARY_BAND,
  high: 1 + CUSTOMARY_BAND,
};

export const BARK_CHOICES = { without: [], with: [] } as const;

interface Log {
  species: WoodGiven;
  smallIn: number;
  largeIn: number;
  lengthFt: number;
  moisturePercent?: number;
  bark: keyof typeof BARK_CHOICES;
  bound: Bound;
}

/**
 * Pounds in a log, from its diameters inside bark.
 *
 * The volume is Smalian's, which comes out on the heavy side for a log with a flared butt. The bark is weighed green
 * whatever the moisture of the wood. The customary 15 % is too narrow for many a conifer, whose sapwood holds far more
 * water than its heartwood: the bounds of a green log go out to a log all of the one or all of the other. For a tree that
 * stands in towns they go out to the lightest and heaviest of its records with the least and most water of its genus, or,
 * where no moisture of the genus is printed, with anything from full cell walls to full cavities.
 *
 * @formula W = V * (wood + peel); V = smalianFt3() [ft3];
 *   wood = woodWeightLbPerFt3() if bound = "typical", else boundWoodLbPerFt3() [lb/ft3];
 *   peel = band * barkLbPerFt3OfWood() if bark = "with", else 0 [lb/ft3 of wood];
 *   band = 1 if bound = "typical", 0.85 if bound = "low", else 1.15
 * @source FIADB REF_SPECIES, specific gravity, moisture and volume of bark
 * @source FPL-GTR-282, Eq 4-14
 * @source GWDD, least and most of the records of trees that stand in towns
 * @source FPL-GTR-282, Eq 4-3, the most water that a wood can hold
 * @source FPL-GTR-190, Table 4-1, green heartwood and sapwood for the bounds
 * @source common practice, no source: 15 % either way on a green log
 * @range as Smalian's volume: the large end not under the small end
 */
export function logWeightLb({ moisturePercent, bark, bound, ...ends }: Log): number {
  mustTaper(ends.smallIn, ends.largeIn, ends.lengthFt, "log");
  const woodLb = boundWoodLbPerFt3({ species: ends.species, moisturePercent, bound });
  const barkLb = bark === "with" ? BOUND_FACTOR[bound] * barkLbPerFt3OfWood(ends.species) : 0;
  return smalianFt3(ends) * (woodLb + barkLb);
}

/**
 * Pounds in a cubic foot of a log's wood: as the table has it, or at an end of what it may weigh.
 *
 * @formula by table: the least or most of 0.85 or 1.15 times the weight, of all heartwood or sapwood, and of the
 *   records of gravity and moisture
 * @source common practice, no source: 15 % either way on a green log
 */
export function boundWoodLbPerFt3({ species, moisturePercent, bound }: BoundWood): number {
  if (moisturePercent === undefined) return greenLbPerFt3(species, bound);
  return lbPerFt3AtMoisture(species, moisturePercent, bound);
}

interface BoundWood {
  species: WoodGiven;
  moisturePercent?: number | undefined;
  bound: Bound;
}

/** Pounds in a cubic foot of green wood: as the table has it, or the outermost of all that green wood of it may weigh. */
function greenLbPerFt3(species: WoodGiven, bound: Bound): number {
  if (bound === "typical") return woodWeightLbPerFt3({ species });
  const wood = woodOf(species);
  const parts = wood.partMoisturesPercent.map((percent) => weightAtMoistureLbPerFt3(wood, percent));
  const banded = wood.greenMoisturePercent === undefined ? [] : [BOUND_FACTOR[bound] * woodWeightLbPerFt3({ species })];
  return outermost(bound, [...banded, ...parts, ...greenEndsLbPerFt3(wood)]);
}

/** Pounds in a cubic foot at a moisture; the bounds go out to the lightest and the heaviest of the species' records. */
function lbPerFt3AtMoisture(species: WoodGiven, moisturePercent: number, bound: Bound): number {
  const banded = BOUND_FACTOR[bound] * woodWeightLbPerFt3({ species, moisturePercent });
  if (bound === "typical") return banded;
  const wood = woodOf(species);
  const records = [wood.leastGravity, wood.mostGravity].map((specificGravity) =>
    weightAtMoistureLbPerFt3({ ...wood, specificGravity }, heldPercent(specificGravity, moisturePercent)),
  );
  return outermost(bound, wood.leastGravity === wood.mostGravity ? [banded] : [banded, ...records]);
}

function outermost(bound: "low" | "high", weights: number[]): number {
  return bound === "low" ? Math.min(...weights) : Math.max(...weights);
}

/**
 * Pounds of green bark that go with a cubic foot of wood.
 *
 * @formula w = share / 100 * 62.4 * G * (1 + MC / 100); share = row.barkVolumePercent [% of the wood];
 *   G = row.barkSpecificGravity; MC = row.barkMoisturePercent [%]; row = speciesNamed()
 * @source FIADB REF_SPECIES, specific gravity, moisture and volume of bark
 */
export function barkLbPerFt3OfWood(species: WoodGiven): number {
  const wood = typeof species === "number" ? undefined : speciesNamed(species);
  if (!wood || !isForestSpecies(wood))
    throw new NoAnswer(`bark: no weight was seen in print for ${woodOf(species).name}; ask for the log without`);
  const { barkVolumePercent, barkSpecificGravity, barkMoisturePercent } = wood;
  return (barkVolumePercent / 100) * WATER_LB_PER_FT3 * barkSpecificGravity * (1 + barkMoisturePercent / 100);
}

interface Lumber {
  species: WoodGiven;
  boardFeet: number;
  moisturePercent?: number;
}

/**
 * Pounds in sawn lumber. A board foot is counted on the green rough size, so drying takes water out of it but no wood.
 *
 * @formula W = dry * (1 + MC / 100); dry = ovendryLumberLb() [lb];
 *   MC = moisturePercent or wood.greenMoisturePercent [%]; wood = woodOf()
 * @source FPL-GTR-282, Eq 4-14
 * @source FIADB REF_SPECIES for specific gravity and green moisture
 * @range moisture from 0 to all that the species can hold
 */
export function lumberWeightLb({ species, boardFeet, moisturePercent }: Lumber): number {
  const wood = woodOf(species);
  const moisture = moisturePercent ?? greenMoisturePercentOf(wood);
  mustFitIn(wood, moisture, "moisture");
  return ovendryLumberLb({ species, boardFeet }) * (1 + moisture / 100);
}

/**
 * Pounds of dry wood in board feet counted on the green size.
 *
 * @formula W = boardFeet / 12 * 62.4 * Gb; Gb = wood.specificGravity; wood = woodOf()
 * @source plain arithmetic
 */
export function ovendryLumberLb({ species, boardFeet }: { species: WoodGiven; boardFeet: number }): number {
  return (boardFeet / BF_PER_FT3) * WATER_LB_PER_FT3 * woodOf(species).specificGravity;
}

/**
 * Pounds of water that leave lumber between two moistures.
 *
 * @formula water = dry * (max(0, fromPercent - toPercent) / 100); dry = ovendryLumberLb() [lb]
 * @source FPL-GTR-282, Eq 4-14
 * @source FIADB REF_SPECIES for specific gravity
 * @range from not under to
 */
export function waterToLoseLb(stack: {
  species: WoodGiven;
  boardFeet: number;
  fromPercent: number;
  toPercent: number;
}): number {
  const { species, fromPercent, toPercent } = stack;
  mustFitIn(woodOf(species), fromPercent, "from");
  mustBeAtLeast(hairUnder(toPercent), fromPercent, "from (% moisture), not under the target");
  return ovendryLumberLb(stack) * (Math.max(0, fromPercent - toPercent) / 100);
}
