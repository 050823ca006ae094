/** Where the sheet's furniture stands: the norths and the wind, the scale, the strips that say what is covered. Each in a corner, the emptiest. */

import { type ChartFrame, inset, NOTE_PX } from "./frame.ts";
import {
  bestPlace,
  boxObstacle,
  type Candidate,
  type LabelBox,
  type Obstacle,
  type PaperWindow,
} from "./placement.ts";
import { wordsWidthPx } from "./words.tsx";

export interface Furniture {
  readonly badges: LabelBox;
  readonly scale: LabelBox;
  /** One for each thing covered. */
  readonly strips: readonly { readonly covered: string; readonly box: LabelBox }[];
  /** Length of the scale bar. */
  readonly scaleNm: number;
}

/** At type scale 1. */
export const BADGE_FIGURE_PX = 70;
export const BADGE_WORDS_PX = 22;
export const NORTHS_WIDTH_PX = 112;
export const WIND_WIDTH_PX = 84;
const SCALE_HEIGHT_PX = 32;
const STRIP_PX = { widthPx: 176, heightPx: 32, stepPx: 44 };
/** From the border. */
const CORNER_GAP_PX = 12;
/** What the second choice of corner costs, and each after it. */
const NEXT_CORNER_COST = 400;
export const FURNITURE_WEIGHT = 16;

type Corner = "top right" | "top left" | "bottom right" | "bottom left";

export function layOutFurniture(
  frame: ChartFrame,
  wanted: { readonly wind: boolean; readonly covered: readonly string[] },
  obstacles: readonly Obstacle[],
): Furniture {
  const s = frame.typeScale;
  const taken: Obstacle[] = [...obstacles];
  const settle = (size: { widthPx: number; heightPx: number }, corners: readonly Corner[]): LabelBox => {
    const box = inCorner(frame.window, size, corners, taken);
    taken.push(boxObstacle(box, FURNITURE_WEIGHT, 6));
    return box;
  };
  const scaleNm = niceScaleNm(frame);
  const badges = settle(
    {
      widthPx: (NORTHS_WIDTH_PX + (wanted.wind ? WIND_WIDTH_PX : 0)) * s,
      heightPx: BADGE_FIGURE_PX * badgeScale(frame) + BADGE_WORDS_PX * s,
    },
    ["top right", "top left", "bottom left", "bottom right"],
  );
  const scale = settle(
    {
      widthPx: scaleNm * frame.projection.pxPerNm + scaleOverhangPx(scaleNm, s) * 2,
      heightPx: SCALE_HEIGHT_PX * s,
    },
    ["bottom right", "bottom left", "top left", "top right"],
  );
  const stack = settle(
    {
      widthPx: STRIP_PX.widthPx * s,
      heightPx: Math.max(1, wanted.covered.length) * STRIP_PX.stepPx * s,
    },
    ["top left", "bottom left", "bottom right", "top right"],
  );
  const strips = wanted.covered.map((covered, index) => ({
    covered,
    box: {
      ...stack,
      y: stack.y - stack.heightPx / 2 + (index + 0.5) * STRIP_PX.stepPx * s,
      heightPx: STRIP_PX.heightPx * s,
    },
  }));
  return { badges, scale, strips, scaleNm };
}

/** Arrows shrink on a small sheet; words do not. */
export function badgeScale({ widthPx, heightPx, typeScale }: ChartFrame): number {
  return typeScale * Math.min(1, Math.max(0.62, Math.min(widthPx, heightPx) / (560 * typeScale)));
}

/** How far the figures at the ends of the scale reach past it, px. */
export const scaleOverhangPx = (scaleNm: number, typeScale: number): number =>
  wordsWidthPx(`${scaleNm} NM`, { sizePx: NOTE_PX * typeScale }) / 2 + 4;

function inCorner(
  window: PaperWindow,
  size: { widthPx: number; heightPx: number },
  corners: readonly Corner[],
  obstacles: readonly Obstacle[],
): LabelBox {
  const room = inset(window, CORNER_GAP_PX);
  const candidates: Candidate<null>[] = corners.map((corner, index) => ({
    box: {
      ...size,
      x: corner.endsWith("right") ? room.right - size.widthPx / 2 : room.left + size.widthPx / 2,
      y: corner.startsWith("top") ? room.top + size.heightPx / 2 : room.bottom - size.heightPx / 2,
      turnDeg: 0,
    },
    cost: index * NEXT_CORNER_COST,
    value: null,
  }));
  const best = bestPlace(candidates, obstacles, window);
  if (!best) throw new RangeError("furniture needs at least one corner");
  return best.box;
}

/** A round number of miles that takes about a fifth of the sheet, at most 180 px at type scale 1. */
function niceScaleNm(frame: ChartFrame): number {
  const wishedPx = Math.min(frame.widthPx * 0.3, 240 * Math.sqrt(frame.typeScale));
  const wishedNm = wishedPx / frame.projection.pxPerNm;
  const power = 10 ** Math.floor(Math.log10(wishedNm));
  const step = [5, 2, 1].find((each) => each * power <= wishedNm) ?? 1;
  return step * power;
}
