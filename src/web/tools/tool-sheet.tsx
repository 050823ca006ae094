/** A tool's paper: beside the chart's corner on a table, under the chart on a phone. Escape puts it away. */

import type { ComponentChildren, JSX } from "preact";
import { useEffect, useRef } from "preact/hooks";
import { chooseTool, type Tool, type ToolState } from "./tool-state.ts";

export interface ToolSheetProps {
  readonly tools: ToolState;
  readonly tool: Tool;
  readonly title: string;
  readonly children: ComponentChildren;
}

export function ToolSheet({ tools, tool, title, children }: ToolSheetProps): JSX.Element {
  const sheet = useRef<HTMLElement>(null);
  useEffect(() => {
    sheet.current?.querySelector<HTMLElement>("[data-first]")?.focus({ preventScroll: true });
  }, []);
  // Opened by a key it has come from anywhere, and its button may be out of sight.
  const cameFrom = useRef(document.activeElement);
  const close = () => {
    chooseTool(tools, null);
    const button = document.getElementById(`tool-${tool}`);
    button?.focus();
    if (document.activeElement !== button && cameFrom.current instanceof HTMLElement)
      cameFrom.current.focus();
  };
  return (
    <section
      ref={sheet}
      id="tool-sheet"
      class="sheet tool-sheet"
      aria-labelledby="tool-title"
      data-tool={tool}
      onKeyDown={(event) => {
        if (event.key !== "Escape" || event.defaultPrevented) return;
        event.preventDefault();
        close();
      }}
    >
      <header class="tool-head">
        <h2 id="tool-title">{title}</h2>
        <button type="button" class="button" onClick={close}>
          Close
        </button>
      </header>
      {children}
    </section>
  );
}
