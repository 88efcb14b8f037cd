/** The program of an installed browser, or undefined. BOLE_BROWSER names another. */
export function installedBrowser(): string | undefined;
