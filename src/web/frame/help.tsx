/** The button and the key for the help sheet, which is fetched when it is first wanted. */

import type { Signal } from "@preact/signals";
import type { FunctionComponent, JSX } from "preact";
import { useEffect, useState } from "preact/hooks";
import type { HelpSheetProps } from "./help-sheet.tsx";

export interface HelpProps {
  readonly singleKeys: Signal<boolean>;
}

export function Help({ singleKeys }: HelpProps): JSX.Element {
  const [wanted, setWanted] = useState(false);
  const [sheet, setSheet] = useState<{ readonly Sheet: FunctionComponent<HelpSheetProps> } | null>(null);
  const open = () => {
    setWanted(true);
    void import("./help-sheet.tsx").then(({ HelpSheet }) => setSheet({ Sheet: HelpSheet }));
  };
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      const typing =
        event.target instanceof Element && event.target.closest("input, select, textarea, dialog");
      if (event.key !== "?" || event.ctrlKey || event.metaKey || event.altKey || typing !== null) return;
      event.preventDefault();
      open();
    };
    addEventListener("keydown", onKey);
    return () => removeEventListener("keydown", onKey);
  }, []);
  return (
    <>
      <button type="button" class="button" aria-keyshortcuts="?" onClick={open}>
        Help
      </button>
      {wanted && sheet !== null ? (
        <sheet.Sheet singleKeys={singleKeys} onClose={() => setWanted(false)} />
      ) : null}
    </>
  );
}
