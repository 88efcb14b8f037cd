/** The word in front of every worksheet function: `BOLE.EMC`. */
export const ADD_IN = "BOLE";
