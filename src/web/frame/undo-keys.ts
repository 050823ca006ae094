/** Control-Z (or Command-Z) and its opposite, wherever the focus is, except in a text being typed. */

import { useEffect } from "preact/hooks";
import type { Bench } from "../state/bench.ts";

export function useUndoKeys(bench: Bench): void {
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (!(event.ctrlKey || event.metaKey) || event.altKey) return;
      if (event.target instanceof HTMLInputElement) return;
      const key = event.key.toLowerCase();
      const forward = key === "y" || (key === "z" && event.shiftKey);
      if (!forward && key !== "z") return;
      event.preventDefault();
      if (forward) bench.redo();
      else bench.undo();
    };
    addEventListener("keydown", onKey);
    return () => removeEventListener("keydown", onKey);
  }, [bench]);
}
