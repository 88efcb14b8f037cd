/*
 * Sheets as people keep them, each with headings of another style. All are invented for this test: no figure, name or
 * heading is anybody's. "" is an empty cell; what begins with = is a formula, shown with its value behind ->.
 */

export interface ForeignSheet {
  about: string;
  /** Rows from A1 on, or from the address given. */
  cells: readonly (readonly (string | number | boolean)[])[];
  from?: string;
  chosen: string;
  /** The formula of the first row that each function should get without a correction. */
  fits: Readonly<Record<string, string>>;
  /** The rows that are filled in, as a person counts them. */
  rows: string;
}

const PLAIN: readonly ForeignSheet[] = [
  {
    about: "short words",
    cells: [
      ["Tag", "Spp", "Dia", "Len"],
      ["A1", "red oak", 18, 12],
      ["A2", "black walnut", 22.5, 10],
      ["A3", "white oak", 16, 8],
    ],
    chosen: "B3",
    fits: { LOGSCALE: "=BOLE.LOGSCALE(C2, D2)" },
    rows: "2-4",
  },
  {
    about: "units in the headings",
    cells: [
      ["No", "Sm end", "Lg end", "Len ft", "Spp"],
      [1, 18, 22, 10, "sycamore"],
      [2, 20, 25, 12, "red oak"],
      [3, 14, 17, 8, "red oak"],
    ],
    chosen: "D2",
    fits: {
      LOGSCALE: "=BOLE.LOGSCALE(B2, D2)",
      LOGWEIGHT: "=BOLE.LOGWEIGHT(E2, B2, C2, D2)",
      SMALIAN: "=BOLE.SMALIAN(B2, C2, D2)",
    },
    rows: "2-4",
  },
  {
    about: "centimeters and meters in brackets",
    cells: [
      ["Log", "Kind", "Dia (cm)", "Length (m)"],
      ["L1", "London plane", 52, 2.4],
      ["L2", "honeylocust", 47, 3.1],
      ["L3", "red oak", 61.5, 2.9],
    ],
    chosen: "C4",
    fits: { LOGSCALE: '=BOLE.LOGSCALE(C2&" cm", D2&" m")', JAS: '=BOLE.JAS(C2&" cm", D2&" m")' },
    rows: "2-4",
  },
  {
    about: "a merged title and a line about the sawyer above the headings",
    cells: [
      ["Logs of the spring", "", "", ""],
      ["Sawyer:", "Tom", "Date:", 46100],
      ["", "", "", ""],
      ["Log #", "DIB", "Lgth", "Species"],
      [101, 15, 10, "silver maple"],
      [102, 19, 8, "silver maple"],
    ],
    chosen: "B6",
    fits: { LOGSCALE: "=BOLE.LOGSCALE(B5, C5)" },
    rows: "5-6",
  },
  {
    about: "headings in two lines",
    cells: [
      ["", "Small", "Large", "Log", ""],
      ["No.", "end", "end", "length", "Species"],
      [1, 20, 24, 12, "red oak"],
      [2, 21, 26, 10, "white oak"],
    ],
    chosen: "C3",
    fits: { LOGWEIGHT: "=BOLE.LOGWEIGHT(E3, B3, C3, D3)", LOGSCALE: "=BOLE.LOGSCALE(B3, D3)" },
    rows: "3-4",
  },
  {
    about: "one heading over two columns, the unit in a line of its own",
    cells: [
      ["Yard on the river", "", "", "", ""],
      ["Log", "Diameter", "", "Length", "Wood"],
      ["", "small", "large", "", ""],
      ["", "in", "in", "ft", ""],
      ["a", 17, 20, 9, "sycamore"],
      ["b", 16, 21, 11, "red oak"],
    ],
    chosen: "A6",
    fits: { LOGWEIGHT: "=BOLE.LOGWEIGHT(E5, B5, C5, D5)" },
    rows: "5-6",
  },
  {
    about: "blank rows between the days and a total at the foot",
    cells: [
      ["Day", "Top dia", "Length'", "Kind of wood", "Paid"],
      ["Mon", 16, 8, "red oak", 40],
      ["Mon", 18, 10, "red oak", 55],
      ["", "", "", "", ""],
      ["Tue", 24, 12, "white oak", 120],
      ["", "", "", "", ""],
      ["Total", "", "", "", 215],
    ],
    chosen: "B5",
    fits: { LOGSCALE: "=BOLE.LOGSCALE(B2, C2)" },
    rows: "2-3, 5",
  },
  {
    about: "a sum in bold without a name",
    cells: [
      ["Board", "T", "W", "L", "Pcs"],
      ["a", 1, 8, 10, 4],
      ["b", 2, 6, 8, 10],
      ["c", "5/4", 9, 12, 3],
      ["", "", "", "", 17],
    ],
    chosen: "C3",
    fits: { BOARDFEET: "=BOLE.BOARDFEET(B2, C2, D2, E2)" },
    rows: "2-4",
  },
  {
    about: "two tables side by side, the left one",
    cells: [
      ["Logs", "", "", "", "Boards", "", ""],
      ["Dia", "Length", "Species", "", "Thickness", "Width", "Length"],
      [18, 10, "red oak", "", 1, 8, 10],
      [20, 12, "red oak", "", 2, 6, 12],
      [22, 8, "white oak", "", 1.5, 7, 8],
    ],
    chosen: "A4",
    fits: { LOGSCALE: "=BOLE.LOGSCALE(A3, B3)" },
    rows: "3-5",
  },
  {
    about: "two tables side by side, the right one",
    cells: [
      ["Logs", "", "", "", "Boards", "", ""],
      ["Dia", "Length", "Species", "", "Thickness", "Width", "Length"],
      [18, 10, "red oak", "", 1, 8, 10],
      [20, 12, "red oak", "", 2, 6, 12],
      [22, 8, "white oak", "", 1.5, 7, 8],
    ],
    chosen: "F5",
    fits: { BOARDFEET: "=BOLE.BOARDFEET(E3, F3, G3)" },
    rows: "3-5",
  },
  {
    about: "capitals and points, not in the first cell of the sheet",
    from: "C5",
    cells: [
      ["SPECIES", "DIA. S.E.", "DIA. L.E.", "LGTH."],
      ["RED OAK", 15, 18, 10],
      ["WHITE OAK", 19, 23, 12],
    ],
    chosen: "E6",
    fits: { LOGWEIGHT: "=BOLE.LOGWEIGHT(C6, D6, E6, F6)" },
    rows: "6-7",
  },
  {
    about: "words written together, as programs hand them out",
    cells: [
      ["log_id", "SmallEnd_in", "LargeEnd_in", "LogLength_ft", "species_name"],
      ["X-1", 18, 21, 10, "black cherry"],
      ["X-2", 16, 19, 12, "black cherry"],
    ],
    chosen: "A2",
    fits: { LOGWEIGHT: "=BOLE.LOGWEIGHT(E2, B2, C2, D2)", CONEVOLUME: "=BOLE.CONEVOLUME(B2, C2, D2)" },
    rows: "2-3",
  },
];

