/** What the page and its server call the pieces that they send each other. */
export const WORKBOOK_FIELD = "workbook";
export const CHANGES_FIELD = "changes";
/** What was done, in words, beside the bytes of a copy. */
export const SAID_HEADER = "X-Said";
