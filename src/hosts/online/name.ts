import { ADD_IN } from "../../catalog/about/add-in";
import { plainName } from "../../formula/plain-name";

/** The file to paste into the online sheet's script editor. */
export const ONLINE_FILE = "bole-online.gs";

/** A function's name as the online sheet calls it: a dot cannot stand in the name of a script's function. */
export function onlineName(name: string): string {
  return plainName(ADD_IN, name);
}
