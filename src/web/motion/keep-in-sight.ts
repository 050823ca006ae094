/** While time runs the chart goes on like the next sheet of an atlas when the aircraft comes to its edge. */

import { effect, untracked } from "@preact/signals";
import { type ChartView, chartProjection } from "../../draw/index.ts";
import type { LatLon } from "../../earth/index.ts";
import { isCovered } from "../../scene/index.ts";
import type { Bench } from "../state/bench.ts";
import type { Player } from "./player.ts";

/** The piece of the chart that is shown, and the hand that moves it. */
export interface Sight {
  readonly now: {
    readonly current: {
      readonly view: ChartView;
      readonly size: { readonly widthPx: number; readonly heightPx: number };
    } | null;
  };
  readonly move: (view: ChartView) => void;
}

/** So near to the edge of the sheet, as a part of its shorter side, the aircraft is about to leave it. */
const EDGE = 0.07;

/** The view that has the aircraft in the middle, where this one is about to lose it; null where it is well in sight. */
export function viewThatKeeps(now: NonNullable<Sight["now"]["current"]>, position: LatLon): ChartView | null {
  const { view, size } = now;
  const { widthPx, heightPx } = size;
  const { x, y } = chartProjection(view, widthPx, heightPx).toPaper(position);
  const edgePx = EDGE * Math.min(widthPx, heightPx);
  const inSight = x >= edgePx && x <= widthPx - edgePx && y >= edgePx && y <= heightPx - edgePx;
  return inSight ? null : { ...view, centre: position };
}

/** Keeps the flying aircraft on the sheet until the given clean-up is called. A covered aircraft is not followed: that would tell where it is. */
export function keepInSight({
  bench,
  player,
  sight,
}: {
  readonly bench: Bench;
  readonly player: Player;
  readonly sight: Sight;
}): () => void {
  return effect(() => {
    if (!player.playing.value) return;
    const { aircraft, covers } = bench.scene.value;
    if (isCovered(covers, null, "aircraft") || isCovered(covers, null, "chart")) return;
    untracked(() => {
      const now = sight.now.current;
      const next = now === null ? null : viewThatKeeps(now, aircraft.position);
      if (next !== null) sight.move(next);
    });
  });
}
