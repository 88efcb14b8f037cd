/** A document of the bibliography. `seenIn` says so when a copy or a companion was read, not the document itself. */
export interface Source {
  document: string;
  seenIn?: string;
}

/**
 * The bibliography: each document once, under the short name that `@source` lines begin with.
 * Besides these, a source may be "plain geometry", "plain arithmetic", "common practice, no source" or "from memory".
 */
export const SOURCES: Readonly<Record<string, Source>> = {
  "Louisiana RS 3:4641": { document: "Louisiana Revised Statutes 3:4641, standard log rule (Doyle)" },
};
