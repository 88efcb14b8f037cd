import type { CutRequest } from "../../../../src/math/sawing/cut-plan/cut-request";

/**
 * Eight cut plans worked by a separate calculation from the same definitions. Blade heights and board feet run down
 * the log; totals are exact to 1e-6. Sizes in inches, lengths in feet. They are no published yields.
 */
export interface WorkedPlan {
  name: string;
  request: CutRequest;
  total: number;
  boardFeet: number;
  logBoardFeet: number;
  mostBoardFeet: number;
  blades?: number[];
  /** Left out where a plan of fewer passes has the same total. */
  feet?: number[];
}

const FOUR_QUARTERS = [{ thickness: 1, "green size": 1.125 }];

export const WORKED_PLANS: readonly WorkedPlan[] = [
  {
    name: "live, 16 in, 100 in long with 4 in of trim",
    request: { diameterIn: 16, lengthFt: 100 / 12, kerfIn: 0.125, products: FOUR_QUARTERS, settings: { trim: 4 } },
    total: 95.5,
    boardFeet: 95.5,
    logBoardFeet: 148.914,
    mostBoardFeet: 120.278,
    blades: [14.75, 13.5, 12.25, 11, 9.75, 8.5, 7.25, 6, 4.75, 3.5, 2.25, 1],
    feet: [3.5, 6.667, 8, 9.333, 10, 10, 10, 10, 9.333, 8, 6.667, 4],
  },
  {
    name: "live for value, two thicknesses with price tables, each pass costing 1.50",
    request: {
      diameterIn: 20.5,
      lengthFt: 122 / 12,
      kerfIn: 0.125,
      products: [
        { thickness: 1, "green size": 1.125, price: 3 },
        { thickness: 1, "green size": 1.125, price: 4.25, "from width": 8 },
        { thickness: 2, "green size": 2.1875, price: 3.5 },
        { thickness: 2, "green size": 2.1875, price: 5.5, "from width": 10 },
      ],
      settings: { trim: 2, objective: "value", "pass cost": 1.5 },
    },
    total: 1113.0416666667,
    boardFeet: 209,
    logBoardFeet: 297.331,
    mostBoardFeet: 259.087,
    blades: [19.0625, 16.75, 14.4375, 12.125, 9.8125, 7.5, 5.1875, 2.875, 1.625, 0.375],
    feet: [6.667, 20, 26.667, 31.667, 33.333, 31.667, 28.333, 21.667, 7.5, 1.5],
  },
  {
    name: "live-edge slabs, 32 in, between guides that open 30 in",
    request: {
      diameterIn: 32,
      lengthFt: 10,
      kerfIn: 0.125,
      pattern: "slab",
      products: [
        { thickness: 2, "green size": 2.1875 },
        { thickness: 3, "green size": 3.25 },
      ],
      settings: { "guide opening": 30, "width step": 0.25, "minimum width": 8 },
    },
    total: 543.75,
    boardFeet: 543.75,
    logBoardFeet: 696.727,
    mostBoardFeet: 622.334,
    blades: [29.625, 27.3125, 25, 21.625, 18.25, 14.875, 11.5, 8.125, 5.8125, 3.5, 1.1875],
    feet: [17.5, 32.083, 40.417, 69.375, 75, 75, 75, 69.375, 40.417, 32.083, 17.5],
  },
  {
    name: "cant of 6 or 8 in, in the middle",
    request: {
      diameterIn: 12.5,
      lengthFt: 10,
      kerfIn: 0.125,
      pattern: "cant",
      products: FOUR_QUARTERS,
      settings: { "cant widths": [6, 8] },
    },
    total: 68.1666666667,
    boardFeet: 68.1666666667,
    logBoardFeet: 112.833,
    mostBoardFeet: 91.36,
    feet: [4.5, 7.5, 4.5, 7.5, 5, 5, 5, 5, 5, 5, 5, 5, 4.167],
  },
  {
    name: "quarters, 22 in, on a scale of 1/16 in",
    request: {
      diameterIn: 22,
      lengthFt: 8,
      kerfIn: 0.125,
      pattern: "quarter",
      products: FOUR_QUARTERS,
      settings: { "scale step": 1 / 16 },
    },
    total: 155,
    boardFeet: 155,
    logBoardFeet: 265.116,
    mostBoardFeet: 213.592,
    feet: [6, 6, 5.333, 5.333, 4, 4, 2.667, 2.667, 1.5, 1.25],
  },
  {
    name: "live, bowed log with its crown up",
    request: {
      diameterIn: 13,
      lengthFt: 8,
      kerfIn: 0.125,
      products: FOUR_QUARTERS,
      settings: { sweep: 1, crown: "up" },
    },
    total: 59.4166666667,
    boardFeet: 59.4166666667,
    logBoardFeet: 95.47,
    mostBoardFeet: 77.276,
    feet: [1.333, 4.083, 6, 7.333, 8, 8, 8, 7.333, 6, 3.333],
  },
  {
    name: "cant of 6 or 8 in, anywhere about the pith",
    request: {
      diameterIn: 13.3,
      lengthFt: 10,
      kerfIn: 0.125,
      pattern: "cant",
      products: FOUR_QUARTERS,
      settings: { "cant widths": [6, 8], "cant offset": "free" },
    },
    total: 80,
    boardFeet: 80,
    logBoardFeet: 126.996,
    mostBoardFeet: 102.757,
  },
  {
    name: "live, lying flat on the bed, strong taper, a quarter of the thickness wane",
    request: {
      diameterIn: 18.5,
      lengthFt: 12,
      kerfIn: 0.1875,
      products: FOUR_QUARTERS,
      settings: { taper: 1, "log lies": "flat", wane: 0.25 },
    },
    total: 198.6666666667,
    boardFeet: 198.6666666667,
    logBoardFeet: 314.748,
    mostBoardFeet: 242.665,
    blades: [
      18.625, 17.3125, 16, 14.6875, 13.375, 12.0625, 10.75, 9.4375, 8.125, 6.8125, 5.5, 4.1875, 2.875, 1.5625, 0.25,
    ],
    feet: [2.667, 6, 10, 13, 15, 16, 17, 18, 18, 18, 17, 16, 14, 11, 7],
  },
];
