import { Refused } from "../../../xlsx/refused";
import type { Made } from "../../terminal/file/made";
import { NotTaken } from "../requests";
import type { Changes } from "./changes";
import { saved } from "./saved";
import { CHANGES_FIELD, WORKBOOK_FIELD } from "./wire";

/** Makes the copy that our page asks for: the workbook's bytes and what was typed come as the two fields of a form. */
export async function savedFrom(sent: Uint8Array, contentType: string, at: Date): Promise<Made> {
  const { workbook, changes } = await fieldsOf(sent, contentType);
  try {
    return saved(workbook, changes, at);
  } catch (fault) {
    if (fault instanceof Refused) throw new NotTaken(422, `Nothing was saved: ${fault.message}.`);
    throw new NotTaken(500, `Nothing was saved: a fault in Bole itself, please report it: ${String(fault)}.`);
  }
}

async function fieldsOf(sent: Uint8Array, contentType: string): Promise<{ workbook: Uint8Array; changes: Changes }> {
  try {
    const form = await new Response(new Blob([new Uint8Array(sent)]), {
      headers: { "content-type": contentType },
    }).formData();
    const [workbook, changes] = [form.get(WORKBOOK_FIELD), form.get(CHANGES_FIELD)];
    if (!(workbook instanceof Blob) || typeof changes !== "string") throw new Error("a field is missing");
    return { workbook: new Uint8Array(await workbook.arrayBuffer()), changes: JSON.parse(changes) as Changes };
  } catch (fault) {
    throw new NotTaken(400, `What was sent is not a workbook and what was typed into it (${String(fault)}).`);
  }
}
