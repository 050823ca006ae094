/** Puts a note away at the next press anywhere, or by Escape: until then it may be read in peace. */

import { useEffect } from "preact/hooks";

export function useClearedByNextPress(shown: boolean, clear: () => void): void {
  useEffect(() => {
    if (!shown) return;
    const onKey = (event: KeyboardEvent) => {
      if (event.key === "Escape") clear();
    };
    addEventListener("pointerdown", clear, true);
    addEventListener("keydown", onKey, true);
    return () => {
      removeEventListener("pointerdown", clear, true);
      removeEventListener("keydown", onKey, true);
    };
  });
}
