/** Space plays and pauses, the period steps on and the comma back, ten seconds with Shift; wherever the focus is but in what takes these keys itself. */

import { useEffect } from "preact/hooks";
import type { Player } from "./player.ts";

/** What a key asks of the player; null for any other. */
export function motionKey(event: Pick<KeyboardEvent, "key">): "play" | -10 | -1 | 1 | 10 | null {
  switch (event.key) {
    case " ":
      return "play";
    case ".":
      return 1;
    case ",":
      return -1;
    // The same keys with Shift, on the keyboards that have them so.
    case ">":
    case ":":
      return 10;
    case "<":
    case ";":
      return -10;
    default:
      return null;
  }
}

/** Texts, lists and buttons; but the hands on the chart and what slides do nothing with these keys. */
const TAKES_KEYS =
  "input:not([type=range]), textarea, select, summary, a[href], [contenteditable], button:not(.hand)";

export function useMotionKeys(player: Player): void {
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (event.ctrlKey || event.metaKey || event.altKey || event.defaultPrevented) return;
      if (event.target instanceof Element && event.target.closest(TAKES_KEYS) !== null) return;
      const asked = motionKey(event);
      if (asked === null || document.querySelector("dialog[open]") !== null) return;
      event.preventDefault();
      if (asked !== "play") player.stepBy(asked);
      else if (event.repeat) return;
      else if (player.playing.value) player.pause();
      else player.play();
    };
    addEventListener("keydown", onKey);
    return () => removeEventListener("keydown", onKey);
  }, [player]);
}
