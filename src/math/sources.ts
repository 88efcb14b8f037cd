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
  "Khurmi & Gupta": { document: "Khurmi and Gupta, Theory of Machines" },
  Hawkins: { document: "Hawkins Electrical Guide, volume 8, belt rules, pp 119-120 of the web edition" },
  Shigley: {
    document: "Budynas and Nisbett, Shigley's Mechanical Engineering Design, solutions of chapter 17",
    seenIn: "a copy",
  },
  "Mott 4e": { document: "Mott, Machine Elements in Mechanical Design, 4th edition" },
  Bhandari: { document: "Bhandari, Design of Machine Elements", seenIn: "a companion's worked results" },
  Singer: { document: "Singer and Pytel, Strength of Materials", seenIn: "a copy" },
  Philpot: { document: "Philpot, Mechanics of Materials", seenIn: "a copy" },
  "Fine Woodworking 2001": { document: "Fine Woodworking, February 2001, on band saw tension", seenIn: "a quotation" },
  "Machinery's Handbook 31": { document: "Machinery's Handbook, 31st edition" },
  "Sawing trade note": { document: "Trade note of a sharpening firm on gullet area and filling", seenIn: "a web page" },
  "Foundry handbook": { document: "Foundry handbook, part 42, torque table", seenIn: "a copy" },
  "AISC Manual": { document: "AISC Steel Construction Manual, tables 1-11 and 1-12", seenIn: "a transcription" },
  "Oregon lecture 40": { document: "Luebkeman and Peting, University of Oregon, lecture 40, Example 40-1" },
  "49 CFR 393.106": {
    document: "49 CFR 393.106, general requirements for securing articles of cargo",
    seenIn: "a reprint",
  },
  "49 CFR 393.110": { document: "49 CFR 393.110, minimum number of tiedowns", seenIn: "a reprint" },
  "ASME B30.9": { document: "ASME B30.9, Slings, table of angle factors", seenIn: "a copy" },
  "NIST SP 811": { document: "NIST Special Publication 811, Guide for the Use of the SI, appendix B" },
  "Handbook 130": {
    document:
      "NIST Handbook 130, Uniform Regulation for the Method of Sale of Commodities, section 2.12 Hardwood Lumber - Retail Sales",
    seenIn: "a copy whose text ends after 2.12.1.4",
  },
  "AHEC measurement": { document: "American Hardwood Export Council, Grading sawn lumber: measurement" },
  "King Elements of Woodwork": {
    document: "C. A. King, Elements of Woodwork, section on measuring boards",
    seenIn: "a copy",
  },
  "Household Discoveries": {
    document: "Household Discoveries, section Lumber and Board Measure",
    seenIn: "a copy",
  },
  "Hardwood terminology": {
    document: "Hardwood terminology, a lumber dealer's page (goodwoodcorp.com)",
    seenIn: "the page, which quotes no authority",
  },
  "NHLA kiln-dried rules": {
    document: "NHLA news of 28 February 2025, Kiln dried rules and shrinkage allowances, quoting the rule book of 2023",
    seenIn: "a quotation",
  },
  "Surfaced hardwood tables": {
    document: "Surfaced thicknesses (S1S, S2S) of hardwood lumber, two trade tables that agree",
    seenIn: "copies",
  },
  "PS 20": {
    document: "American Softwood Lumber Standard, Voluntary Product Standard PS 20",
    seenIn: "copies of its sizes",
  },
  "FDMC Shortages": { document: "FDMC magazine, wood doctor column, Shortages of lumber shipments" },
  "Wengert 2001": { document: "E. Wengert 2001, Value-Added Processing" },
  "Atherholt 2001": { document: "K. Atherholt 2001, Net measure vs gross measure" },
  "EM 8731": {
    document: "T. D. Brown, Lumber Size Control, Part 2, Oregon State University Extension EM 8731 (June 2000)",
    seenIn: "a copy",
  },
  "PNW-300": {
    document: "W. Y. Pong 1982, USDA Forest Service Research Paper PNW-300, lumber recovery of red and white fir",
    seenIn: "a copy of its abstract",
  },
};
