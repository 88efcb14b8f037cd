const mended = new WeakSet<object>();

/** Whether a part of the engine was mended before: several engines may start, and they share their parts. */
export function isMended(part: object): boolean {
  if (mended.has(part)) return true;
  mended.add(part);
  return false;
}
