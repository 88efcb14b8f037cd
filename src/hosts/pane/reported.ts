/** Does something and says in a line what came of it, or why not. */
export async function reported(work: () => Promise<string>): Promise<void> {
  try {
    say(await work());
  } catch (thrown) {
    say(`Not done. ${thrown instanceof Error ? thrown.message : String(thrown)}.`);
  }
}

/** The line covers a strip of what is below it: it goes when the person clicks on something else. */
function say(line: string): void {
  const said = document.getElementById("said")!;
  const cause = document.activeElement;
  said.textContent = line;
  document.addEventListener("click", goOn, { capture: true });

  function goOn({ target }: Event): void {
    if (target instanceof Node && cause !== document.body && cause?.contains(target)) return;
    said.textContent = "";
    document.removeEventListener("click", goOn, { capture: true });
  }
}
