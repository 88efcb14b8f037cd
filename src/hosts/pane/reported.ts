/** Does something and says in a line what came of it, or why not. */
export async function reported(work: () => Promise<string>): Promise<void> {
  try {
    say(await work());
  } catch (thrown) {
    say(`Not done. ${thrown instanceof Error ? thrown.message : String(thrown)}.`);
  }
}

function say(line: string): void {
  document.getElementById("said")!.textContent = line;
}
