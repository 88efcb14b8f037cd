/** What a cell of the file holds; an error is its text. */
export type Held = number | string | boolean | null;
