/** Which picture of the signal is looked at where there is room for one, and whether several are. */

import { type Signal, signal } from "@preact/signals";
import type { ElementSize } from "../frame/element-size.ts";
import { remembered } from "../state/preferences.ts";

export const SIGNAL_PICTURES = ["waves", "composite", "angle", "spectrum", "lighthouse", "hear"] as const;
export type SignalPicture = (typeof SIGNAL_PICTURES)[number];

export const PICTURE_NAMES: Readonly<Record<SignalPicture, string>> = {
  waves: "Waves",
  composite: "Composite",
  angle: "Angle",
  spectrum: "Spectrum",
  lighthouse: "Lighthouse",
  hear: "Hear",
};

export interface PictureChoice {
  /** Kept across visits. */
  readonly picture: Signal<SignalPicture>;
  /** Whether all of them are to be seen, so that there is nothing to choose. */
  readonly several: Signal<boolean>;
}

let kept: PictureChoice | null = null;

export function pictureChoice(): PictureChoice {
  kept ??= {
    picture: remembered(
      "signal-picture",
      "waves",
      (text) => SIGNAL_PICTURES.find((each) => each === text) ?? null,
      String,
    ),
    several: signal(false),
  };
  return kept;
}

const LEAST_WIDTH_PX = 660;
const LEAST_HEIGHT_PX = 480;

/** Whether all pictures can stand on a sheet of this size. */
export const hasRoomForAll = ({ widthPx, heightPx }: ElementSize): boolean =>
  widthPx >= LEAST_WIDTH_PX && heightPx >= LEAST_HEIGHT_PX;
