/** What boards may be sold as. */
export const NOT_GRADED =
  "nothing here is graded for structural use. A joist, post, stair or guard needs what the local code asks for.";
