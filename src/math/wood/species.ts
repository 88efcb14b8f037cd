import { NoAnswer } from "../errors";
import { FIA_WOOD, type ForestSpeciesName } from "./fia-wood.table";
import { GREEN_HEART_AND_SAP } from "./heart-and-sap.table";
import { SHRINKAGE_TO_OVENDRY } from "./shrinkage.table";
import { TOWN_TREES, type TownTreeName } from "./town-trees.table";
import { TRADE_NAMES } from "./trade-names.table";

/** The common name by which the formulas know a species. */
export type SpeciesName = ForestSpeciesName | TownTreeName;

/** Where a shrinkage stands: printed in Table 4-3, worked back from Table 13-5, or from the row of a sales group there. */
export type ShrinkageTable = (typeof SHRINKAGE_TO_OVENDRY)[number][5];

/** All that the tables say about one species. Undefined where a table has no figure. */
export interface Species {
  name: SpeciesName;
  latin: string;
  kind: "hardwood" | "softwood";
  /** oven-dry weight over green volume */
  specificGravity: number;
  /** the records that the specific gravity is the mean of, where their number and their ends are known */
  records: { count: number; least: number; most: number } | undefined;
  /** oven-dry weight over the volume at 12 % moisture */
  specificGravityAt12: number | undefined;
  /** of the species itself, or as that of its genus */
  greenMoisturePercent: number | undefined;
  /** the least and most green moisture of the genus, where the species has none of its own */
  genusMoisturePercent: { least: number; most: number } | undefined;
  heartwoodMoisturePercent: number | undefined;
  sapwoodMoisturePercent: number | undefined;
  /** shrinkage from green to oven dry */
  radialPercent: number | undefined;
  tangentialPercent: number | undefined;
  volumetricPercent: number | undefined;
  shrinkageTable: ShrinkageTable | undefined;
  barkSpecificGravity: number | undefined;
  barkMoisturePercent: number | undefined;
  /** bark volume over wood volume */
  barkVolumePercent: number | undefined;
}

/** A species of the weight table, which has every figure of weight. */
export type ForestSpecies = Species & {
  name: ForestSpeciesName;
  specificGravityAt12: number;
  greenMoisturePercent: number;
  barkSpecificGravity: number;
  barkMoisturePercent: number;
  barkVolumePercent: number;
};

const SHRINKAGE_OF = new Map<string, (typeof SHRINKAGE_TO_OVENDRY)[number]>(
  SHRINKAGE_TO_OVENDRY.map((row) => [row[0], row]),
);
const HEART_AND_SAP_OF = new Map<string, (typeof GREEN_HEART_AND_SAP)[number]>(
  GREEN_HEART_AND_SAP.map((row) => [row[0], row]),
);

/** Every species of the weight table, with what the other tables know of it. */
export const FOREST_SPECIES: readonly ForestSpecies[] = FIA_WOOD.map(
  ([
    name,
    latin,
    kind,
    specificGravity,
    specificGravityAt12,
    greenMoisturePercent,
    barkGravity,
    barkMoisture,
    bark,
  ]) => {
    const [, , radialPercent, tangentialPercent, volumetricPercent, shrinkageTable] = SHRINKAGE_OF.get(name) ?? [];
    const [, , heartwoodMoisturePercent, sapwoodMoisturePercent] = HEART_AND_SAP_OF.get(name) ?? [];
    return {
      name,
      latin,
      kind: kind === "H" ? "hardwood" : "softwood",
      specificGravity,
      records: undefined,
      specificGravityAt12,
      greenMoisturePercent,
      genusMoisturePercent: undefined,
      heartwoodMoisturePercent,
      sapwoodMoisturePercent,
      radialPercent,
      tangentialPercent,
      volumetricPercent,
      shrinkageTable,
      barkSpecificGravity: barkGravity,
      barkMoisturePercent: barkMoisture,
      barkVolumePercent: bark,
    };
  },
);

const NOT_SEEN = {
  specificGravityAt12: undefined,
  heartwoodMoisturePercent: undefined,
  sapwoodMoisturePercent: undefined,
  radialPercent: undefined,
  tangentialPercent: undefined,
  volumetricPercent: undefined,
  shrinkageTable: undefined,
  barkSpecificGravity: undefined,
  barkMoisturePercent: undefined,
  barkVolumePercent: undefined,
};

/** Every species: those of the weight table, then trees that stand in towns, of which the density only is known. */
export const SPECIES_TABLE: readonly Species[] = [
  ...FOREST_SPECIES,
  ...TOWN_TREES.map(([name, latin, kind, count, specificGravity, least, most]): Species => ({
    ...NOT_SEEN,
    ...greenMoistureOfGenus(latin),
    name,
    latin,
    kind: kind === "H" ? "hardwood" : "softwood",
    specificGravity,
    records: { count, least, most },
  })),
];

/** Whether it is one of the weight table. */
export function isForestSpecies(species: Species): species is ForestSpecies {
  return species.barkVolumePercent !== undefined;
}

/** Green moisture as the species of the same genus have it: their mean, and the ends of whole trees, heart and sap. */
function greenMoistureOfGenus(latin: string) {
  const siblings = FOREST_SPECIES.filter((species) => genusOf(species.latin) === genusOf(latin));
  if (siblings.length === 0) return { greenMoisturePercent: undefined, genusMoisturePercent: undefined };
  const trees = siblings.map((species) => species.greenMoisturePercent);
  const parts = siblings.flatMap((species) => [species.heartwoodMoisturePercent, species.sapwoodMoisturePercent]);
  const all = [...trees, ...parts.filter((percent) => percent !== undefined)];
  return {
    greenMoisturePercent: trees.reduce((sum, percent) => sum + percent, 0) / trees.length,
    genusMoisturePercent: { least: Math.min(...all), most: Math.max(...all) },
  };
}

/** The first word of a Latin name. */
export function genusOf(latin: string): string {
  return latin.split(" ")[0]!;
}

const BY_NAME = new Map<SpeciesName, Species>(SPECIES_TABLE.map((species) => [species.name, species]));

/**
 * What the tables say about a species.
 *
 * @source FIADB REF_SPECIES
 * @source FPL-GTR-190, Tables 4-1, 4-3 and 13-5
 * @source GWDD, trees that stand in towns
 */
export function speciesNamed(name: ForestSpeciesName): ForestSpecies;
export function speciesNamed(name: SpeciesName): Species;
export function speciesNamed(name: SpeciesName): Species {
  const species = BY_NAME.get(name);
  if (!species) throw new NoAnswer(`species: ${name} is not in the table`);
  return species;
}

/** The spellings a species answers to: its Latin name, the handbook's forms, and the trade's. */
export const SPECIES_NAMES = Object.fromEntries(
  SPECIES_TABLE.map(({ name, latin }) => [name, [latin, ...handbookNames(name), ...(TRADE_NAMES[name] ?? [])]]),
) as unknown as Readonly<Record<SpeciesName, readonly string[]>>;

/** The handbook heads a row "Cedar, yellow": that form, and "yellow cedar". A row for a group of species names none. */
function handbookNames(name: SpeciesName): string[] {
  const shrinkage = SHRINKAGE_OF.get(name);
  const rows = [shrinkage?.[5] === "4-3" ? shrinkage[1] : undefined, HEART_AND_SAP_OF.get(name)?.[1]];
  const headings = rows.filter((heading): heading is NonNullable<typeof heading> => !!heading && heading !== "Aspen");
  return [...new Set(headings)].flatMap((heading) => [heading, heading.split(", ").reverse().join(" ")]);
}
