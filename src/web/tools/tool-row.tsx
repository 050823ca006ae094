/** The chart's tools in a row: stations, measure, place. Each opens its sheet, or puts it away. */

import type { JSX } from "preact";
import { type ChartTool, chooseTool, TOOLS, type ToolState } from "./tool-state.ts";

const WORDS: Readonly<Record<ChartTool, { readonly name: string; readonly title: string }>> = {
  stations: { name: "Stations", title: "Find a station by ident, name or frequency" },
  measure: { name: "Measure", title: "Measure bearing and distance (or drag with Shift held)" },
  place: { name: "Place", title: "Put the aircraft somewhere, or a station of your own" },
};

export function ToolRow({ tools }: { readonly tools: ToolState }): JSX.Element {
  const open = tools.open.value;
  return (
    <fieldset class="tool-row" aria-label="Chart tools">
      {TOOLS.map((tool) => (
        <button
          key={tool}
          id={`tool-${tool}`}
          type="button"
          title={WORDS[tool].title}
          aria-expanded={open === tool}
          aria-controls={open === tool ? "tool-sheet" : undefined}
          onClick={() => chooseTool(tools, tool)}
        >
          {WORDS[tool].name}
        </button>
      ))}
    </fieldset>
  );
}
