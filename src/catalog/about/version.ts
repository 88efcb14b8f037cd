import about from "../../../package.json";

/** The version as a cell shows it. */
export function versionTable(): string[][] {
  return [[`Bole ${about.version}`]];
}
