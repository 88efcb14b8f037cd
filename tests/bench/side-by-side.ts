/** Runs two pieces of work in turn, so that a change in the machine's speed meets both, and times each run. */
export function sideBySide(one: () => unknown, other: () => unknown, runs = 15): { first: number[]; second: number[] } {
  for (let warm = 0; warm < 3; warm++) {
    one();
    other();
  }
  const first: number[] = [];
  const second: number[] = [];
  for (let run = 0; run < runs; run++) {
    first.push(timed(one));
    second.push(timed(other));
  }
  return { first, second };
}

/** The middle of several times, in milliseconds. */
export function median(times: readonly number[]): number {
  const sorted = [...times].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)]!;
}

function timed(work: () => unknown): number {
  const start = performance.now();
  work();
  return performance.now() - start;
}
