import type { Entry } from "../../../catalog/entry";

/** `BOLE.EMC(temperature, humidity)` */
export function signature(entry: Pick<Entry, "name" | "params">): string {
  const params = entry.params.map(({ name, optional }) => (optional ? `[${name}]` : name));
  return `BOLE.${entry.name}(${params.join(", ")})`;
}
