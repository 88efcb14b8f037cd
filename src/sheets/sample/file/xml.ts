export const XML_HEAD = `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n`;

/** Replaces what must be there exactly once, or says what is missing: a part that changed its shape must not slip by. */
export function replaceOnce(xml: string, wanted: string | RegExp, by: string): string {
  const pieces = xml.split(wanted);
  if (pieces.length !== 2) throw new Error(`Expected one ${wanted} in the part, found ${pieces.length - 1}`);
  return pieces.join(by);
}
