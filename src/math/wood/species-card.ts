import { NoAnswer, short } from "../errors";
import { woodWeightLbPerFt3 } from "./density";
import { evidenceOf } from "./evidence";
import { FIBER_SATURATION_PCT, mostMoisturePercent } from "./moisture";
import { SECOND_OPINIONS } from "./second-opinions.table";
import { SPECIES_TABLE, speciesNamed, type Species, type SpeciesName } from "./species";

type Cell = string | number | undefined;

/** One figure of a species, with its unit and where it stands. */
interface Figure {
  unit: string;
  source: (species: Species) => string;
  of: (species: Species) => Cell;
}

const WEIGHT_TABLE = "FIADB REF_SPECIES";
const WORLD_TABLE = "Global Wood Density Database, 2009";
const MOISTURE_TABLE = "Wood Handbook Table 4-1";
const DENSITY_EQUATION = "Wood Handbook Eq 4-14";
const SHRINKAGE_TABLES = {
  "4-3": "Wood Handbook Table 4-3",
  "13-5": "Wood Handbook Table 13-5, worked back",
  "13-5 group": "Wood Handbook Table 13-5, row of the group it is sold in (common practice)",
};

/** The figures of a species by the names they are asked for, in the order of the card. */
const FIGURES = {
  "latin name": { unit: "", source: weightSource, of: ({ latin }) => latin },
  "specific gravity": { unit: "green volume", source: weightSource, of: (species) => species.specificGravity },
  "specific gravity at 12%": {
    unit: "12% volume",
    source: () => WEIGHT_TABLE,
    of: (species) => species.specificGravityAt12,
  },
  "green moisture": { unit: "%", source: moistureSource, of: (species) => species.greenMoisturePercent },
  "heartwood moisture": { unit: "%", source: () => MOISTURE_TABLE, of: (species) => species.heartwoodMoisturePercent },
  "sapwood moisture": { unit: "%", source: () => MOISTURE_TABLE, of: (species) => species.sapwoodMoisturePercent },
  "most moisture": { unit: "%", source: () => "Wood Handbook Eq 4-3", of: mostMoisturePercent },
  "green weight": {
    unit: "lb/ft3",
    source: () => DENSITY_EQUATION,
    of: ({ name, greenMoisturePercent }) =>
      greenMoisturePercent === undefined ? undefined : woodWeightLbPerFt3({ species: name }),
  },
  "heartwood weight": {
    unit: "lb/ft3",
    source: () => DENSITY_EQUATION,
    of: weightAtMoisture("heartwoodMoisturePercent"),
  },
  "sapwood weight": { unit: "lb/ft3", source: () => DENSITY_EQUATION, of: weightAtMoisture("sapwoodMoisturePercent") },
  radial: { unit: "% green to oven dry", source: shrinkageSource, of: (species) => species.radialPercent },
  tangential: { unit: "% green to oven dry", source: shrinkageSource, of: (species) => species.tangentialPercent },
  volumetric: { unit: "% green to oven dry", source: shrinkageSource, of: (species) => species.volumetricPercent },
  bark: { unit: "% of wood volume", source: () => WEIGHT_TABLE, of: (species) => species.barkVolumePercent },
  evidence: { unit: "", source: weightSource, of: evidenceOf },
  records: { unit: "of specific gravity", source: weightSource, of: ({ records }) => records?.count },
  "least specific gravity": { unit: "of the records", source: weightSource, of: ({ records }) => records?.least },
  "most specific gravity": { unit: "of the records", source: weightSource, of: ({ records }) => records?.most },
} satisfies Record<string, Figure>;

export type SpeciesFigure = keyof typeof FIGURES;

/** The names a figure may be asked by. */
export const SPECIES_FIGURES = {
  ...(Object.fromEntries(Object.keys(FIGURES).map((figure) => [figure, []])) as unknown as Record<
    SpeciesFigure,
    readonly string[]
  >),
  "latin name": ["latin", "scientific name"],
  "specific gravity": ["sg"],
  "specific gravity at 12%": ["specific gravity at 12 %", "specific gravity at 12", "sg at 12%"],
  "green moisture": ["moisture"],
  "heartwood moisture": ["heartwood"],
  "sapwood moisture": ["sapwood"],
  "green weight": ["weight"],
  tangential: ["tangential shrinkage"],
  radial: ["radial shrinkage"],
  volumetric: ["volumetric shrinkage"],
};

