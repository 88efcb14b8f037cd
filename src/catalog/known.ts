import type { Facts, SettingFacts } from "../cells/read";
import type { SettingEntry } from "./entry";

/** A longer list of words, such as the species, is no help beside an argument. */
const SHORT_LIST = 12;

/** A setting of a table of settings, as the catalog lists it. */
export function settingEntry(facts: SettingFacts): SettingEntry {
  const { name, says, group, otherwise } = facts;
  return { name, text: says, group, ...known(facts), ...(otherwise && { otherwise }) };
}

/** What a declaration knows, without what is no use on a page. */
export function known({ kind, bare, reads, words, zero, zeroAs, default: usual }: Facts) {
  return {
    kind,
    ...(bare && { bare }),
    ...(reads && { reads }),
    ...(words && words.length <= SHORT_LIST && { words: [...words] }),
    ...(isPlain(usual) && { default: usual }),
    ...(zero && { zero }),
    ...(zeroAs && { zeroAs }),
  };
}

function isPlain(value: unknown): value is string | number | boolean {
  return ["string", "number", "boolean"].includes(typeof value);
}
