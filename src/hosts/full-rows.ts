/**
 * An answer as a spreadsheet takes it: full rows of equal length, each cell as the host has it. An empty place would
 * show as 0, so it becomes empty text.
 */
export function fullRows(answer: unknown[][], asHostHasIt: (cell: unknown) => unknown): unknown[][] {
  // Not Math.max(...lengths): a call takes no million arguments, and a sheet has a million rows.
  const width = answer.reduce((widest, row) => Math.max(widest, row.length), 1);
  const rows = answer.length === 0 ? [[]] : answer;
  return rows.map((row) => Array.from({ length: width }, (_, column) => asHostHasIt(row[column] ?? "")));
}
