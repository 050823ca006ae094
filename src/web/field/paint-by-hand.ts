/** Painting a plate in JavaScript: one look-up in the table of shades and one in the table of inks for every pixel. */

import { BY_RECEPTION, EDGES, shadeTable } from "./field-print.ts";
import type { FieldLook } from "./field-subject.ts";
import { EDGE_INK, FIX_INKS, INK_COUNT, RECEPTION_INKS, TILE_CELLS } from "./inks.ts";
import type { Painter } from "./painter.ts";
import { type Plate, printedSize } from "./plate.ts";

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

interface Printing {
  readonly plate: Plate;
  readonly pixelsPerCell: number;
  readonly look: FieldLook;
  readonly shades: Uint8Array;
  readonly inks: Uint32Array;
  readonly pixels: Uint32Array;
  readonly width: number;
}

/** Prints every pixel. Kept flat: it runs for each turn of the course. */
export function printPlate({ plate, pixelsPerCell, look, shades, inks, pixels, width }: Printing): void {
  const { cells, columns } = plate;
  const edges = EDGES[look.kind];
  const isShaded = look.kind === "needle" || look.kind === "to-from";
  const isFix = look.kind === "fix";
  const shift = Math.log2(pixelsPerCell);
  const height = pixels.length / width;
  for (let y = 0, pixel = 0; y < height; y++) {
    const from = (y >> shift) * columns;
    const tileRow = (y & 7) << 3;
    for (let x = 0; x < width; x++, pixel++) {
      const cell = cells[from + (x >> shift)] as number;
      let ink = BY_RECEPTION;
      if (isShaded) ink = shades[cell & 0xffff] as number;
      if (ink === BY_RECEPTION)
        ink = isFix ? FIX_INKS + ((cell >>> 24) & 15) : RECEPTION_INKS + ((cell >>> 16) & 255);
      if ((cell & edges) !== 0) ink = EDGE_INK;
      pixels[pixel] = inks[(ink << 6) | tileRow | (x & 7)] as number;
    }
  }
}
