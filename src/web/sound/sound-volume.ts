/** How loud the bench sounds: one volume for ident and signal, kept across visits. */

import type { Signal } from "@preact/signals";
import { remembered } from "../state/preferences.ts";

const FIRST_VOLUME_PERCENT = 60;
let kept: Signal<number> | null = null;

/** 0 to 100. */
export function soundVolume(): Signal<number> {
  kept ??= remembered("ident-volume", FIRST_VOLUME_PERCENT, readVolume, String);
  return kept;
}

function readVolume(text: string): number | null {
  const percent = Number(text);
  return text !== "" && percent >= 0 && percent <= 100 ? percent : null;
}
