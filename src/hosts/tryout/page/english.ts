import { mergeLocales } from "@univerjs/core";
import english from "@univerjs/preset-sheets-core/locales/en-US";

/** The grid's own words, and those for a calculation of more than a second, which its package leaves out. */
export const ENGLISH = mergeLocales(english, {
  "sheets-formula": {
    progress: {
      analyzing: "Reading the formulas",
      calculating: "Calculating",
      "array-analysis": "Reading the formulas",
      "array-calculation": "Calculating",
      done: "Calculated",
    },
  },
});
