/** The size of a picture as a person writes it. */

import { CallFault } from "./faults.ts";

export interface PictureSize {
  readonly widthPx: number;
  readonly heightPx: number;
}

/** Slide shapes by name. */
const SLIDES: Readonly<Record<string, PictureSize>> = {
  "16:9": { widthPx: 1920, heightPx: 1080 },
  "4:3": { widthPx: 1600, heightPx: 1200 },
};
const LEAST_PX = 200;
const MOST_PX = 8000;

/** The size that a text names, or 16:9 without one. Throws CallFault on anything else, and beyond 200 to 8000 pixels a side. */
export function pictureSize(text = "16:9"): PictureSize {
  const slide = Object.hasOwn(SLIDES, text) ? SLIDES[text] : undefined;
  if (slide !== undefined) return slide;
  const [, width, height] = /^(\d{1,5})[x×](\d{1,5})$/i.exec(text) ?? [];
  if (width === undefined || height === undefined)
    throw new CallFault(`--size must be 16:9, 4:3 or pixels such as 1920x1080, but got "${text}"`);
  const size = { widthPx: Number(width), heightPx: Number(height) };
  for (const px of [size.widthPx, size.heightPx])
    if (px < LEAST_PX || px > MOST_PX)
      throw new CallFault(
        `--size must lie between ${LEAST_PX} and ${MOST_PX} pixels a side, but got "${text}"`,
      );
  return size;
}
