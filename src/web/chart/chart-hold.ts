/** Which piece of the earth the chart shows, while a hand has chosen one, and what the chart's tools do to it. */

import { computed, type ReadonlySignal, signal } from "@preact/signals";
import { type ChartView, fitView } from "../../draw/index.ts";
import type { Bench } from "../state/bench.ts";
import { type ChartSize, projectionOf, zoomed } from "./chart-window.ts";

/** What the gestures read: the view as it stands, ahead of the next drawing, on a sheet of that size. */
export interface ChartNow {
  readonly view: ChartView;
  readonly size: ChartSize;
}

export interface ChartHold {
  /** The view chosen by hand for the scene on the bench; null while the chart frames the scene by itself. */
  readonly chosen: ReadonlySignal<ChartView | null>;
  /** Null until the chart is drawn. Written by the chart's sheet. */
  readonly now: { current: ChartNow | null };
  readonly move: (view: ChartView) => void;
  /** About the middle; above 1 comes nearer. */
  readonly zoom: (factor: number) => void;
  /** Frames the scene again. */
  readonly fit: () => void;
}

export function createChartHold(bench: Bench): ChartHold {
  const held = signal<{ readonly of: object; readonly view: ChartView } | null>(null);
  const chosen = computed(() => {
    const hold = held.value;
    return hold !== null && hold.of === bench.opened.value.asOpened ? hold.view : null;
  });
  const now: ChartHold["now"] = { current: null };
  const move = (view: ChartView) => {
    // Two wheel notches in a frame both count.
    if (now.current !== null) now.current = { ...now.current, view };
    held.value = { of: bench.opened.value.asOpened, view };
  };
  return {
    chosen,
    now,
    move,
    zoom: (factor) => {
      if (now.current === null) return;
      const { view, size } = now.current;
      move(zoomed(view, size, factor, { x: size.widthPx / 2, y: size.heightPx / 2 }));
    },
    fit: () => {
      held.value = null;
      const sheet = now.current?.size;
      if (sheet !== undefined && hasGoneElsewhere(bench, sheet))
        move(fitView(bench.situation.value, sheet.widthPx, sheet.heightPx));
    },
  };
}

/** Whether the frame of the scene as it was opened misses the scene as it is: other stations, or the aircraft off the sheet. */
function hasGoneElsewhere(bench: Bench, { widthPx, heightPx }: ChartSize): boolean {
  const { scene, asOpened } = bench.opened.value;
  if (scene.stations !== asOpened.stations) return true;
  const asFramed = fitView(bench.situationAsOpened.value, widthPx, heightPx);
  const { x, y } = projectionOf(asFramed, { widthPx, heightPx }).toPaper(scene.aircraft.position);
  return !(x >= 0 && x <= widthPx && y >= 0 && y <= heightPx);
}
