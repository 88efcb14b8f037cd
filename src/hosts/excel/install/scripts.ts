import { readFileSync } from "node:fs";
import { addInId } from "../../add-in-id";
import { MAC_EXCEL, MAC_FOLDER, WINDOWS_KEY } from "../this-machine";

/** The scripts that put the add-in at an address into an Excel, for people without Node, by their file names. */
export function installScripts(address: string): Record<string, string> {
  const marks = {
    address,
    id: addInId(),
    key: WINDOWS_KEY.replace(/^HKCU\\/, ""),
    excel: MAC_EXCEL,
    folder: MAC_FOLDER,
  };
  const filled = (name: string) =>
    Object.entries(marks).reduce(
      (text, [mark, value]) => text.replaceAll(`{{${mark}}}`, value),
      readFileSync(new URL(name, import.meta.url), "utf8"),
    );
  return {
    // Windows PowerShell 5.1 reads a script's line ends and letters most surely like this.
    "install-windows.ps1": filled("install-windows.ps1").replaceAll("\n", "\r\n"),
    "install-mac.sh": filled("install-mac.sh"),
  };
}
