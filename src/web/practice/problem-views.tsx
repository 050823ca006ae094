/** Chart and panel of a problem, to be looked at only: nothing on them can be turned or dragged to give the answer away. */

import type { JSX } from "preact";
import { useEffect, useMemo, useRef, useState } from "preact/hooks";
import { type ChartView, fitView, Panel, type Theme } from "../../draw/index.ts";
import { direct, type LatLon } from "../../earth/index.ts";
import type { Situation } from "../../scene/index.ts";
import { useWorldLand } from "../catalogue/world-outlines.ts";
import { ChartPicture } from "../chart/chart-picture.tsx";
import { panned, projectionOf, zoomed } from "../chart/chart-window.ts";
import { listenToGround } from "../chart/ground-gestures.ts";
import { CHART_ARROWS, chartStepNm } from "../covers/chart-arrows.ts";
import { listenForPlace } from "../covers/listen-for-place.ts";
import { useElementSize } from "../frame/element-size.ts";
import { frameWith, NARROWEST_PINS_NM, type Pin, Pins } from "./chart-pins.tsx";

export interface ProblemChartProps {
  readonly situation: Situation;
  readonly theme: Theme;
  readonly pins: readonly Pin[];
  /** Takes a place pointed at; null where no place is asked for. */
  readonly onPin: ((position: LatLon) => void) | null;
}

const NONE: readonly never[] = [];
const ZOOM_STEP = 1.4;
const PAN_STEP_PX = 60;
const PANS: Readonly<Record<string, { readonly x: number; readonly y: number }>> = {
  ArrowUp: { x: 0, y: 1 },
  ArrowDown: { x: 0, y: -1 },
  ArrowLeft: { x: 1, y: 0 },
  ArrowRight: { x: -1, y: 0 },
};

/** The paper can be moved and brought nearer. */
export function ProblemChart({ situation, theme, pins, onPin }: ProblemChartProps): JSX.Element {
  const ground = useRef<HTMLDivElement>(null);
  const size = useElementSize(ground);
  const lettered = pins.filter(({ letter }) => letter !== null);
  const fitted = useMemo(
    () =>
      size === null
        ? null
        : frameWith(fitView(situation, size.widthPx, size.heightPx), lettered, {
            size,
            leastNm: situation.receivers.length > 1 ? null : NARROWEST_PINS_NM,
          }),
    [situation, size, lettered.length],
  );
  const [held, setHeld] = useState<{ readonly of: Situation; readonly view: ChartView } | null>(null);
  const view = held?.of === situation ? held.view : fitted;
  const now = useRef({ view, size, onPin });
  now.current = { view, size, onPin };
  const move = (next: ChartView) => {
    now.current = { ...now.current, view: next };
    setHeld({ of: situation, view: next });
  };
  const ready = view !== null;
  useEffect(() => {
    const element = ground.current;
    if (!ready || element === null) return;
    const unlistenGround = listenToGround(element, {
      read: () => {
        const { view: from, size: on } = now.current;
        if (from === null || on === null) throw new Error("the chart has no view yet");
        return { view: from, size: on };
      },
      move,
    });
    const unlistenPlace = listenForPlace(element, ({ x, y }) => {
      const { view: from, size: on, onPin: take } = now.current;
      if (from !== null && on !== null) take?.(projectionOf(from, on).toWorld(x, y));
    });
    return () => {
      unlistenGround();
      unlistenPlace();
    };
  }, [ready, situation]);
  const zoom = (factor: number) => {
    const { view: from, size: on } = now.current;
    if (from !== null && on !== null)
      move(zoomed(from, on, factor, { x: on.widthPx / 2, y: on.heightPx / 2 }));
  };
  const pan = ({ x, y }: { readonly x: number; readonly y: number }) => {
    const { view: from, size: on } = now.current;
    if (from === null || on === null) return;
    const middle = { x: on.widthPx / 2, y: on.heightPx / 2 };
    move(panned(from, on, middle, { x: middle.x + x * PAN_STEP_PX, y: middle.y + y * PAN_STEP_PX }));
  };
  return (
    <section class="sheet chart-sheet practice-chart" aria-label="Chart">
      <div
        ref={ground}
        class="chart-ground"
        data-pins={onPin !== null}
        role="application"
        // biome-ignore lint/a11y/noNoninteractiveTabindex: arrow keys pan the chart, so it must take the focus
        tabIndex={0}
        aria-label="Chart ground: arrow keys pan, plus and minus zoom, 0 shows it whole"
        onKeyDown={(event) => {
          if (event.ctrlKey || event.metaKey) return;
          const by = PANS[event.key];
          if (by !== undefined && event.target === ground.current) pan(by);
          else if (event.key === "+" || event.key === "=") zoom(ZOOM_STEP);
          else if (event.key === "-") zoom(1 / ZOOM_STEP);
          else if (event.key === "0") setHeld(null);
          else return;
          event.preventDefault();
        }}
      >
        {view === null || size === null ? null : (
          <Drawn situation={situation} theme={theme} view={view} size={size} pins={pins} onPin={onPin} />
        )}
      </div>
      <div class="chart-tools">
        <button type="button" aria-label="Nearer" onClick={() => zoom(ZOOM_STEP)}>
          +
        </button>
        <button type="button" aria-label="Farther" onClick={() => zoom(1 / ZOOM_STEP)}>
          −
        </button>
        <button type="button" onClick={() => setHeld(null)}>
          Fit
        </button>
      </div>
    </section>
  );
}

interface DrawnProps extends ProblemChartProps {
  readonly view: ChartView;
  readonly size: { readonly widthPx: number; readonly heightPx: number };
}

function Drawn({ situation, theme, view, size, pins, onPin }: DrawnProps): JSX.Element {
  const projection = useMemo(() => projectionOf(view, size), [view, size]);
  const world = useWorldLand(view, size, situation.scene.land);
  const own = pins.find(({ letter }) => letter === null);
  return (
    <>
      <ChartPicture
        situation={situation}
        view={view}
        size={size}
        theme={theme}
        typeScale={1}
        lit={null}
        receiver={situation.receivers[0]?.settings.name ?? ""}
        trail={NONE}
        world={world}
        overGround={null}
      />
      <Pins pins={pins} projection={projection} />
      {own === undefined || onPin === null ? null : (
        <button
          type="button"
          class="hand hand-guess"
          style={{
            transform: `translate(${projection.toPaper(own.position).x}px, ${projection.toPaper(own.position).y}px)`,
          }}
          aria-label="Your mark: arrow keys move it half a mile, with Shift five miles"
          onKeyDown={(event) => {
            const azimuth = CHART_ARROWS[event.key];
            if (azimuth === undefined || event.ctrlKey || event.metaKey) return;
            event.preventDefault();
            event.stopPropagation();
            onPin(direct(own.position, azimuth, chartStepNm(event)));
          }}
        />
      )}
    </>
  );
}

export interface ProblemPanelProps {
  readonly situation: Situation;
  readonly theme: Theme;
  readonly idPrefix?: string;
}

/** As large as its sheet allows. */
export function ProblemPanel({
  situation,
  theme,
  idPrefix = "practice-panel",
}: ProblemPanelProps): JSX.Element {
  const holder = useRef<HTMLDivElement>(null);
  const size = useElementSize(holder);
  return (
    <section class="sheet practice-panel" aria-label="Panel">
      <div class="practice-panel-paper" ref={holder}>
        {size === null ? null : <Panel situation={situation} {...size} theme={theme} idPrefix={idPrefix} />}
      </div>
    </section>
  );
}
