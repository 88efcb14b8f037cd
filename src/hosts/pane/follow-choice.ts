import type { SheetHost } from "./sheet-host";

/** A part of the pane, and what it does when another cell is chosen. */
interface Follower {
  part: HTMLElement;
  told: () => void;
}

const followers = new WeakMap<SheetHost, Set<Follower>>();

/** Tells a part of the pane when another cell is chosen, as long as it is in the page. The host is asked once for all. */
export function followChoice(host: SheetHost, part: HTMLElement, told: () => void): void {
  const known = followers.get(host);
  if (known) return void known.add({ part, told });
  const all = new Set<Follower>([{ part, told }]);
  followers.set(host, all);
  host.whenChosen?.(() => {
    for (const one of all)
      if (one.part.isConnected) one.told();
      else all.delete(one);
  });
}
