/** Where all pictures of the signal stand on one sheet. Plain arithmetic in px. */

import type { ElementSize } from "../frame/element-size.ts";
import type { SignalPicture } from "./picture-choice.ts";

export interface PicturePlace extends ElementSize {
  readonly picture: SignalPicture;
  readonly x: number;
  readonly y: number;
}

/** The sheet for which the type has its first size; on a larger one it grows, as far as is wished. */
const PLAIN_WIDTH_PX = 900;
const PLAIN_HEIGHT_PX = 570;
const HEAR_PX = 44;
/** The waves' part of the width. */
const LEFT_PART = 0.56;
/** The rose's part of what stands at the right. */
const ROSE_PART = 0.4;

/** The scale at which all have room, at most the one wanted, and the places. */
export function placePictures(
  size: ElementSize,
  wanted: number,
): { readonly scale: number; readonly places: readonly PicturePlace[] } {
  const scale = Math.max(1, Math.min(wanted, size.widthPx / PLAIN_WIDTH_PX, size.heightPx / PLAIN_HEIGHT_PX));
  const left = Math.floor(size.widthPx * LEFT_PART);
  const high = size.heightPx - HEAR_PX;
  const third = Math.floor(high / 3);
  const rose = Math.floor(high * ROSE_PART);
  const right = size.widthPx - left;
  return {
    scale,
    places: [
      { picture: "waves", x: 0, y: 0, widthPx: left, heightPx: third },
      { picture: "composite", x: 0, y: third, widthPx: left, heightPx: third },
      { picture: "spectrum", x: 0, y: 2 * third, widthPx: left, heightPx: third },
      { picture: "angle", x: left, y: 0, widthPx: right, heightPx: rose },
      { picture: "lighthouse", x: left, y: rose, widthPx: right, heightPx: high - rose },
      { picture: "hear", x: 0, y: high, widthPx: size.widthPx, heightPx: HEAR_PX },
    ],
  };
}
