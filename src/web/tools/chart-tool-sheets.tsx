/** The open tool's sheet. Each comes with its first opening, so that the bench itself stays small. */

import type { ComponentType, JSX } from "preact";
import { useEffect, useState } from "preact/hooks";
import type { LatLon } from "../../earth/index.ts";
import type { ChartHold } from "../chart/chart-hold.ts";
import { projectionOf } from "../chart/chart-window.ts";
import type { Bench } from "../state/bench.ts";
import { chooseTool, type Tool, type ToolState } from "./tool-state.ts";

export interface ChartToolSheetsProps {
  readonly bench: Bench;
  readonly tools: ToolState;
  readonly hold: ChartHold;
}

/** What a sheet is given. */
export interface SheetProps {
  readonly bench: Bench;
  readonly tools: ToolState;
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
};

/** A place this near the sheet's edge does not count as in sight, px. */
const EDGE_PX = 40;

export function ChartToolSheets({ bench, tools, hold }: ChartToolSheetsProps): JSX.Element | null {
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
  const show = (place: LatLon) => {
    const now = hold.now.current;
    if (now === null) return;
    const { view, size } = now;
    const { x, y } = projectionOf(view, size).toPaper(place);
    const inside = x > EDGE_PX && x < size.widthPx - EDGE_PX && y > EDGE_PX && y < size.heightPx - EDGE_PX;
    if (!inside) hold.move({ ...view, centre: place });
  };
  return (
    <Sheet
      key={open}
      bench={bench}
      tools={tools}
      middle={() => hold.now.current?.view.centre ?? null}
      onShow={show}
      onGoTo={(centre, widthNm) => hold.move({ centre, widthNm })}
    />
  );
}
