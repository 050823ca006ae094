/**
 * What the tools lay on the chart: the measured line, the hands on stations of one's own, and, while a tool waits for a place, a sheet
 * of glass that takes the presses. With Shift held a drag measures whatever tool is open.
 */

import type { JSX } from "preact";
import { useEffect, useMemo, useRef, useState } from "preact/hooks";
import { type ChartView, chartFrame, MeasureLine, type Theme } from "../../draw/index.ts";
import { latLonText } from "../../earth/index.ts";
import { isCovered } from "../../scene/index.ts";
import type { ChartSize } from "../chart/chart-window.ts";
import { useClearedByNextPress } from "../input/cleared-by-next-press.ts";
import type { ScreenPoint } from "../input/turn.ts";
import type { Bench } from "../state/bench.ts";
import { ChartCross } from "./chart-cross.tsx";
import { measureFrom } from "./measure-hands.ts";
import { endInScene, endWords, measured, measuredLines } from "./measured.ts";
import { snappedEnd } from "./snap.ts";
import { StationHands } from "./station-hands.tsx";
import { chooseTool, type ToolState } from "./tool-state.ts";

export interface ChartToolLayerProps {
  readonly bench: Bench;
  readonly tools: ToolState;
  readonly view: ChartView;
  readonly size: ChartSize;
  readonly theme: Theme;
  readonly typeScale: number;
  /** The chart's ground: the element that the layer lies in. */
  readonly ground: () => HTMLElement | null;
}

export function ChartToolLayer(props: ChartToolLayerProps): JSX.Element | null {
  const { bench, tools, view, size, theme, typeScale, ground } = props;
  const { scene } = bench.situation.value;
  const frame = useMemo(
    () => chartFrame({ view, ...size, theme, typeScale, idPrefix: "tools" }),
    [view, size, theme, typeScale],
  );
  const covered = isCovered(scene.covers, null, "chart");
  const glass = !covered && (tools.open.value === "measure" || tools.wanted.value !== null);
  const now = useRef({ scene, projection: frame.projection });
  now.current = { scene, projection: frame.projection };
  const read = () => {
    const paper = ground()?.getBoundingClientRect();
    return paper === undefined ? null : { ...now.current, paper };
  };
  const press = (event: PointerEvent) => {
    if (event.button !== 0 || !event.isPrimary) return;
    const wanted = tools.wanted.value;
    const chart = read();
    if (chart === null) return;
    if (wanted === null) return measureFrom(event, tools, read);
    const { left, top } = chart.paper;
    tools.wanted.value = null;
    wanted.give(chart.projection.toWorld(event.clientX - left, event.clientY - top));
  };
  useEffect(() => {
    const element = ground();
    if (element === null || covered) return;
    const onShiftPress = (event: PointerEvent) => {
      if (!event.shiftKey || event.button !== 0 || !event.isPrimary || tools.wanted.value !== null) return;
      event.stopImmediatePropagation();
      event.preventDefault();
      measureFrom(event, tools, read);
    };
    element.addEventListener("pointerdown", onShiftPress, true);
    return () => element.removeEventListener("pointerdown", onShiftPress, true);
  }, [covered]);
  // Measured in passing, without the tool: read it, and it goes with the next press.
  useClearedByNextPress(tools.measure.value !== null && tools.open.value !== "measure", () => {
    tools.measure.value = null;
  });
  if (covered) return null;
  return (
    <>
      {tools.open.value === "measure" ? null : (
        <StationHands bench={bench} tools={tools} projection={frame.projection} read={read} />
      )}
      {glass ? <Glass {...props} frame={frame} onPress={press} /> : null}
      <Measurement bench={bench} tools={tools} frame={frame} />
    </>
  );
}

type Frame = ReturnType<typeof chartFrame>;

/** The line and what it reads, above everything and in nobody's way. */
function Measurement(props: {
  readonly bench: Bench;
  readonly tools: ToolState;
  readonly frame: Frame;
}): JSX.Element | null {
  const { bench, tools, frame } = props;
  const { scene } = bench.situation.value;
  const first = tools.firstEnd.value;
  const reading = tools.measure.value && measured(tools.measure.value, scene);
  const alone = first && endInScene(first, scene);
  if (!reading && !alone) return null;
  return (
    <svg class="tool-picture" width={frame.widthPx} height={frame.heightPx} aria-hidden="true">
      {reading ? (
        <MeasureLine
          frame={frame}
          from={reading.from.place}
          to={reading.to.place}
          lines={measuredLines(reading)}
        />
      ) : alone ? (
        <MeasureLine frame={frame} from={alone.place} to={alone.place} lines={[]} />
      ) : null}
    </svg>
  );
}

interface GlassProps extends ChartToolLayerProps {
  readonly frame: Frame;
  readonly onPress: (event: PointerEvent) => void;
}

/** Takes the presses that would move the chart or the aircraft, and carries the cross for the keyboard. */
function Glass({ bench, tools, size, frame, onPress }: GlassProps): JSX.Element {
  const [cross, setCross] = useState<ScreenPoint>({ x: size.widthPx / 2, y: size.heightPx / 2 });
  const { scene } = bench.situation.value;
  const { projection } = frame;
  const wanted = tools.wanted.value;
  const endAt = (at: ScreenPoint) => snappedEnd(at, scene, projection);
  const moveCross = (to: ScreenPoint) => {
    setCross(to);
    const from = tools.firstEnd.value;
    if (wanted === null && from !== null) tools.measure.value = { from, to: endAt(to) };
  };
  const take = () => {
    if (wanted !== null) {
      tools.wanted.value = null;
      wanted.give(projection.toWorld(cross.x, cross.y));
      return;
    }
    const from = tools.firstEnd.value;
    if (from === null) {
      tools.measure.value = null;
      tools.firstEnd.value = endAt(cross);
    } else {
      tools.measure.value = { from, to: endAt(cross) };
      tools.firstEnd.value = null;
    }
  };
  const cancel = () => {
    if (wanted !== null) tools.wanted.value = null;
    else if (tools.measure.value === null && tools.firstEnd.value === null) chooseTool(tools, null);
    else {
      tools.measure.value = null;
      tools.firstEnd.value = null;
    }
  };
  const end = endInScene(endAt(cross), scene);
  const where = end === null ? latLonText(projection.toWorld(cross.x, cross.y)) : endWords(end);
  const what =
    wanted !== null
      ? `Cross for ${wanted.words}`
      : tools.firstEnd.value === null
        ? "Cross for the first end"
        : "Cross for the second end";
  return (
    <div class="tool-glass" onPointerDown={onPress}>
      <ChartCross
        at={cross}
        size={size}
        label={`${what}: at ${where}. Arrow keys move it, Enter takes it`}
        onMove={moveCross}
        onTake={take}
        onCancel={cancel}
      />
    </div>
  );
}
