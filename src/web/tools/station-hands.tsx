/** Hands on the stations that are the scene's own: dragged or moved by arrow keys, and Enter changes one. */

import type { JSX } from "preact";
import { useEffect, useRef } from "preact/hooks";
import type { ChartProjection } from "../../draw/index.ts";
import { direct, type TrueDeg, trueDeg } from "../../earth/index.ts";
import type { Station } from "../../radio/index.ts";
import { listsLoaded, loadLists, publishedKeys } from "../catalogue/catalogue-state.ts";
import { ownStations } from "../catalogue/station-lists.ts";
import { followPointer } from "../input/drag.ts";
import type { Bench } from "../state/bench.ts";
import { newGesture, stepGesture } from "../state/gestures.ts";
import type { MeasuredChart } from "./measure-hands.ts";
import { chooseTool, type ToolState } from "./tool-state.ts";

export interface StationHandsProps {
  readonly bench: Bench;
  readonly tools: ToolState;
  readonly projection: ChartProjection;
  readonly read: () => MeasuredChart | null;
}

const ARROW_DIRECTIONS: Readonly<Record<string, TrueDeg>> = {
  ArrowUp: trueDeg(0),
  ArrowRight: trueDeg(90),
  ArrowDown: trueDeg(180),
  ArrowLeft: trueDeg(270),
};

/** How far one press moves a station, NM: as it moves the aircraft. */
const keyStepNm = (event: KeyboardEvent): number => (event.shiftKey ? 5 : event.altKey ? 0.1 : 0.5);

/** A press that moves less than this is a press, not a drag, px. */
const DRAG_FROM_PX = 4;

export function StationHands({ bench, tools, projection, read }: StationHandsProps): JSX.Element {
  const { stations, date } = bench.scene.value;
  useEffect(() => void loadLists(date), []);
  const own = listsLoaded.value ? ownStations(stations, publishedKeys.value) : [];
  return (
    <>
      {own.map((station) => (
        <StationHand key={station.ident} {...{ bench, tools, projection, read, station }} />
      ))}
    </>
  );
}

function StationHand(props: StationHandsProps & { readonly station: Station }): JSX.Element {
  const { bench, tools, projection, read, station } = props;
  const { ident } = station;
  const at = projection.toPaper(station.position);
  const justDragged = useRef(false);
  const edit = () => {
    if (tools.open.value !== "place") chooseTool(tools, "place");
    tools.edited.value = ident;
  };
  const drag = (press: PointerEvent) => {
    justDragged.current = false;
    const chart = read();
    if (press.button !== 0 || !press.isPrimary || chart === null) return;
    const gesture = newGesture();
    const { left, top } = chart.paper;
    const grabbed = { x: press.clientX - left - at.x, y: press.clientY - top - at.y };
    followPointer(press, (hand) => {
      const farPx = Math.hypot(hand.x - press.clientX, hand.y - press.clientY);
      justDragged.current ||= farPx >= DRAG_FROM_PX;
      // The sheet may have been brought nearer meanwhile.
      const now = read();
      if (!justDragged.current || now === null) return;
      const to = now.projection.toWorld(hand.x - left - grabbed.x, hand.y - top - grabbed.y);
      bench.act({ kind: "move-station", ident, to }, gesture);
    });
  };
  return (
    <button
      type="button"
      class="hand hand-station"
      style={{ transform: `translate(${at.x}px, ${at.y}px)` }}
      aria-label={`Station ${ident}, your own. Arrow keys move it half a mile, with Shift five miles; Enter changes it`}
      onPointerDown={drag}
      onClick={() => {
        if (!justDragged.current) edit();
      }}
      onKeyDown={(event) => {
        // The click that Enter makes is no drag's.
        if (event.key === "Enter" || event.key === " ") justDragged.current = false;
        const way = ARROW_DIRECTIONS[event.key];
        if (way === undefined || event.ctrlKey || event.metaKey) return;
        event.preventDefault();
        event.stopPropagation();
        const to = direct(station.position, way, keyStepNm(event));
        bench.act({ kind: "move-station", ident, to }, stepGesture(`station ${ident}`));
      }}
    />
  );
}
