/**
 * Where the views of a figure stand. The box is halved again and again, across or down, and of all the ways to do so the one is
 * taken in which everything can best be read. Plain arithmetic in px.
 */

import type { View } from "../../scene/index.ts";

export interface Box {
  readonly x: number;
  readonly y: number;
  readonly widthPx: number;
  readonly heightPx: number;
}

export interface PlacedView {
  readonly view: View;
  readonly box: Box;
}

/** How well a view can be read in a box of this size, above 0 and at most 1. */
export type Legibility = (view: View, widthPx: number, heightPx: number) => number;

/** Neighbours in a figure: the signal under the chart, the reasons under the panel or beside it. */
const ORDER: readonly View[] = ["chart", "signal", "panel", "reasons"];
const SHARES = [0.22, 0.3, 0.38, 0.44, 0.5, 0.56, 0.62, 0.7, 0.78];
/** The chart is the hero. */
const WEIGHTS: Readonly<Record<View, number>> = { chart: 3, panel: 1.4, reasons: 2.2, signal: 0.7 };

interface Arranged {
  readonly placed: readonly PlacedView[];
  readonly score: number;
}

/** Each view with its box, in reading order; a view named twice is placed once. */
export function arrangeViews(
  views: readonly View[],
  box: Box,
  gapPx: number,
  legibility: Legibility,
): readonly PlacedView[] {
  const wanted = ORDER.filter((view) => views.includes(view));
  return best(wanted, box, gapPx, legibility).placed;
}

function best(views: readonly View[], box: Box, gapPx: number, legibility: Legibility): Arranged {
  const [only, ...others] = views;
  if (only === undefined) return { placed: [], score: 0 };
  if (others.length === 0) {
    const score = WEIGHTS[only] * Math.log(legibility(only, box.widthPx, box.heightPx));
    return { placed: [{ view: only, box }], score };
  }
  let found: Arranged = { placed: [], score: Number.NEGATIVE_INFINITY };
  for (let at = 1; at < views.length; at++)
    for (const across of [true, false])
      for (const share of sharesFor(views.length)) {
        const [one, other] = halves(box, across, share, gapPx);
        const first = best(views.slice(0, at), one, gapPx, legibility);
        if (first.score < found.score) continue;
        const second = best(views.slice(at), other, gapPx, legibility);
        const score = first.score + second.score;
        if (score > found.score) found = { placed: [...first.placed, ...second.placed], score };
      }
  return found;
}

/** Four views are cut thrice: fewer shares keep the number of ways small. */
const sharesFor = (views: number): readonly number[] =>
  views < 4 ? SHARES : SHARES.filter((_, index) => index !== 0 && index !== 8 && index !== 4);

function halves(box: Box, across: boolean, share: number, gapPx: number): [Box, Box] {
  const { x, y, widthPx, heightPx } = box;
  if (across) {
    const first = (widthPx - gapPx) * share;
    const rest = widthPx - gapPx - first;
    return [
      { ...box, widthPx: first },
      { ...box, x: x + first + gapPx, widthPx: rest },
    ];
  }
  const first = (heightPx - gapPx) * share;
  const rest = heightPx - gapPx - first;
  return [
    { ...box, heightPx: first },
    { ...box, y: y + first + gapPx, heightPx: rest },
  ];
}
