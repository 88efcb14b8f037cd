/** Does something and says in a line what came of it, or why not. */
export async function reported(work: () => Promise<string>): Promise<void> {
  try {
    say(await work());
  } catch (thrown) {
    say(`Not done. ${thrown instanceof Error ? thrown.message : String(thrown)}.`);
  }
}

/** The line covers a strip of what is below it: it goes when the person points at something else. */
function say(line: string): void {
  const said = document.getElementById("said")!;
  said.textContent = line;
  document.addEventListener("click", () => (said.textContent = ""), { once: true, capture: true });
}
