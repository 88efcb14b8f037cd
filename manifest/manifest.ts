import { readFileSync } from "node:fs";

/** The manifest for files served at an address. */
export function manifestFor(address: string, packageVersion: string): string {
  const template = readFileSync(new URL("manifest.xml", import.meta.url), "utf8");
  return template
    .replaceAll("{{address}}", checkedAddress(address))
    .replaceAll("{{version}}", manifestVersion(packageVersion));
}

/**
 * An address that files can be named under: https, a host, perhaps a port and folders. The characters allowed need no
 * escaping in XML or in a page.
 */
export function checkedAddress(address: string): string {
  const trimmed = address.replace(/\/$/, "");
  const complaint = complaintAbout(trimmed);
  if (complaint)
    throw new Error(`The address "${address}" ${complaint}. Wanted: something like https://example.com/bole`);
  return trimmed;
}

function complaintAbout(address: string): string | undefined {
  if (!URL.canParse(address)) return "is no web address";
  const { protocol, username, password, search, hash, origin, pathname } = new URL(address);
  if (protocol !== "https:") return "must begin with https://, because Excel loads nothing else";
  if (username || password) return "must not hold a user name or password";
  if (search || hash || /[?#]/.test(address)) return "must not go on with ? or #";
  if (/\/(functions\.js(on)?|[^/]+\.(html|xml))$/.test(pathname)) return "must name the folder, not a file in it";
  if (/\/\/|\/\.{1,2}(\/|$)/.test(address.slice("https://".length))) return "must not hold // or . folders";
  if (!/^[A-Za-z0-9._~/-]*$/.test(pathname)) return "may only hold letters, digits and - . _ ~ in its folders";
  if (address !== origin + (pathname === "/" ? "" : pathname)) return `must be written plainly, as ${origin}`;
  return undefined;
}

/** Excel wants four numbers; the fourth is ours to leave at 0. */
function manifestVersion(packageVersion: string): string {
  if (!/^\d{1,5}\.\d{1,5}\.\d{1,5}$/.test(packageVersion))
    throw new Error(`The version "${packageVersion}" of package.json must be three numbers, such as 1.4.0`);
  return `${packageVersion}.0`;
}
