/** Hands on the chart's ground: one drags the paper, two bring it nearer, the wheel too. One call a frame at most. */

import type { ChartView } from "../../draw/index.ts";
import { onceAFrame } from "../input/drag.ts";
import type { ScreenPoint } from "../input/turn.ts";
import { type ChartSize, panned, zoomed } from "./chart-window.ts";

/** What the gestures move: the view as it stands, and where it goes. */
export interface MovableView {
  readonly read: () => { readonly view: ChartView; readonly size: ChartSize };
  readonly move: (view: ChartView) => void;
}

/** A wheel notch of 100 px comes nearer by a fifth. */
const WHEEL_PX_PER_E_FOLD = 540;
/** One report may not leap, whatever the wheel says, px. */
const LARGEST_WHEEL_PX = 240;

/** Listens on the ground until the given clean-up is called. Presses on what lies on the ground are left alone. */
export function listenToGround(ground: HTMLElement, moves: MovableView): () => void {
  const fingers = new Map<number, ScreenPoint>();
  let before: { readonly middle: ScreenPoint; readonly spreadPx: number } | null = null;

  const onPaper = (event: MouseEvent): ScreenPoint => {
    const box = ground.getBoundingClientRect();
    return { x: event.clientX - box.left - ground.clientLeft, y: event.clientY - box.top - ground.clientTop };
  };
  const grip = () => {
    const [one, other] = [...fingers.values()];
    if (one === undefined) return null;
    if (other === undefined) return { middle: one, spreadPx: 0 };
    return {
      middle: { x: (one.x + other.x) / 2, y: (one.y + other.y) / 2 },
      spreadPx: Math.hypot(one.x - other.x, one.y - other.y),
    };
  };
  const drag = onceAFrame(() => {
    const now = grip();
    if (now === null || before === null) return;
    const { view, size } = moves.read();
    const moved = panned(view, size, before.middle, now.middle);
    const factor = now.spreadPx > 0 && before.spreadPx > 0 ? now.spreadPx / before.spreadPx : 1;
    before = now;
    moves.move(factor === 1 ? moved : zoomed(moved, size, factor, now.middle));
  });
  let wheelPx = 0;
  let wheelAt: ScreenPoint = { x: 0, y: 0 };
  const turn = onceAFrame(() => {
    const { view, size } = moves.read();
    const factor = Math.exp(-wheelPx / WHEEL_PX_PER_E_FOLD);
    wheelPx = 0;
    moves.move(zoomed(view, size, factor, wheelAt));
  });

  const onDown = (event: PointerEvent) => {
    if (event.target !== ground || (event.pointerType === "mouse" && event.button !== 0)) return;
    ground.setPointerCapture(event.pointerId);
    drag.flush();
    fingers.set(event.pointerId, onPaper(event));
    before = grip();
  };
  const onMove = (event: PointerEvent) => {
    if (!fingers.has(event.pointerId)) return;
    fingers.set(event.pointerId, onPaper(event));
    drag.offer(undefined);
  };
  const onUp = (event: PointerEvent) => {
    if (!fingers.has(event.pointerId)) return;
    drag.flush();
    fingers.delete(event.pointerId);
    before = grip();
  };
  const onWheel = (event: WheelEvent) => {
    event.preventDefault();
    const linePx = event.deltaMode === WheelEvent.DOM_DELTA_PIXEL ? 1 : 30;
    // A pinch on a trackpad comes as a wheel with Control held, in small steps.
    const pinch = event.ctrlKey ? 5 : 1;
    const px = event.deltaY * linePx * pinch;
    wheelPx += Math.max(-LARGEST_WHEEL_PX, Math.min(LARGEST_WHEEL_PX, px));
    wheelAt = onPaper(event);
    turn.offer(undefined);
  };
  ground.addEventListener("pointerdown", onDown);
  ground.addEventListener("pointermove", onMove);
  ground.addEventListener("pointerup", onUp);
  ground.addEventListener("pointercancel", onUp);
  ground.addEventListener("wheel", onWheel, { passive: false });
  return () => {
    ground.removeEventListener("pointerdown", onDown);
    ground.removeEventListener("pointermove", onMove);
    ground.removeEventListener("pointerup", onUp);
    ground.removeEventListener("pointercancel", onUp);
    ground.removeEventListener("wheel", onWheel);
  };
}
