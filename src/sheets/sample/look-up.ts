/**
 * What stands in one column of a table where another holds a key. It is spelled with INDEX and MATCH, since not every
 * program that opens the file knows XLOOKUP.
 */
export function lookUp(key: string, keys: string, column: string): string {
  return `INDEX(${column}, MATCH(${key}, ${keys}, 0))`;
}
