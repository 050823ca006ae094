/** Says whether the receivers measure the signal, and opens its sheet; S does it from anywhere. */

import { useComputed } from "@preact/signals";
import type { JSX } from "preact";
import { useEffect } from "preact/hooks";
import type { SignalKind } from "../../radio/index.ts";
import { isCovered } from "../../scene/index.ts";
import type { Layout } from "../layout/layout-state.ts";
import type { Bench } from "../state/bench.ts";
import { chooseTool, type ToolState } from "../tools/tool-state.ts";

/** In the middle of a line. */
export const SIGNAL_KIND_NAMES: Readonly<Record<SignalKind, string>> = {
  conventional: "conventional",
  doppler: "Doppler",
};

export interface SignalButtonProps {
  readonly bench: Bench;
  readonly tools: ToolState;
  readonly layout: Layout;
  /** Where the focus goes when the sheet is put away. */
  readonly id?: string;
}

export function SignalButton({ bench, tools, layout, id }: SignalButtonProps): JSX.Element {
  const covered = useComputed(() => isCovered(bench.scene.value.covers, null, "signal")).value;
  const kind = useComputed(() => bench.scene.value.signal?.kind ?? null).value;
  const open = isSeen(tools, layout);
  const how = covered ? "" : `: ${kind === null ? "off" : SIGNAL_KIND_NAMES[kind]}`;
  return (
    <div class="tool-row signal-tool">
      <button
        id={id}
        type="button"
        title="What the receivers measure: kind of station, noise, reflectors, propeller (S)"
        aria-keyshortcuts="S"
        aria-expanded={open}
        aria-controls={open ? "tool-sheet" : undefined}
        onClick={() => chooseSignal(tools, layout)}
      >
        Measured{how}
      </button>
    </div>
  );
}

/** Whether the sheet is to be seen: on the chart or on the signal's view; on a phone among the tools. */
const isSeen = (tools: ToolState, layout: Layout): boolean =>
  tools.open.value === "signal" &&
  (layout.phone.value
    ? layout.phonePane.value === "tools"
    : layout.isSeen("chart") || layout.isSeen("signal"));

/** Opens the sheet where it can be seen, or puts it away. */
function chooseSignal(tools: ToolState, layout: Layout): void {
  if (isSeen(tools, layout)) {
    chooseTool(tools, null);
    return;
  }
  if (tools.open.value !== "signal") chooseTool(tools, "signal");
  if (layout.phone.value) layout.phonePane.value = "tools";
  else if (!isSeen(tools, layout)) layout.choose("chart");
}

/** Where an S is a letter, or belongs to something that lies over the table. */
const TYPING =
  "input:not([type=checkbox], [type=radio], [type=range]), select, textarea, [contenteditable], dialog[open]";

export function useSignalKey(tools: ToolState, layout: Layout): void {
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      const wanted = event.key.toLowerCase() === "s" && !(event.ctrlKey || event.metaKey || event.altKey);
      const typing = event.target instanceof Element && event.target.closest(TYPING) !== null;
      // A projected table has no tools.
      if (!wanted || typing || event.defaultPrevented || layout.preset.value === "project") return;
      event.preventDefault();
      chooseSignal(tools, layout);
    };
    addEventListener("keydown", onKey);
    return () => removeEventListener("keydown", onKey);
  }, [tools, layout]);
}
