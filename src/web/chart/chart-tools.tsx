/** Nearer, farther, and the whole scene again. */

import type { JSX } from "preact";
import type { ChartHold } from "./chart-hold.ts";

export const ZOOM_STEP = 1.4;

export const ChartTools = ({ hold }: { readonly hold: ChartHold }): JSX.Element => (
  <div class="chart-tools">
    <button type="button" aria-label="Nearer" title="Nearer" onClick={() => hold.zoom(ZOOM_STEP)}>
      +
    </button>
    <button type="button" aria-label="Farther" title="Farther" onClick={() => hold.zoom(1 / ZOOM_STEP)}>
      −
    </button>
    <button type="button" title="Show the whole scene" onClick={hold.fit}>
      Fit
    </button>
  </div>
);