const HARDER: readonly ForeignSheet[] = [
  {
    about: "sizes typed as text, feet and inches",
    cells: [
      ["Mark", "Butt dia.", "Top dia.", "Length (ft-in)"],
      ["K1", "24 1/2", "20", "8-6"],
      ["K2", "22", "17 3/4", "10'6\""],
    ],
    chosen: "D3",
    fits: { SMALIAN: "=BOLE.SMALIAN(C2, B2, D2)", LOGSCALE: "=BOLE.LOGSCALE(C2, D2)" },
    rows: "2-3",
  },
  {
    about: "millimeters, with blanks in a column",
    cells: [
      ["Piece", "Thick, mm", "Width, mm", "Len, mm", "Qty"],
      ["p", 27, 150, 2400, 6],
      ["q", 52, "", 3000, 2],
      ["r", 34, 120, 1800, 9],
    ],
    chosen: "B2",
    fits: { BOARDFEET: '=BOLE.BOARDFEET(B2&" mm", IF(C2="","",C2&" mm"), D2&" mm", E2)' },
    rows: "2-4",
  },
  {
    about: "moisture samples weighed in grams",
    cells: [
      ["Sample boards", "", ""],
      ["Sample", "Wet wt (g)", "Oven dry (g)"],
      ["S1", 850, 610],
      ["S2", 905, 655],
    ],
    chosen: "B4",
    fits: { MOISTURE: '=BOLE.MOISTURE(B3&" g", C3&" g")' },
    rows: "3-4",
  },
  {
    about: "drying, with percent in the headings",
    cells: [
      ["Stack", "Wood", "Size in", "Start MC %", "End MC %"],
      ["1", "red oak", 6, 80, 8],
      ["2", "white oak", 8, 75, 9],
    ],
    chosen: "C2",
    fits: { DRIEDSIZE: "=BOLE.DRIEDSIZE(B2, C2, D2, E2)", SHRINKAGE: "=BOLE.SHRINKAGE(B2, D2, E2)" },
    rows: "2-3",
  },
  {
    about: "weather in degrees Celsius",
    cells: [
      ["Week", "Temp °C", "RH"],
      [1, 12, 65],
      [2, 15, 70],
      [3, 18, 62],
    ],
    chosen: "A3",
    fits: { EMC: '=BOLE.EMC(B2&" C", C2)' },
    rows: "2-4",
  },
  {
    about: "an invoice with sums below, by formula",
    cells: [
      ["Item", "Qty", "Price each", "Note"],
      ["sawing", 420, 0.55, ""],
      ["slabs", 3, 40, "paid"],
      ["", "=SUM(B2:B3)->423", "", ""],
    ],
    chosen: "B2",
    fits: { LINEAMOUNT: "=BOLE.LINEAMOUNT(B2, C2)" },
    rows: "2-3",
  },
  {
    about: "the lumber that came out, beside the scale",
    cells: [
      ["Log", "Scale BF", "Sawn BF", "Over/under"],
      [1, 120, 141, ""],
      [2, 88, 96, ""],
      [3, 205, 212, ""],
    ],
    chosen: "C3",
    fits: { OVERRUN: "=BOLE.OVERRUN(C2, B2)" },
    rows: "2-4",
  },
  {
    about: "no heading says species, the cells do",
    cells: [
      ["Came from", "What", "Board feet", "MC"],
      ["park", "American elm", 210, 60],
      ["street", "silver maple", 90, 55],
      ["yard", "red oak", 330, 70],
    ],
    chosen: "D4",
    fits: { LUMBERWEIGHT: "=BOLE.LUMBERWEIGHT(B2, C2, D2)" },
    rows: "2-4",
  },
  {
    about: "a note below and a second table further down",
    cells: [
      ["Girth (in)", "Bark", "Length, feet"],
      [60, 0.5, 10],
      [72, 0.75, 12],
      ["measured with the new tape", "", ""],
      ["", "", ""],
      ["Boards", "", ""],
      ["Thk", "Wd", "Lth"],
      [1, 8, 10],
      [2, 10, 12],
    ],
    chosen: "A3",
    fits: { HOPPUS: "=BOLE.HOPPUS(A2, C2)", GIRTHDIAMETER: "=BOLE.GIRTHDIAMETER(A2, B2)" },
    rows: "2-3",
  },
  {
    about: "the table below another",
    cells: [
      ["Girth (in)", "Bark", "Length, feet"],
      [60, 0.5, 10],
      [72, 0.75, 12],
      ["", "", ""],
      ["Boards", "", ""],
      ["Thk", "Wd", "Lth"],
      [1, 8, 10],
      [2, 10, 12],
    ],
    chosen: "C8",
    fits: { BOARDFEET: "=BOLE.BOARDFEET(A7, B7, C7)" },
    rows: "7-8",
  },
  {
    about: "kilograms and tonnes of logs, ready to be strapped",
    cells: [
      ["Bundle", "Weight, kg", "Length ft", "WLL lb"],
      ["east", 850, 12, 3300],
      ["west", 1220, 10, 3300],
    ],
    chosen: "B2",
    fits: { TIEDOWNS: '=BOLE.TIEDOWNS(B2&" kg", C2, D2)' },
    rows: "2-3",
  },
  {
    about: "an average line, and headings with a line break in the cell",
    cells: [
      ["Slice", "Diameter\nnorth", "Diameter\neast", "Thick-\nness (in)"],
      ["1", 24, 26, 3],
      ["2", 22, 23, 2.5],
      ["Average", 23, 24.5, 2.75],
    ],
    chosen: "B3",
    fits: { ROUNDFEET: "=BOLE.ROUNDFEET(B2, C2, D2)" },
    rows: "2-3",
  },
];

export const FOREIGN_SHEETS: readonly ForeignSheet[] = [...PLAIN, ...HARDER];
