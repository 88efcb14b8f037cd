import { drawnOnCanvas } from "../../pane/drawn-on-canvas";
import { inWorkbook, mustSupport } from "./in-workbook";

/** As wide as half a printed page, in points. */
const WIDTH = 420;

/**
 * Places a drawing with its top left corner at the chosen cell. It can be moved and resized like any picture.
 *
 * It goes in as PNG: office.js 1.1.110 has no addSvg although the documentation lists it, and Excel has refused SVG for
 * what it contains (OfficeDev/office-js issue 744). Whoever the workbook is handed to sees a PNG in any program.
 */
export async function placePicture(svg: string, about: string): Promise<string> {
  const png = await asPng(svg);
  return inWorkbook(async (context) => {
    mustSupport("1.10", "pictures");
    const range = context.workbook.getSelectedRange();
    range.load("address, left, top");
    await context.sync();
    const picture = range.worksheet.shapes.addImage(png);
    picture.lockAspectRatio = true;
    picture.width = WIDTH;
    picture.left = range.left;
    picture.top = range.top;
    picture.altTextDescription = about;
    await context.sync();
    return `The end view stands at ${range.address}`;
  });
}

/** A drawing as PNG in Base64. */
async function asPng(svg: string): Promise<string> {
  const canvas = await drawnOnCanvas(svg);
  return canvas.toDataURL("image/png").replace(/^data:image\/png;base64,/, "");
}
