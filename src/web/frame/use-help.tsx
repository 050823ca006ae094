/** The help sheet, by its key or by a button; fetched when it is first wanted. */

import type { Signal } from "@preact/signals";
import type { FunctionComponent, JSX } from "preact";
import { useEffect, useState } from "preact/hooks";
import type { HelpSheetProps } from "./help-sheet.tsx";

export interface Help {
  readonly ask: () => void;
  /** Null while it is not wanted. */
  readonly sheet: JSX.Element | null;
}

export function useHelp(singleKeys: Signal<boolean>): Help {
  const [wanted, setWanted] = useState(false);
  const [loaded, setLoaded] = useState<{ readonly Sheet: FunctionComponent<HelpSheetProps> } | null>(null);
  const ask = () => {
    setWanted(true);
    void import("./help-sheet.tsx").then(({ HelpSheet }) => setLoaded({ Sheet: HelpSheet }));
  };
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (event.key !== "?" || event.ctrlKey || event.metaKey || event.altKey || isTypedInto(event)) return;
      event.preventDefault();
      ask();
    };
    addEventListener("keydown", onKey);
    return () => removeEventListener("keydown", onKey);
  }, []);
  const sheet =
    wanted && loaded !== null ? (
      <loaded.Sheet singleKeys={singleKeys} onClose={() => setWanted(false)} />
    ) : null;
  return { ask, sheet };
}

const isTypedInto = ({ target }: KeyboardEvent): boolean =>
  target instanceof Element && target.closest("input, select, textarea, dialog") !== null;
