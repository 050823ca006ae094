/** The open tool's sheet. Each comes with its first opening, so that the bench itself stays small. */

import type { ComponentType, JSX } from "preact";
import { useEffect, useState } from "preact/hooks";
import type { LatLon } from "../../earth/index.ts";
import type { ChartHold } from "../chart/chart-hold.ts";
import { panned, projectionOf } from "../chart/chart-window.ts";
import type { Bench } from "../state/bench.ts";
import { freeMiddle, isInSight } from "./free-paper.ts";
import { chooseTool, type Tool, type ToolState } from "./tool-state.ts";

export interface ChartToolSheetsProps {
  readonly bench: Bench;
  readonly tools: ToolState;
  readonly hold: ChartHold;
  /** Whether the chart is to be seen, so that a place can be picked on it. */
  readonly chartSeen: boolean;
}

/** What a sheet is given. */
export interface SheetProps {
  readonly bench: Bench;
  readonly tools: ToolState;
  readonly chartSeen: boolean;
  /** The middle of the chart as it is seen; null before it has been laid out. */
  readonly middle: () => LatLon | null;
  /** Brings a place into sight where it is not, without a change of scale. */
  readonly onShow: (place: LatLon) => void;
  /** Goes to a place, with so many miles across. */
  readonly onGoTo: (place: LatLon, widthNm: number) => void;
}

const SHEETS: Readonly<Record<Tool, () => Promise<ComponentType<SheetProps>>>> = {
  stations: async () => (await import("../catalogue/stations-sheet.tsx")).StationsSheet,
  measure: async () => (await import("./measure-sheet.tsx")).MeasureSheet,
  place: async () => (await import("./place-sheet.tsx")).PlaceSheet,
  signal: async () => (await import("../signal/signal-sheet.tsx")).SignalSheet,
};

export function ChartToolSheets({ bench, tools, hold, chartSeen }: ChartToolSheetsProps): JSX.Element | null {
  const open = tools.open.value;
  const [loaded, setLoaded] = useState<Partial<Record<Tool, ComponentType<SheetProps>>>>({});
  useEffect(() => {
    if (open === null || loaded[open] !== undefined) return;
    SHEETS[open]().then(
      (sheet) => setLoaded((others) => ({ ...others, [open]: sheet })),
      // The part could not be fetched: the button springs back, to be pressed again.
      () => chooseTool(tools, null),
    );
  }, [open]);
  const Sheet = open === null ? undefined : loaded[open];
  if (Sheet === undefined) return null;
  const goTo = (place: LatLon, widthNm: number) => {
    const now = hold.now.current;
    if (now === null) return;
    const { size } = now;
    const middle = { x: size.widthPx / 2, y: size.heightPx / 2 };
    hold.move(panned({ centre: place, widthNm }, size, middle, freeMiddle(size)));
  };
  const show = (place: LatLon) => {
    const now = hold.now.current;
    if (now === null) return;
    const { view, size } = now;
    if (!isInSight(projectionOf(view, size).toPaper(place), size)) goTo(place, view.widthNm);
  };
  const middleSeen = (): LatLon | null => {
    const now = hold.now.current;
    if (now === null) return null;
    const { x, y } = freeMiddle(now.size);
    return projectionOf(now.view, now.size).toWorld(x, y);
  };
  return (
    <Sheet key={open} {...{ bench, tools, chartSeen }} middle={middleSeen} onShow={show} onGoTo={goTo} />
  );
}
