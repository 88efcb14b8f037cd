import { ADD_IN } from "../../catalog/about/add-in";

/** The file to paste into the online sheet's script editor. */
export const ONLINE_FILE = "bole-online.gs";

/** A function's name as the online sheet calls it: a dot cannot stand in the name of a script's function. */
export function onlineName(name: string): string {
  return `${ADD_IN}_${name}`;
}
