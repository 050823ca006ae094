/** A text once it has stopped changing: what a screen reader is told, and not every step on the way. */

import { useEffect, useState } from "preact/hooks";

const SETTLED_AFTER_MS = 700;

export function useSettled(text: string): string {
  const [settled, setSettled] = useState("");
  useEffect(() => {
    const timer = setTimeout(() => setSettled(text), SETTLED_AFTER_MS);
    return () => clearTimeout(timer);
  }, [text]);
  return settled;
}
