/** Printing a plate: one look-up in the table of shades and one in the table of inks for every pixel. */

import { BY_RECEPTION, EDGES } from "./field-print.ts";
import type { FieldLook } from "./field-subject.ts";
import { EDGE_INK, FIX_INKS, RECEPTION_INKS } from "./inks.ts";
import type { Plate } from "./plate.ts";

export interface Printing {
  readonly plate: Plate;
  readonly pixelsPerCell: number;
  readonly look: FieldLook;
  readonly shades: Uint8Array;
  readonly inks: Uint32Array;
  readonly pixels: Uint32Array;
  readonly width: number;
}

/** Prints every pixel with its four bytes. Kept flat: it runs for each turn of the course. */
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
