import { element } from "../../pane/element";
import { byId } from "./by-id";

/** What the buttons above the panel do with the workbook. */
interface FileWork {
  save(): Promise<void>;
  open(chosen: File): Promise<void>;
  isUnsaved(): boolean;
}

/** The buttons that save a copy and open another workbook. Where something typed would be lost they ask first. */
export function fileButtons({ save, open, isUnsaved }: FileWork): void {
  const chooser = element("input", {
    type: "file",
    accept: ".xlsx,.xlsm",
    hidden: "",
    "aria-label": "A workbook to open",
  });
  chooser.addEventListener("change", () => {
    const [chosen] = chooser.files ?? [];
    // The same file may be chosen again after it was mended.
    if (chosen) void working(() => open(chosen)).finally(() => (chooser.value = ""));
  });
  const saving = named("Save a copy", () => void working(save));
  const opening = named("Open a workbook", () => {
    if (isUnsaved()) ask();
    else chooser.click();
  });
  const buttons = byId("file-buttons");
  const offer = () => buttons.replaceChildren(saving, opening, chooser);
  offer();

  /** What was typed would be lost: the person says what becomes of it. */
  function ask(): void {
    const answered = (then: () => void) => () => {
      offer();
      opening.focus();
      then();
    };
    const answers = [
      named(
        "Save a copy first",
        answered(() => void working(save)),
      ),
      named(
        "Open without saving",
        answered(() => chooser.click()),
      ),
      named(
        "Stay here",
        answered(() => undefined),
      ),
    ];
    const question = element("p", { id: "file-question" }, "What you typed is not saved.");
    buttons.replaceChildren(question, ...answers, chooser);
    answers[0]!.focus();
  }

  /** One thing at a time; the buttons keep the keyboard's place. */
  async function working(work: () => Promise<void>): Promise<void> {
    if (saving.getAttribute("aria-disabled") === "true") return;
    for (const button of [saving, opening]) button.setAttribute("aria-disabled", "true");
    say("Working…");
    try {
      await work();
    } catch (fault) {
      say(fault instanceof Error ? fault.message : String(fault), "why");
    } finally {
      for (const button of [saving, opening]) button.removeAttribute("aria-disabled");
    }
  }
}

/** What became of it, in a line that is read out. */
export function say(line: string, look = ""): void {
  const said = byId("file-said");
  said.className = look;
  said.textContent = line;
}

function named(text: string, pressed: () => void): HTMLButtonElement {
  const button = element("button", { type: "button" }, text);
  button.addEventListener("click", pressed);
  return button;
}
