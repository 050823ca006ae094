/** Whatever asks for print, the browser's own menu too, gets the sheet that is made for paper and not the bench with its knobs. */

import { useEffect, useRef } from "preact/hooks";
import type { Shown } from "./shown.ts";

type Printer = typeof import("./print-sheet.ts");

/** By then the page has long been in use, and what print takes is fetched without being waited for. */
const FETCH_AFTER_MS = 6_000;

let printer: Printer | null = null;

async function loaded(): Promise<Printer> {
  printer ??= await import("./print-sheet.ts");
  return printer;
}

/** Gives what prints at once. `shown` is null while there is no scene on the screen: then the page is printed as it is. */
export function usePrint(shown: () => Shown | null): () => void {
  // The listeners stay, and read what was drawn last.
  const now = useRef(shown);
  now.current = shown;
  useEffect(() => {
    // Without a connection the first print is of the page as it is.
    const timer = setTimeout(() => void loaded().catch(() => null), FETCH_AFTER_MS);
    const before = () => {
      const scene = now.current();
      if (scene !== null) printer?.layPrintSheet(scene);
    };
    const after = () => printer?.takePrintSheetAway();
    addEventListener("beforeprint", before);
    addEventListener("afterprint", after);
    return () => {
      clearTimeout(timer);
      removeEventListener("beforeprint", before);
      removeEventListener("afterprint", after);
    };
  }, []);
  const printNow = () => print();
  return () => void loaded().then(printNow, printNow);
}
