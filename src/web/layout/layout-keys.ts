/**
 * Keys for the table, pressed anywhere but in a text: 1 to 4 choose a view, with Shift put it away or bring it back; E enlarges the
 * chosen one, P projects, Q goes to practice, Escape shrinks back and ends projecting.
 */

import { useEffect } from "preact/hooks";
import { VIEWS, type View } from "../../scene/index.ts";
import type { Layout } from "./layout-state.ts";

/** A key that is being typed, or that belongs to what lies over the table. */
function isElsewhere({ target }: KeyboardEvent): boolean {
  if (!(target instanceof Element)) return false;
  return target.closest("input, select, textarea, [contenteditable], dialog[open], [popover]") !== null;
}

/** An open menu takes Escape for itself; what is unfolded under the chart does not. */
const isMenuOpen = (): boolean =>
  document.querySelector('.bench [aria-expanded="true"]:not(.motion *)') !== null;

/** Gives the focus to the view, so that the next Tab goes on inside it. */
function focusView(view: View): void {
  const sheet = document.querySelector(`.view[data-view="${view}"]`);
  const target = sheet?.querySelector('[role="application"], section[tabindex]');
  if (target instanceof HTMLElement) target.focus();
}

export function useLayoutKeys(layout: Layout, goPractise: () => void): void {
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (event.ctrlKey || event.metaKey || event.altKey || event.defaultPrevented) return;
      if (isElsewhere(event)) return;
      if (event.key === "Escape") {
        if (!isMenuOpen()) stepBack(layout);
        return;
      }
      // By the key's place: with Shift a digit's key writes another sign.
      const view = VIEWS[Number(/^Digit([1-4])$/.exec(event.code)?.[1]) - 1];
      if (view !== undefined) {
        if (event.shiftKey) layout.toggleShown(view);
        else {
          layout.choose(view);
          requestAnimationFrame(() => focusView(view));
        }
      } else if (event.key === "e" || event.key === "E") layout.toggleEnlarged(layout.chosen.value);
      else if (event.key === "p" || event.key === "P")
        layout.setPreset(layout.preset.value === "project" ? "prepare" : "project");
      else if (event.key === "q" || event.key === "Q") goPractise();
      else return;
      event.preventDefault();
    };
    addEventListener("keydown", onKey);
    return () => removeEventListener("keydown", onKey);
  }, [layout, goPractise]);
}

function stepBack(layout: Layout): void {
  const { enlarged } = layout.arrangement.value;
  if (enlarged !== null) layout.toggleEnlarged(enlarged);
  else layout.setPreset("prepare");
}
