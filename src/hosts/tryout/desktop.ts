import { spawn } from "node:child_process";

/** Opens an address in the usual browser, where a person sits in front of a screen. */
export function showInBrowser(address: string, environment: NodeJS.ProcessEnv = process.env): boolean {
  const command = opener(environment);
  if (!command) return false;
  const [program = "", ...options] = command;
  const child = spawn(program, [...options, address], { detached: true, stdio: "ignore" });
  // Without such a program the address on the screen does as well.
  child.on("error", () => undefined);
  child.unref();
  return true;
}

/** The program that opens addresses here; none on a build machine or without a screen. */
export function opener(environment: NodeJS.ProcessEnv, platform: string = process.platform): string[] | undefined {
  if (environment["CI"] || environment["BOLE_NO_BROWSER"]) return undefined;
  if (platform === "darwin") return ["open"];
  if (platform === "win32") return ["cmd", "/c", "start", ""];
  return environment["DISPLAY"] || environment["WAYLAND_DISPLAY"] ? ["xdg-open"] : undefined;
}
