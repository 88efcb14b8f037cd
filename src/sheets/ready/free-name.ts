/** Excel's limit for the name of a sheet. */
const LONGEST_SHEET_NAME = 31;

/** A name that is not taken: `Log book`, else `Log book 2`, `Log book 3` and so on. Case makes no difference. */
export function freeSheetName(wanted: string, taken: readonly string[]): string {
  return firstFree(taken, (number) => {
    const end = number === 1 ? "" : ` ${number}`;
    return wanted.slice(0, LONGEST_SHEET_NAME - end.length) + end;
  });
}

/** The same for a table, whose name holds no spaces: `LogBook`, `LogBook2`. */
export function freeTableName(wanted: string, taken: readonly string[]): string {
  return firstFree(taken, (number) => (number === 1 ? wanted : `${wanted}${number}`));
}

/** The same for the heading of a column, which may be of any length: `Board feet`, `Board feet 2`. */
export function freeHeading(wanted: string, taken: readonly string[]): string {
  return firstFree(taken, (number) => (number === 1 ? wanted : `${wanted} ${number}`));
}

function firstFree(taken: readonly string[], nameWith: (number: number) => string): string {
  const lower = new Set(taken.map((name) => name.toLowerCase()));
  for (let number = 1; ; number++) {
    const name = nameWith(number);
    if (!lower.has(name.toLowerCase())) return name;
  }
}
