/** Control-S saves, Control-O opens, Control-P prints (Command on a Mac), wherever the focus is: as in every program with files. */

import { useEffect, useRef } from "preact/hooks";

/** Null leaves the keys to the browser. */
export interface FileKeys {
  readonly save: (() => void) | null;
  readonly open: (() => void) | null;
  readonly print: (() => void) | null;
}

export function useFileKeys(keys: FileKeys): void {
  // The listener stays, and calls what was drawn last.
  const now = useRef(keys);
  now.current = keys;
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (!(event.ctrlKey || event.metaKey) || event.altKey || event.shiftKey || event.repeat) return;
      const act = { s: now.current.save, o: now.current.open, p: now.current.print }[event.key.toLowerCase()];
      if (act === undefined || act === null) return;
      event.preventDefault();
      // A number being typed is taken first, as leaving its field takes it.
      if (document.activeElement instanceof HTMLInputElement) document.activeElement.blur();
      act();
    };
    addEventListener("keydown", onKey);
    return () => removeEventListener("keydown", onKey);
  }, []);
}