/**
 * The whole species table, one species' card, or one figure of it.
 *
 * A card shows, below the figures that the formulas use, those that another source prints differently.
 *
 * @formula by table: the figures of the species table, and green weight = 62.4 * Gb * (1 + MC / 100)
 * @source FIADB REF_SPECIES for gravity, green moisture and bark
 * @source GWDD for the gravity of trees that stand in towns
 * @source FPL-GTR-190, Table 4-1 for heart and sap, Tables 4-3 and 13-5 for shrinkage
 * @source FPL-GTR-282, Eq 4-3 and 4-14
 * @source GWDD and NPS log weights for the figures shown as a second source
 * @source common practice, no source: the trade's short names; shrinkage of oaks by the group they are sold in
 */
export function speciesAnswer({ name, figure }: { name?: SpeciesName; figure?: SpeciesFigure }): Cell[][] {
  if (name === undefined) {
    if (figure === undefined) return wholeTable();
    throw new NoAnswer(`species: none given to look up the ${figure} of`);
  }
  return figure === undefined ? card(name) : [[figureOf(name, figure)]];
}

function wholeTable(): Cell[][] {
  const figures = Object.entries<Figure>(FIGURES);
  const heading = figures.map(([figure, { unit }]) => (unit ? `${figure}, ${unit}` : figure));
  const rows = SPECIES_TABLE.map((species) => [species.name, ...figures.map(([, { of }]) => of(species))]);
  return [["species", ...heading], ...rows];
}

function card(name: SpeciesName): Cell[][] {
  const species = speciesNamed(name);
  const figures = Object.entries<Figure>(FIGURES).map(([figure, { of, unit, source }]) => {
    const value = of(species);
    return value === undefined ? [figure, "not seen in print", "", ""] : [figure, value, unit, source(species)];
  });
  return [
    ["figure", species.name, "unit", "source"],
    ...figures,
    ...secondSources(species),
    ...outsideHeartAndSap(species),
    ...gravitiesApart(species),
  ];
}

function figureOf(name: SpeciesName, figure: SpeciesFigure): Cell {
  const { of, source }: Figure = FIGURES[figure];
  const species = speciesNamed(name);
  const value = of(species);
  if (value === undefined)
    throw new NoAnswer(`${figure}: no figure for ${name} in ${source(species)} as far as it was seen`);
  return value;
}

function secondSources({ name }: Species): Cell[][] {
  return SECOND_OPINIONS.filter(([species]) => species === name).map(([, figure, value, where]) => [
    `${figure}, second source`,
    value,
    FIGURES[figure].unit,
    where,
  ]);
}

/** The tree's mean moisture comes from another document than heart and sap, and for some species lies outside both. */
function outsideHeartAndSap(species: Species): Cell[][] {
  const { greenMoisturePercent, heartwoodMoisturePercent: heart, sapwoodMoisturePercent: sap } = species;
  if (greenMoisturePercent === undefined || heart === undefined || sap === undefined) return [];
  if (greenMoisturePercent >= Math.min(heart, sap) && greenMoisturePercent <= Math.max(heart, sap)) return [];
  return [["note", "The green moisture lies outside that of heart and sap: the two sources differ", "", ""]];
}

/** For a few species the printed pair of gravities would make a cubic foot at 12 % heavier than one at 30 %. */
function gravitiesApart({ name }: Species): Cell[][] {
  const at = (moisturePercent: number) => woodWeightLbPerFt3({ species: name, moisturePercent });
  if (at(12) <= at(FIBER_SATURATION_PCT)) return [];
  return [["note", "The two specific gravities lie so far apart that one of them is in doubt", "", ""]];
}

function weightAtMoisture(which: "heartwoodMoisturePercent" | "sapwoodMoisturePercent") {
  return (species: Species) => {
    const moisturePercent = species[which];
    return moisturePercent === undefined ? undefined : woodWeightLbPerFt3({ species: species.name, moisturePercent });
  };
}

function shrinkageSource({ shrinkageTable }: Species): string {
  return shrinkageTable ? SHRINKAGE_TABLES[shrinkageTable] : "Wood Handbook Tables 4-3 and 13-5";
}

function weightSource({ records }: Species): string {
  return records ? WORLD_TABLE : WEIGHT_TABLE;
}

function moistureSource({ genusMoisturePercent: genus }: Species): string {
  return genus ? `as its genus, ${short(genus.least)} to ${short(genus.most)} %, ${WEIGHT_TABLE}` : WEIGHT_TABLE;
}
