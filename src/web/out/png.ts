/** A picture as pixels: the SVG, which carries its own fonts, drawn on a canvas. */

import type { PictureSize } from "./picture-size.ts";

/** Throws Error when the browser cannot draw the picture. */
export async function pngFromSvg(svg: string, { widthPx, heightPx, pixelRatio }: PictureSize): Promise<Blob> {
  const url = URL.createObjectURL(new Blob([svg], { type: "image/svg+xml" }));
  try {
    const picture = new Image();
    picture.src = url;
    await picture.decode();
    const canvas = document.createElement("canvas");
    canvas.width = Math.round(widthPx * pixelRatio);
    canvas.height = Math.round(heightPx * pixelRatio);
    const context = canvas.getContext("2d");
    if (context === null) throw new Error("this browser gives the page no canvas to draw on");
    context.drawImage(picture, 0, 0, canvas.width, canvas.height);
    const blob = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, "image/png"));
    if (blob === null) throw new Error("the picture is too large for this browser; choose a smaller size");
    return blob;
  } finally {
    URL.revokeObjectURL(url);
  }
}
