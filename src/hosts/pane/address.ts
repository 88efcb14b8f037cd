/** `Logs!` of `Logs!B4`; nothing of `B4`. */
export function sheetPrefixOf(address: string): string {
  return address.slice(0, address.lastIndexOf("!") + 1);
}

/** Logs of `Logs!`, and Big logs of `'Big logs'!` as a formula writes it. */
export function sheetNameOf(prefix: string): string {
  const name = prefix.slice(0, -1);
  return name.startsWith("'") ? name.slice(1, -1).replaceAll("''", "'") : name;
}
