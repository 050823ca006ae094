/** Painting a plate in JavaScript, for a canvas without a graphics card. */

import { INK_COUNT, type Plate, printedSize, printPlate, shadeTable, TILE_CELLS } from "../../draw/index.ts";
import type { Painter } from "./painter.ts";

export function paintByHand(canvas: HTMLCanvasElement): Painter {
  const context = canvas.getContext("2d", { alpha: false });
  if (context === null) throw new Error("this canvas cannot be drawn on");
  const table = shadeTable();
  const inks = new Uint32Array(INK_COUNT * TILE_CELLS);
  let plate: Plate | null = null;
  let cellWidth = 1;
  let image = new ImageData(1, 1);
  let pixels = new Uint32Array(image.data.buffer);
  return {
    name: "hand",
    setInks: (bytes) => inks.set(new Uint32Array(bytes.buffer, bytes.byteOffset, inks.length)),
    setPlate: (next, pixelsPerCell) => {
      const { width, height } = printedSize(next, pixelsPerCell);
      plate = next;
      cellWidth = pixelsPerCell;
      if (canvas.width !== width) canvas.width = width;
      if (canvas.height !== height) canvas.height = height;
      if (image.width === width && image.height === height) return;
      image = new ImageData(width, height);
      pixels = new Uint32Array(image.data.buffer);
    },
    paint: (look) => {
      if (plate === null) return;
      table.turnTo(look);
      printPlate({
        plate,
        pixelsPerCell: cellWidth,
        look,
        shades: table.shades,
        inks,
        pixels,
        width: image.width,
      });
      context.putImageData(image, 0, 0);
    },
  };
}
