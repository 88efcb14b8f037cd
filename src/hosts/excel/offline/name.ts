/** The name of the worker's script in the built folder. It stands at the top, so that every page is in its reach. */
export const WORKER = "offline.js";
