/** What boards may be sold as. */
export const NOT_GRADED =
  "nothing here is graded for structural use. A joist, post, stair or guard needs what the local code asks for.";

/** What a reckoning between partners leaves to others. */
export const PARTNERS_AGREE = "the partners' own agreement decides, and taxes are a matter for an accountant.";
