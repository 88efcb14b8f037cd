const LEVELS = ["log", "info", "warn", "error", "debug"] as const;

/** Works with the console shut: the engine grumbles there about names that it does not know, and we say so better. */
export async function quietly<T>(work: () => Promise<T>): Promise<T> {
  const spoken = LEVELS.map((level) => console[level]);
  for (const level of LEVELS) console[level] = () => undefined;
  try {
    return await work();
  } finally {
    for (const [at, level] of LEVELS.entries()) console[level] = spoken[at]!;
  }
}
