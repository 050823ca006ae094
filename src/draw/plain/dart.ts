/** The aircraft on every picture: a folded paper dart, nose up around (0, 0). */

import { px } from "./px.ts";

/** The outline of a dart of so many px from nose to tail. */
export function dartPath(lengthPx: number): string {
  const half = lengthPx / 2;
  const wing = lengthPx * 0.36;
  const notch = half - lengthPx * 0.2;
  return `M0 ${px(-half)}L${px(wing)} ${px(half)}L0 ${px(notch)}L${px(-wing)} ${px(half)}Z`;
}

/** The wing that lies away from the light, drawn over the outline in a lighter ink. */
export function dartFarWingPath(lengthPx: number): string {
  const half = lengthPx / 2;
  return `M0 ${px(-half)}L${px(lengthPx * 0.36)} ${px(half)}L0 ${px(half - lengthPx * 0.2)}Z`;
}
