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
  "FAO T0269E": {
    document:
      "Food and Agriculture Organization of the United Nations, document T0269E, Appendix II: units of measure and conversion factors",
  },
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
  "Bousquet lumber drying": {
    document: "D. Bousquet, Lumber Drying, University of Vermont Extension",
    seenIn: "a copy",
  },
  "Sample boards": { document: "E. Wengert, Drying hardwood lumber, Step 3B: sample boards", seenIn: "a web page" },
  "Wood drying article": {
    document:
      "Encyclopedia article Wood drying, on the time constant of red oak boards (after Simpson and Tschernitz 1979)",
    seenIn: "a quotation",
  },
  "Wengert meter temperature": {
    document: "E. Wengert 2009, Moisture meters: correcting for temperature",
    seenIn: "a web page",
  },
  "AHEC grades": {
    document: "AHEC technical guide, Summary of US hardwood lumber grades (2004)",
    seenIn: "a copy, with two lumber dealers' summaries",
  },
  Antoine: { document: "Antoine equation, constants for water from 1 to 100 degC", seenIn: "a web page" },
  "Espenas & Kozlik 1975": {
    document:
      "Espenas and Kozlik 1975, Drying Oregon White Oak Lumber, Oregon State University, Research Paper 27, abstract",
    seenIn: "a copy",
  },
  "FPL Report 2086": {
    document:
      "Peck 1957, air drying of lumber, USDA Forest Products Laboratory, Report 2086 (reaffirmed 1963), summary",
    seenIn: "a copy",
  },
  "Technical Note 233": {
    document: "USDA Forest Products Laboratory, Technical Note 233 (1960), text before its table",
    seenIn: "a copy",
  },
  "FPL-RP-607": {
    document: "Simpson, Wang and Verrill 2003, heat sterilization times, FPL-RP-607, abstract",
    seenIn: "an abstract",
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
  Singer: { document: "Singer, Strength of Materials", seenIn: "a copy" },
  Philpot: { document: "Philpot, Mechanics of Materials", seenIn: "a copy" },
  "Fine Woodworking 2001": { document: "Fine Woodworking, February 2001, on band saw tension", seenIn: "a quotation" },
  "Machinery's Handbook 31": { document: "Machinery's Handbook, 31st edition" },
  "Foundry handbook": { document: "Foundry handbook, part 42, torque table", seenIn: "a copy" },
  "AISC Manual": { document: "AISC Steel Construction Manual, tables 1-11 and 1-12", seenIn: "a transcription" },
  "Oregon lecture 40": { document: "Luebkeman and Peting, University of Oregon, lecture 40, Example 40-1" },
  "49 CFR 393.106": {
    document: "49 CFR 393.106, general requirements for securing articles of cargo",
    seenIn: "a reprint",
  },
  "49 CFR 393.108": {
    document: "49 CFR 393.108, working load limits of tiedowns, tables for gear without a mark",
    seenIn: "two reprints",
  },
  "49 CFR 393.110": { document: "49 CFR 393.110, minimum number of tiedowns", seenIn: "a reprint" },
  "ASME B30.9": { document: "ASME B30.9, Slings, table of angle factors", seenIn: "a copy" },
  "NIST SP 811": {
    document: "NIST Special Publication 811, Guide for the Use of the SI, appendix B",
    seenIn: "a copy of its factors",
  },
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
  "Michigan MCL 290.401": {
    document: "Michigan Compiled Laws 290.401 (Act 208 of 1941), standard log rule",
    seenIn: "a copy",
  },
  "Massachusetts GL c.96 s.11A": { document: "Massachusetts General Laws, chapter 96, section 11A, standard log rule" },
  "9 VSA 2693": { document: "Vermont Statutes, title 9, section 2693, log rules", seenIn: "a copy" },
  "Georgia OCGA 2-14-80": {
    document: "Official Code of Georgia 2-14-80, legal log rule (Scribner Decimal C)",
    seenIn: "a copy",
  },
  Larsen: { document: "D. R. Larsen, University of Missouri, formulas of the log rules", seenIn: "a copy" },
  "Wengert log volume": {
    document: "E. Wengert, Log Volume: International 1/4-inch and Scribner log volume, 4 May 2001 (woodweb.com)",
    seenIn: "a copy",
  },
  "Wengert log scale": {
    document: "E. Wengert, Log scale and overrun (woodweb.com); Logs (goodwoodcorp.com)",
    seenIn: "a copy",
  },
  "Chase 1913": {
    document: "E. A. Chase, Timber Cruising Manual and Record, American Lumberman, Chicago 1913",
    seenIn: "a copy",
  },
  "Bailey 1911": {
    document: "L. H. Bailey, Farm and Garden Rule-Book, 1911, Forest Service log-scaling directions",
    seenIn: "a copy",
  },
  "Doyle table": {
    document: "Doyle Log Scale in Board Feet, a hardwood lumber company's printed table (tinytimbers.com)",
    seenIn: "a copy",
  },
  "Idaho school forestry contest": {
    document: "Minidoka schools, Idaho forestry contest rules, log scaling",
    seenIn: "a copy",
  },
  "Montana FOR 274": { document: "University of Montana, FOR 274 lecture on log scaling", seenIn: "a copy" },
  "USFS R-10 supplement 2004": {
    document: "USDA Forest Service, Alaska Region, scaling supplement, 2004",
    seenIn: "a copy",
  },
  metaglossary: { document: "metaglossary.com, glossary entry Doyle-Scribner rule", seenIn: "a copy" },
  "USFS Bulletin 36": {
    document: "H. S. Graves, The Woodsman's Handbook, USDA Bureau of Forestry Bulletin 36",
    seenIn: "a copy (an excerpt)",
  },
  "Freese 1973": {
    document:
      "F. Freese, A Collection of Log Rules, USDA Forest Products Laboratory, General Technical Report FPL-1 (1973)",
    seenIn: "a copy (a summary)",
  },
  "Adirondack Almanack": { document: "Adirondack Almanack, article on log marks and the market log", seenIn: "a copy" },
  "FSH 2409.11": {
    document: "USDA Forest Service, National Forest Log Scaling Handbook, FSH 2409.11",
    seenIn: "a copy (chapter 20, its opening; contents of the appendix)",
  },
  "Briggs 1994": {
    document: "D. Briggs, Forest Products Measurements and Conversion Factors, University of Washington 1994",
    seenIn: "a copy",
  },
  "woodland-management.co.uk": { document: "woodland-management.co.uk, The hoppus foot", seenIn: "a copy" },
  "hstimber.com": {
    document: "hstimber.com, a timber importer on the Japanese customs' Brereton method",
    seenIn: "a copy",
  },
  "JAS for logs": {
    document: "Japanese agricultural standard for logs, volume formula",
    seenIn: "copies by timber traders (gilltimbers.com, suncharmgroup.com, meimokuso.co.jp)",
  },
  "MAFF notice 1841": {
    document: "Japan, MAFF notice 1841 of 1967 (amended 2007), standard for logs",
    seenIn: "a copy (as far as the size classes)",
  },
  "GOST 2708-75": {
    document: "GOST 2708-75, Round timber. Tables of volumes",
    seenIn: "three reprints by timber and building firms",
  },
  "RVR solid content": {
    document: "RVR, framework agreement for the raw timber trade in Germany, solid content of stacks",
    seenIn: "a copy (Bavarian forest owners' sheet)",
  },
  "Black Hills lumber recovery": {
    document: "USDA Forest Service, Black Hills ponderosa pine lumber recovery study",
    seenIn: "a copy",
  },
  "Fahey and Martin 1975": {
    document: "Fahey and Martin, USDA Forest Service Research Note PNW-177, 1975",
    seenIn: "an abstract",
  },
  "NIST Handbook 130, 2.4.1": {
    document: "NIST Handbook 130, Uniform Laws and Regulations, 2.4.1 fireplace and stove wood",
    seenIn: "a copy",
  },
};
