/** The digits choose among the options, 1 the first, wherever the focus is but in a text. */

import { useEffect, useRef } from "preact/hooks";
import { letterOf } from "./draft.ts";

export function useOptionKeys(count: number, onDraft: (draft: string) => void): void {
  const draft = useRef(onDraft);
  draft.current = onDraft;
  useEffect(() => {
    if (count === 0) return;
    const onKey = (event: KeyboardEvent) => {
      if (event.ctrlKey || event.metaKey || event.altKey || event.shiftKey) return;
      const { target } = event;
      if (target instanceof Element && target.closest("input:not([type=radio]), dialog[open]") !== null)
        return;
      const place = Number(event.key) - 1;
      if (!Number.isInteger(place) || place < 0 || place >= count) return;
      event.preventDefault();
      draft.current(letterOf(place));
      // So that Enter gives it.
      document.querySelectorAll<HTMLElement>(".practice-option input")[place]?.focus();
    };
    addEventListener("keydown", onKey);
    return () => removeEventListener("keydown", onKey);
  }, [count]);
}
