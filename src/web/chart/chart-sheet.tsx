/**
 * The chart as a sheet on the table: the picture, the hands on the aircraft, and the ground that is dragged and brought nearer.
 * While nobody moved the view it frames the scene as it was opened.
 */

import type { ComponentChildren, JSX } from "preact";
import { useEffect, useMemo, useRef, useState } from "preact/hooks";
import { type ChartView, fitView, type Theme } from "../../draw/index.ts";
import { isCovered } from "../../scene/index.ts";
import { useElementSize } from "../frame/element-size.ts";
import { FirstMinuteSlip } from "../frame/first-minute-slip.tsx";
import type { Bench, Opened } from "../state/bench.ts";
import type { FirstMinute } from "../state/first-minute.ts";
import { AircraftHands } from "./aircraft-hands.tsx";
import { ChartPicture } from "./chart-picture.tsx";
import { type ChartSize, panned, projectionOf, zoomed } from "./chart-window.ts";
import { listenToGround } from "./ground-gestures.ts";

export interface ChartSheetProps {
  readonly bench: Bench;
  readonly theme: Theme;
  readonly firstMinute: FirstMinute;
  readonly children: ComponentChildren;
}

/** A view chosen by hand, and the opened scene it was chosen for. */
interface HandView {
  readonly of: Opened["asOpened"];
  readonly view: ChartView;
}

const ZOOM_STEP = 1.4;
const PAN_STEP_PX = 60;

export function ChartSheet({ bench, theme, firstMinute, children }: ChartSheetProps): JSX.Element {
  const ground = useRef<HTMLDivElement>(null);
  const size = useElementSize(ground);
  const { asOpened } = bench.opened.value;
  const [chosen, setChosen] = useState<HandView | null>(null);
  const toFrame = bench.situationAsOpened.value;
  const fitted = useMemo(
    () => (size === null ? null : fitView(toFrame, size.widthPx, size.heightPx)),
    [toFrame, size],
  );
  const view = chosen?.of === asOpened ? chosen.view : fitted;

  // The gestures read what stands now, and write ahead of the next drawing: two wheel notches in a frame both count.
  const now = useRef<{ view: ChartView; size: ChartSize } | null>(null);
  now.current = view === null || size === null ? null : { view, size };
  const move = (next: ChartView) => {
    if (now.current !== null) now.current = { ...now.current, view: next };
    setChosen({ of: bench.opened.value.asOpened, view: next });
  };
  const ready = now.current !== null;
  useEffect(() => {
    if (!ready || ground.current === null) return;
    return listenToGround(ground.current, {
      read: () => {
        if (now.current === null) throw new Error("the chart has no view yet");
        return now.current;
      },
      move,
    });
  }, [ready]);

  const zoom = (factor: number) => {
    if (now.current === null) return;
    const { view: from, size: on } = now.current;
    move(zoomed(from, on, factor, { x: on.widthPx / 2, y: on.heightPx / 2 }));
  };
  const frameAll = () => setChosen(null);
  const onKey = (event: KeyboardEvent) => {
    if (event.ctrlKey || event.metaKey || now.current === null) return;
    const pan = PAN_KEYS[event.key];
    if (pan !== undefined && event.target === ground.current) {
      const { view: from, size: on } = now.current;
      const middle = { x: on.widthPx / 2, y: on.heightPx / 2 };
      const to = { x: middle.x + pan.x * PAN_STEP_PX, y: middle.y + pan.y * PAN_STEP_PX };
      move(panned(from, on, middle, to));
    } else if (event.key === "+" || event.key === "=") zoom(ZOOM_STEP);
    else if (event.key === "-") zoom(1 / ZOOM_STEP);
    else if (event.key === "0") frameAll();
    else return;
    event.preventDefault();
  };
  return (
    <div class="chart-column">
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
            <Pictured
              bench={bench}
              theme={theme}
              view={view}
              size={size}
              paper={() => ground.current?.getBoundingClientRect() ?? null}
              onMoved={() => firstMinute.tick("drag")}
            />
          )}
        </div>
        {children}
      </section>
      <div class="chart-foot">
        <FirstMinuteSlip firstMinute={firstMinute} />
        <div class="chart-tools">
          <button type="button" aria-label="Nearer" title="Nearer" onClick={() => zoom(ZOOM_STEP)}>
            +
          </button>
          <button type="button" aria-label="Farther" title="Farther" onClick={() => zoom(1 / ZOOM_STEP)}>
            −
          </button>
          <button type="button" title="Show the whole scene" onClick={frameAll}>
            Fit
          </button>
        </div>
      </div>
    </div>
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
  readonly view: ChartView;
  readonly size: ChartSize;
  readonly paper: () => DOMRect | null;
  readonly onMoved: () => void;
}

/** The picture with the hands on it. */
function Pictured({ bench, theme, view, size, paper, onMoved }: PicturedProps): JSX.Element {
  const situation = bench.situation.value;
  const projection = useMemo(() => projectionOf(view, size), [view, size]);
  const { covers } = situation.scene;
  const handsOff = isCovered(covers, null, "aircraft") || isCovered(covers, null, "chart");
  return (
    <>
      <ChartPicture
        situation={situation}
        view={view}
        size={size}
        theme={theme}
        lit={bench.lit.value}
        receiver={bench.attended.value}
      />
      {handsOff ? null : (
        <AircraftHands
          bench={bench}
          situation={situation}
          projection={projection}
          paper={paper}
          onMoved={onMoved}
        />
      )}
    </>
  );
}
