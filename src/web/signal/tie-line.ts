/**
 * One angle in three places: while the signal is pointed at, or a step of the argument lights the radial, a fine line leads from the phase
 * to the radial on the chart and to the needle on the panel. It is drawn over the page and is nothing to be touched; with any cover in the
 * scene there is none, since it would tell where what is covered stands.
 */

import { effect } from "@preact/signals";
import type { Bench } from "../state/bench.ts";

const SVG = "http://www.w3.org/2000/svg";

interface Point {
  readonly x: number;
  readonly y: number;
}

/** Where the angle stands now: in the signal's view, on the chart, on the panel; those in sight. */
function ends(
  section: Element,
  receiver: string,
): { readonly from: Point | null; readonly to: readonly Point[] } {
  const name = CSS.escape(receiver);
  const to = [
    [`.chart-sheet [data-part="radial"][data-receiver="${name}"]`, ".chart-sheet"],
    [`.receiver-body[data-receiver="${name}"] [data-part="needle"]`, ".sheet.panel"],
  ].flatMap(([part = "", sheet = ""]) => {
    const point = middleOf(document.querySelector(part), document.querySelector(sheet));
    return point === null ? [] : [point];
  });
  const phase = section.querySelector('[data-part="radial"], [data-shade="radial"]');
  return { from: middleOf(phase, section), to };
}

/** The middle of what is drawn, where it lies on its sheet. */
function middleOf(part: Element | null, sheet: Element | null): Point | null {
  const box = part?.getBoundingClientRect();
  const around = sheet?.getBoundingClientRect();
  if (box === undefined || around === undefined) return null;
  const at = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
  const inside = at.x > around.left && at.x < around.right && at.y > around.top && at.y < around.bottom;
  return inside ? at : null;
}

/** Ties the signal's view to chart and panel until it is ended. */
export function tieLine(section: HTMLElement, bench: Bench): () => void {
  const svg = document.createElementNS(SVG, "svg");
  svg.setAttribute("class", "tie-line");
  svg.setAttribute("aria-hidden", "true");
  const path = document.createElementNS(SVG, "path");
  svg.append(path);
  let frame = 0;
  const draw = () => {
    frame = 0;
    const lit = bench.lit.peek()?.parts.includes("radial") ?? false;
    const shown =
      (section.matches(":hover, :has(:focus-visible)") || lit) && bench.scene.peek().covers.length === 0;
    const { from, to } = shown ? ends(section, bench.attended.peek()) : { from: null, to: [] };
    if (from === null || to.length === 0) {
      svg.remove();
      return;
    }
    path.setAttribute("d", to.map(({ x, y }) => `M${from.x} ${from.y}L${x} ${y}`).join(""));
    if (!svg.isConnected) document.body.append(svg);
  };
  // After the pictures of this moment have been drawn.
  const later = () => {
    if (frame === 0) frame = requestAnimationFrame(draw);
  };
  const unfollow = effect(() => {
    bench.situation.value;
    bench.lit.value;
    bench.attended.value;
    later();
  });
  const events = ["pointerenter", "pointerleave", "focusin", "focusout"] as const;
  for (const kind of events) section.addEventListener(kind, later);
  addEventListener("resize", later);
  return () => {
    unfollow();
    cancelAnimationFrame(frame);
    for (const kind of events) section.removeEventListener(kind, later);
    removeEventListener("resize", later);
    svg.remove();
  };
}
