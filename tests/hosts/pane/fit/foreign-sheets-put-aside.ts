import type { ForeignSheet } from "./foreign-sheets";

/*
 * More invented sheets, written down in one go after the words of the trade were, to see how many fit that nothing was
 * tuned on.
 */
export const PUT_ASIDE: readonly ForeignSheet[] = [
  {
    about: "a shop's stock list with a date",
    cells: [
      ["Stock list, slab shed", "", "", "", "", ""],
      ["Item", "Arrived", "Wood species", "Thickness (inches)", "Avg. width (inches)", "Length (feet)"],
      ["slab 1", 46010, "black walnut", 2.25, 21, 9],
      ["slab 2", 46011, "American elm", 3, 26, 8],
    ],
    chosen: "D3",
    fits: { BOARDFEET: "=BOLE.BOARDFEET(D3, E3, F3)", SURFACEMEASURE: "=BOLE.SURFACEMEASURE(E3, F3)" },
    rows: "3-4",
  },
  {
    about: "a tree crew's list in metric",
    cells: [
      ["Piece", "Species", "Butt diam (cm)", "Top diam (cm)", "Len (m)", "Moisture"],
      ["1", "silver maple", 61, 55, 2.6, 90],
      ["2", "honeylocust", 48, 44, 3.2, 70],
    ],
    chosen: "A2",
    fits: {
      LOGWEIGHT: '=BOLE.LOGWEIGHT(B2, D2&" cm", C2&" cm", E2&" m", F2)',
      SMALIAN: '=BOLE.SMALIAN(D2&" cm", C2&" cm", E2&" m")',
      LOGSCALE: '=BOLE.LOGSCALE(D2&" cm", E2&" m")',
    },
    rows: "2-3",
  },
  {
    about: "a bid sheet with prices",
    cells: [
      ["Lot", "Est. board ft", "$ per bd ft", "All costs", "Margin wanted"],
      ["A", 310, 4.5, 420, "25%"],
      ["B", 150, 6, 260, "30%"],
    ],
    chosen: "C3",
    fits: { LOGBID: "=BOLE.LOGBID(B2, C2, D2, E2)" },
    rows: "2-3",
  },
  {
    about: "the kiln book",
    cells: [
      ["Kiln book", "", "", ""],
      ["Charge 14", "", "", ""],
      ["Date", "Dry bulb F", "Rel. humidity", "By"],
      [46020, 110, 78, "R"],
      [46021, 112, 74, "R"],
      [46022, 118, 66, "T"],
    ],
    chosen: "B5",
    fits: { EMC: "=BOLE.EMC(B4, C4)" },
    rows: "4-6",
  },
  {
    about: "haul log with kilometres nobody reads",
    cells: [
      ["Trip", "Miles", "Cost/mile", "Hours", "Rate/hr", "BF hauled"],
      [1, 42, 1.2, 2.5, 30, 800],
      [2, 18, 1.2, 1.5, 30, 450],
      ["TOTALS", "=SUM(B2:B3)->60", "", "=SUM(D2:D3)->4", "", "=SUM(F2:F3)->1250"],
    ],
    chosen: "B2",
    fits: { HAULCOST: "=BOLE.HAULCOST(B2, C2, D2, E2, F2)" },
    rows: "2-3",
  },
  {
    about: "pulleys and motors of the mill",
    cells: [
      ["Machine", "Motor RPM", "Driver pulley", "Driven pulley"],
      ["edger", 1750, 4, 10],
      ["blower", 3450, 3.5, 6],
    ],
    chosen: "C2",
    fits: { PULLEYRPM: "=BOLE.PULLEYRPM(B2, C2, D2)" },
    rows: "2-3",
  },
  {
    about: "stickered stacks",
    cells: [
      ["Stack no", "Courses", "Board thk", "Sticker thk", "Bunk height"],
      [1, 14, 1.125, 0.75, 8],
      [2, 10, 2.25, 0.75, 8],
    ],
    chosen: "B3",
    fits: { STACKHEIGHT: "=BOLE.STACKHEIGHT(B2, C2, D2, E2)" },
    rows: "2-3",
  },
  {
    about: "round tables cut as cookies",
    cells: [
      ["Cookie", "Dia 1", "Dia 2", "Thick"],
      ["c1", 30, 34, 3],
      ["c2", 28, 29, 2.5],
    ],
    chosen: "D2",
    fits: { ROUNDFEET: "=BOLE.ROUNDFEET(B2, C2, D2)" },
    rows: "2-3",
  },
  {
    about: "price list with cost and margin",
    cells: [
      ["Wood", "", "Our cost", "Gross margin %", "Sells at"],
      ["red oak 4/4", "", 2.1, 35, ""],
      ["walnut 8/4", "", 5.2, 40, ""],
    ],
    chosen: "C3",
    fits: { LISTPRICE: "=BOLE.LISTPRICE(C2, D2)" },
    rows: "2-3",
  },
  {
    about: "two heading lines with the unit above the word",
    cells: [
      ["", "(in)", "(in)", "(ft)", ""],
      ["ID", "Diam small", "Diam large", "Log len.", "Tree"],
      ["q1", 14, 16, 8, "red oak"],
      ["q2", 19, 22, 10, "white ash"],
    ],
    chosen: "E4",
    fits: { LOGWEIGHT: "=BOLE.LOGWEIGHT(E3, B3, C3, D3)", LOGSCALE: "=BOLE.LOGSCALE(B3, D3)" },
    rows: "3-4",
  },
];
