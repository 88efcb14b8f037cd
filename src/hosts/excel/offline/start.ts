import { WORKER } from "./name";

/**
 * Lets the browser keep the add-in for days without a network, once the page has all it needs for now. Where that is
 * not possible (Excel on a Mac has no such workers, the development server serves none) nothing is lost.
 */
export function keepForOffline(): void {
  if (!("serviceWorker" in navigator)) return;
  if (document.readyState === "complete") void start();
  else window.addEventListener("load", () => void start(), { once: true });
}

async function start(): Promise<void> {
  const { serviceWorker } = navigator;
  try {
    await serviceWorker.register(WORKER);
    if (serviceWorker.controller) return;
    const { active } = await serviceWorker.ready;
    active?.postMessage(performance.getEntriesByType("resource").map(({ name }) => name));
  } catch {
    // Opening again without a network is all that is lost, and there is nobody to tell.
  }
}
