import fc from "fast-check";

/** A cell as the most careless or most hostile sheet holds it. */
export const anyCell = fc.oneof(
  fc.double({ noNaN: false }),
  fc.integer(),
  fc.double({ min: 0, max: 200, noNaN: true }),
  fc.constantFrom(0, -0, 1, 12, 46146, 1e300, -1e300, 5e-324, Number.MAX_VALUE, Infinity, NaN),
  fc.string(),
  fc.string({ unit: "grapheme" }),
  fc.constantFrom(
    "14 1/2",
    "8'6\"",
    "5/4",
    "8-6",
    "1,5",
    "12%",
    "oak",
    "white oak",
    "Doyle",
    "=1+1",
    "<script>",
    "'; DROP TABLE",
    "٣٫٥",
    "#N/A",
    "#VALUE!",
    "#SPILL!",
    "",
    "   ",
    "__proto__",
    "constructor",
    "2x6",
    "up",
    "table",
    "mean",
    "4, 6, 8",
  ),
  fc.constantFrom(
    null,
    undefined,
    true,
    false,
    [],
    {},
    { basicValue: 12 },
    { type: "Error", basicValue: "#N/A" },
    new Date(0),
  ),
);

/** An argument: one cell, left out, a column, a row, a grid, or a ragged heap. */
export const anyArgument = fc.oneof(
  { weight: 6, arbitrary: anyCell.map((cell) => [[cell]]) },
  { weight: 1, arbitrary: fc.constantFrom(null, undefined, [], [[]]) },
  {
    weight: 2,
    arbitrary: fc.array(
      anyCell.map((cell) => [cell]),
      { minLength: 1, maxLength: 4 },
    ),
  },
  { weight: 1, arbitrary: fc.array(fc.array(anyCell, { maxLength: 3 }), { maxLength: 3 }) },
);

/** What a worksheet may be answered with. */
export function isSoundCell(cell: unknown): boolean {
  if (typeof cell === "number") return Number.isFinite(cell);
  if (typeof cell === "string" || typeof cell === "boolean") return true;
  const { error, message } = (cell ?? {}) as { error?: unknown; message?: unknown };
  return typeof error === "string" && error.startsWith("#") && typeof message === "string" && message.length > 0;
}
