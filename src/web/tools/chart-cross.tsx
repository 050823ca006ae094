/** A cross on the chart, moved by arrow keys where a hand would point. It is seen while it has the focus. */

import type { JSX } from "preact";
import type { ChartSize } from "../chart/chart-window.ts";
import type { ScreenPoint } from "../input/turn.ts";

export const CROSS_ID = "chart-cross";

/** How far one press moves it, px: with Shift far, with Alt finely. */
const stepPx = (event: KeyboardEvent): number => (event.shiftKey ? 50 : event.altKey ? 1 : 10);

const ARROWS: Readonly<Record<string, ScreenPoint>> = {
  ArrowUp: { x: 0, y: -1 },
  ArrowDown: { x: 0, y: 1 },
  ArrowLeft: { x: -1, y: 0 },
  ArrowRight: { x: 1, y: 0 },
};

export interface ChartCrossProps {
  readonly at: ScreenPoint;
  readonly size: ChartSize;
  /** What it is for and where it is, in words. */
  readonly label: string;
  readonly onMove: (to: ScreenPoint) => void;
  readonly onTake: () => void;
  readonly onCancel: () => void;
}

export function ChartCross({ at, size, label, onMove, onTake, onCancel }: ChartCrossProps): JSX.Element {
  const onKey = (event: KeyboardEvent) => {
    if (event.ctrlKey || event.metaKey) return;
    const way = ARROWS[event.key];
    if (way !== undefined)
      onMove({
        x: within(at.x + way.x * stepPx(event), size.widthPx),
        y: within(at.y + way.y * stepPx(event), size.heightPx),
      });
    else if (event.key === "Enter" || event.key === " ") onTake();
    else if (event.key === "Escape") onCancel();
    else return;
    event.preventDefault();
    event.stopPropagation();
  };
  return (
    <button
      type="button"
      id={CROSS_ID}
      class="chart-cross"
      style={{ transform: `translate(${at.x}px, ${at.y}px)` }}
      aria-label={label}
      onKeyDown={onKey}
    />
  );
}

const within = (value: number, most: number): number => Math.max(0, Math.min(most, value));
