/** Which tool lies on the chart, and what has been measured with it. None of it is part of the scene. */

import { type Signal, signal } from "@preact/signals";
import type { LatLon } from "../../earth/index.ts";
import type { Measure, MeasureEnd } from "./measured.ts";

/** In the row above the chart. */
export const TOOLS = ["stations", "measure", "place"] as const;
export type ChartTool = (typeof TOOLS)[number];
/** The signal's is opened from its own view. */
export type Tool = ChartTool | "signal";

/** What a press on the chart gives to the one who asked for a place. */
export interface PlaceWanted {
  /** What is wanted, for the cross under the hand: "where the station stands". */
  readonly words: string;
  readonly give: (place: LatLon) => void;
}

export interface ToolState {
  readonly open: Signal<Tool | null>;
  readonly measure: Signal<Measure | null>;
  /** The first end, while the second is still looked for. */
  readonly firstEnd: Signal<MeasureEnd | null>;
  readonly wanted: Signal<PlaceWanted | null>;
  /** Ident of the station of one's own that is being changed; "" for a new one; null when none is. */
  readonly edited: Signal<string | null>;
}

export const createToolState = (): ToolState => ({
  open: signal<Tool | null>(null),
  measure: signal<Measure | null>(null),
  firstEnd: signal<MeasureEnd | null>(null),
  wanted: signal<PlaceWanted | null>(null),
  edited: signal<string | null>(null),
});

/** Opens a tool, or puts it away when it is the open one. What the other left lying on the chart goes. */
export function chooseTool(state: ToolState, tool: Tool | null): void {
  const next = state.open.value === tool ? null : tool;
  state.wanted.value = null;
  state.firstEnd.value = null;
  state.edited.value = null;
  if (next !== "measure") state.measure.value = null;
  state.open.value = next;
}
