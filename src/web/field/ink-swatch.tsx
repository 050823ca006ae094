/** A sample of a field's inks over the sea, printed pixel by pixel as the chart is. */

import type { JSX } from "preact";
import { useLayoutEffect, useRef } from "preact/hooks";
import { TILE_CELLS } from "../../draw/index.ts";

export interface InkSwatchProps {
  /** As `inksFor` gives them. */
  readonly inks: Uint8Array;
  /** Numbers of inks, rows of them from the top. */
  readonly rows: readonly (readonly number[])[];
  /** The size of each ink's field, px. */
  readonly widthPx: number;
  readonly heightPx: number;
}

export function InkSwatch({ inks, rows, widthPx, heightPx }: InkSwatchProps): JSX.Element {
  const canvas = useRef<HTMLCanvasElement>(null);
  const width = widthPx * (rows[0]?.length ?? 0);
  const height = heightPx * rows.length;
  useLayoutEffect(() => {
    const context = canvas.current?.getContext("2d");
    if (!context || width === 0 || height === 0) return;
    const image = context.createImageData(width, height);
    for (let y = 0; y < height; y++)
      for (let x = 0; x < width; x++) {
        const ink = rows[Math.floor(y / heightPx)]?.[Math.floor(x / widthPx)] ?? 0;
        const from = (ink * TILE_CELLS + (y & 7) * 8 + (x & 7)) * 4;
        image.data.set(inks.subarray(from, from + 4), (y * width + x) * 4);
      }
    context.putImageData(image, 0, 0);
  });
  return (
    <span class="ink-swatch" aria-hidden="true" style={{ width: `${width}px`, height: `${height}px` }}>
      <canvas ref={canvas} width={width} height={height} />
    </span>
  );
}
