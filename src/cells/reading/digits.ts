/** A number as people write it: 14, 14.5, .5, 1/2, 14 1/2, 14-1/2. Text must have been through `tidied`. */
export const NUMBER = String.raw`(?:\d+(?: |-))?\d+\/\d+|\d+(?:\.\d*)?|\.\d+`;

/** Soft hyphen, spaces of no width, marks of the direction of writing. */
export const UNSEEN = /[\u00ad\u200b-\u200f\u202a-\u202e\u2060\ufeff]/g;

const VULGAR_FRACTION = /[¼-¾⅐-⅞]/g;

/**
 * Text with its look-alikes made one: ½ becomes 1/2, curly and prime marks become ' and ", long dashes a hyphen,
 * odd spaces a space, capitals small; marks that nobody sees, which come along with copied text, go.
 */
export function tidied(text: string): string {
  return text
    .replace(UNSEEN, "")
    .replace(VULGAR_FRACTION, (fraction) => ` ${fraction.normalize("NFKC")}`)
    .replace(/[″”“‟]|''|’’|′′/g, '"')
    .replace(/[′’‘ʹ`]/g, "'")
    .replace(/[‐-―−]/g, "-")
    .replace(/[º˚]/g, "°")
    .normalize("NFKC")
    .replace(/⁄/g, "/")
    .replace(/\s+/g, " ")
    .replace(/ ?([/-]) ?/g, "$1")
    .trim()
    .toLowerCase();
}

/** The value of a text that NUMBER matches, or undefined for a fraction over 0. */
export function valueOf(written: string): number | undefined {
  const fraction = /^(?:(\d+)[ -])?(\d+)\/(\d+)$/.exec(written);
  if (!fraction) return Number(written);
  const [, whole = "0", over, under] = fraction;
  return Number(under) === 0 ? undefined : Number(whole) + Number(over) / Number(under);
}

/** What is wanted in place of a text with a comma, which could mean 1.5 or 1500; undefined where there is none. */
export function commaRefusal(text: string): string | undefined {
  if (!/\d,\d|^,\d/.test(text)) return undefined;
  return "a number without a comma, such as 1.5 or 1500";
}
