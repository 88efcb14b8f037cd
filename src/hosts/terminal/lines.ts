/** The formulas that have arrived so far, as soon as their lines are whole; blank lines are skipped. */
export async function* formulasFrom(input: AsyncIterable<Uint8Array>): AsyncGenerator<string[]> {
  const decoder = new TextDecoder();
  let unfinished = "";
  for await (const chunk of input) {
    const lines = (unfinished + decoder.decode(chunk, { stream: true })).split(/\r\n|\r(?!$)|\n/);
    unfinished = lines.pop() ?? "";
    const formulas = lines.map((line) => line.trim()).filter((line) => line !== "");
    if (formulas.length > 0) yield formulas;
  }
  const last = (unfinished + decoder.decode()).trim();
  if (last !== "") yield [last];
}
