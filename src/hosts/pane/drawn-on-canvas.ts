/** Twice as many dots as the drawing has units, so that it prints well. */
const SCALE = 2;

/** A drawing, as dots on a canvas. */
export async function drawnOnCanvas(svg: string): Promise<HTMLCanvasElement> {
  const address = URL.createObjectURL(new Blob([svg], { type: "image/svg+xml" }));
  try {
    const image = new Image();
    image.src = address;
    await image.decode();
    const canvas = document.createElement("canvas");
    canvas.width = SCALE * image.naturalWidth;
    canvas.height = SCALE * image.naturalHeight;
    canvas.getContext("2d")!.drawImage(image, 0, 0, canvas.width, canvas.height);
    return canvas;
  } finally {
    URL.revokeObjectURL(address);
  }
}
