/**
 * The chart as a sheet on the table: the picture, the hands on the aircraft, and the ground that is dragged and brought nearer.
 * While nobody moved the view it frames the scene as it was opened.
 */

import type { ReadonlySignal } from "@preact/signals";
import type { ComponentChildren, JSX } from "preact";
import { useEffect, useMemo, useRef } from "preact/hooks";
import { type ChartView, fitView, type Theme, type TrailPoint } from "../../draw/index.ts";
import { isCovered } from "../../scene/index.ts";
import { useWorldLand } from "../catalogue/world-outlines.ts";
import { GuessOnChart } from "../covers/guess-on-chart.tsx";
import { fieldLayer } from "../field/field-on-bench.tsx";
import type { FieldState } from "../field/field-state.ts";
import { useElementSize } from "../frame/element-size.ts";
import type { Bench } from "../state/bench.ts";
import { ChartToolLayer } from "../tools/chart-tool-layer.tsx";
import type { ToolState } from "../tools/tool-state.ts";
import { AircraftHands } from "./aircraft-hands.tsx";
import type { ChartHold } from "./chart-hold.ts";
import { ChartPicture } from "./chart-picture.tsx";
import { ZOOM_STEP } from "./chart-tools.tsx";
import { type ChartSize, panned, projectionOf } from "./chart-window.ts";
import { listenToGround } from "./ground-gestures.ts";

export interface ChartSheetProps {
  readonly bench: Bench;
  readonly hold: ChartHold;
  readonly theme: Theme;
  /** 1 on a screen, up to 2 when projecting. */
  readonly typeScale: number;
  /** Where the aircraft has flown. */
  readonly trail: ReadonlySignal<readonly TrailPoint[]>;
  readonly tools: ToolState;
  readonly field: FieldState;
  readonly onMoved: () => void;
  /** Laid over the chart. */
  readonly children: ComponentChildren;
}

const PAN_STEP_PX = 60;

export function ChartSheet(props: ChartSheetProps): JSX.Element {
  const { bench, hold, theme, typeScale, trail, tools, field, onMoved, children } = props;
  const ground = useRef<HTMLDivElement>(null);
  const size = useElementSize(ground);
  const toFrame = bench.situationAsOpened.value;
  const fitted = useMemo(
    () => (size === null ? null : fitView(toFrame, size.widthPx, size.heightPx, typeScale)),
    [toFrame, size, typeScale],
  );
  const view = hold.chosen.value ?? fitted;
  hold.now.current = view === null || size === null ? null : { view, size };
  const ready = hold.now.current !== null;
  useEffect(() => {
    if (!ready || ground.current === null) return;
    return listenToGround(ground.current, {
      read: () => {
        if (hold.now.current === null) throw new Error("the chart has no view yet");
        return hold.now.current;
      },
      move: hold.move,
    });
  }, [ready, hold]);

  const onKey = (event: KeyboardEvent) => {
    if (event.ctrlKey || event.metaKey || hold.now.current === null) return;
    const pan = PAN_KEYS[event.key];
    if (pan !== undefined && event.target === ground.current) {
      const { view: from, size: on } = hold.now.current;
      const middle = { x: on.widthPx / 2, y: on.heightPx / 2 };
      const to = { x: middle.x + pan.x * PAN_STEP_PX, y: middle.y + pan.y * PAN_STEP_PX };
      hold.move(panned(from, on, middle, to));
    } else if (event.key === "+" || event.key === "=") hold.zoom(ZOOM_STEP);
    else if (event.key === "-") hold.zoom(1 / ZOOM_STEP);
    else if (event.key === "0") hold.fit();
    else return;
    event.preventDefault();
  };
  return (
    <section class="sheet chart-sheet" aria-label="Chart">
      <div
        ref={ground}
        class="chart-ground"
        role="application"
        // biome-ignore lint/a11y/noNoninteractiveTabindex: arrow keys pan the chart, so it must take the focus
        tabIndex={0}
        aria-label="Chart ground: arrow keys pan, plus and minus zoom, 0 shows the whole scene"
        onKeyDown={onKey}
      >
        {view === null || size === null ? null : (
          <>
            <Pictured
              bench={bench}
              theme={theme}
              typeScale={typeScale}
              view={view}
              size={size}
              trail={trail}
              field={field}
              paper={() => ground.current?.getBoundingClientRect() ?? null}
              onMoved={onMoved}
            />
            <ChartToolLayer
              bench={bench}
              tools={tools}
              view={view}
              size={size}
              theme={theme}
              typeScale={typeScale}
              ground={() => ground.current}
            />
          </>
        )}
      </div>
      {children}
    </section>
  );
}

const PAN_KEYS: Readonly<Record<string, { readonly x: number; readonly y: number }>> = {
  ArrowUp: { x: 0, y: 1 },
  ArrowDown: { x: 0, y: -1 },
  ArrowLeft: { x: 1, y: 0 },
  ArrowRight: { x: -1, y: 0 },
};

interface PicturedProps {
  readonly bench: Bench;
  readonly theme: Theme;
  readonly typeScale: number;
  readonly view: ChartView;
  readonly size: ChartSize;
  readonly trail: ReadonlySignal<readonly TrailPoint[]>;
  readonly field: FieldState;
  readonly paper: () => DOMRect | null;
  readonly onMoved: () => void;
}

/** The picture with the hands on it. */
function Pictured(props: PicturedProps): JSX.Element {
  const { bench, theme, typeScale, view, size, trail, field, paper, onMoved } = props;
  const situation = bench.situation.value;
  const projection = useMemo(() => projectionOf(view, size), [view, size]);
  const { covers } = situation.scene;
  const world = useWorldLand(view, size, situation.scene.land);
  const handsOff = isCovered(covers, null, "aircraft") || isCovered(covers, null, "chart");
  return (
    <>
      <ChartPicture
        situation={situation}
        view={view}
        size={size}
        theme={theme}
        typeScale={typeScale}
        lit={bench.lit.value}
        receiver={bench.attended.value}
        trail={trail.value}
        world={world}
        overGround={fieldLayer(field, { scene: situation.scene, view, ...size, theme })}
      />
      {handsOff ? null : (
        <AircraftHands
          bench={bench}
          situation={situation}
          projection={projection}
          typeScale={typeScale}
          paper={paper}
          onMoved={onMoved}
        />
      )}
      <GuessOnChart bench={bench} projection={projection} paper={paper} />
    </>
  );
}
