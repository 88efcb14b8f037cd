/** A document of the bibliography. `seenIn` says so when a copy or a companion was read, not the document itself. */
export interface Source {
  document: string;
  seenIn?: string;
}

/**
 * The bibliography: each document once, under the short name that `@source` lines begin with.
 * Besides these, a source may be "plain geometry", "plain arithmetic", "common practice, no source" or "from memory".
 */
export const SOURCES: Readonly<Record<string, Source>> = {
  "Louisiana RS 3:4641": { document: "Louisiana Revised Statutes 3:4641, standard log rule (Doyle)" },
  "FIADB REF_SPECIES": {
    document:
      "USDA Forest Service, Forest Inventory and Analysis Database, table REF_SPECIES (values of Miles and Smith 2009, Research Note NRS-38)",
    seenIn: "a copy",
  },
  "FPL-GTR-190": {
    document: "USDA Forest Products Laboratory, Wood Handbook, General Technical Report FPL-GTR-190 (2010)",
    seenIn: "a copy",
  },
  "FPL-GTR-282": {
    document: "USDA Forest Products Laboratory, Wood Handbook, General Technical Report FPL-GTR-282 (2021)",
    seenIn: "a copy",
  },
  "FPL-190": {
    document: "Simpson 1973, Predicting equilibrium moisture content of wood by mathematical models (FPL-190)",
    seenIn: "a copy",
  },
  GWDD: {
    document: "Zanne et al. 2009, Global Wood Density Database (Dryad)",
    seenIn: "a copy",
  },
  "NPS log weights": {
    document: "US National Park Service, table of green log weights by species and diameter",
    seenIn: "a copy",
  },
};
