/** The hand that measures: a press and a drag from one end to the other, or two presses. Pointer places in, ends out. */

import type { ChartProjection } from "../../draw/index.ts";
import type { Scene } from "../../scene/index.ts";
import { followPointer } from "../input/drag.ts";
import type { ScreenPoint } from "../input/turn.ts";
import { snappedEnd } from "./snap.ts";
import type { ToolState } from "./tool-state.ts";

/** A press that moves less than this is a press, not a drag, px. */
const DRAG_FROM_PX = 5;

export interface MeasuredChart {
  readonly scene: Scene;
  readonly projection: ChartProjection;
  /** Where the paper is on the screen. */
  readonly paper: DOMRect;
}

/** Call it from `pointerdown`. `read` gives the chart as it stands at each move, for it may be brought nearer meanwhile. */
export function measureFrom(press: PointerEvent, tools: ToolState, read: () => MeasuredChart | null): void {
  const endAt = (hand: ScreenPoint) => {
    const chart = read();
    if (chart === null) return null;
    const point = { x: hand.x - chart.paper.left, y: hand.y - chart.paper.top };
    return snappedEnd(point, chart.scene, chart.projection);
  };
  const pressed = { x: press.clientX, y: press.clientY };
  const here = endAt(pressed);
  if (here === null) return;
  const before = tools.firstEnd.value;
  if (before !== null) tools.measure.value = { from: before, to: here };
  let dragged = false;
  followPointer(press, (hand) => {
    dragged ||= Math.hypot(hand.x - pressed.x, hand.y - pressed.y) >= DRAG_FROM_PX;
    const to = dragged ? endAt(hand) : null;
    if (to !== null) tools.measure.value = { from: before ?? here, to };
  });
  const element = press.currentTarget;
  if (!(element instanceof Element)) return;
  const onEnd = (event: Event) => {
    if (!(event instanceof PointerEvent) || event.pointerId !== press.pointerId) return;
    for (const name of ENDS) element.removeEventListener(name, onEnd);
    const waits = before === null && !dragged && event.type === "pointerup";
    tools.firstEnd.value = waits ? here : null;
    if (waits) tools.measure.value = null;
  };
  for (const name of ENDS) element.addEventListener(name, onEnd);
}

const ENDS = ["pointerup", "pointercancel"] as const;
