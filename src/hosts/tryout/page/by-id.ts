export function byId(id: string): HTMLElement {
  const found = document.getElementById(id);
  if (!found) throw new Error(`The page has no part called ${id}`);
  return found;
}
