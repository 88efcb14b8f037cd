/** A function of an add-in as a host calls it that takes no dot in a name: `BOLE_EMC`. */
export function plainName(addIn: string, name: string): string {
  return `${addIn}_${name}`;
}
