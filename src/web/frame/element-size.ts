/** How large a part of the page is, kept up to date. */

import type { RefObject } from "preact";
import { useLayoutEffect, useState } from "preact/hooks";

export interface ElementSize {
  readonly widthPx: number;
  readonly heightPx: number;
}

/** Whole pixels; null until the page has been laid out. */
export function useElementSize(element: RefObject<HTMLElement | null>): ElementSize | null {
  const [size, setSize] = useState<ElementSize | null>(null);
  useLayoutEffect(() => {
    const watched = element.current;
    if (watched === null) return;
    const measure = () => {
      const widthPx = Math.floor(watched.clientWidth);
      const heightPx = Math.floor(watched.clientHeight);
      setSize((before) =>
        before?.widthPx === widthPx && before.heightPx === heightPx ? before : { widthPx, heightPx },
      );
    };
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(watched);
    return () => observer.disconnect();
  }, [element]);
  return size !== null && size.widthPx > 0 && size.heightPx > 0 ? size : null;
}
