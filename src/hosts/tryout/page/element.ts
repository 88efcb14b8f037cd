/** A piece of the page: `element("p", "quiet", "No cell is selected.")`. */
export function element(tag: string, className: string, ...content: (string | Node)[]): HTMLElement {
  const made = document.createElement(tag);
  if (className) made.className = className;
  made.append(...content);
  return made;
}

export function byId(id: string): HTMLElement {
  const found = document.getElementById(id);
  if (!found) throw new Error(`The page has no part called ${id}`);
  return found;
}
