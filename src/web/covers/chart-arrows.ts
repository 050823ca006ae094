/** Arrow keys on a thing that lies on the chart: which way each moves it, and how far. */

import { type TrueDeg, trueDeg } from "../../earth/index.ts";

export const CHART_ARROWS: Readonly<Record<string, TrueDeg>> = {
  ArrowUp: trueDeg(0),
  ArrowRight: trueDeg(90),
  ArrowDown: trueDeg(180),
  ArrowLeft: trueDeg(270),
};

/** NM: a small step by default, far with Shift, finely with Alt. */
export const chartStepNm = (event: KeyboardEvent): number => (event.shiftKey ? 5 : event.altKey ? 0.1 : 0.5);
