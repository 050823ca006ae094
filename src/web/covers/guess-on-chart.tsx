/**
 * Guesses at the aircraft's place, on the chart: an open outline in ink for each, movable until it is given; once the cover is off a broken
 * line leads from each to where the aircraft was.
 */

import { useComputed } from "@preact/signals";
import type { JSX } from "preact";
import { useEffect, useRef } from "preact/hooks";
import type { ChartProjection } from "../../draw/index.ts";
import { direct, type LatLon } from "../../earth/index.ts";
import { followPointer } from "../input/drag.ts";
import type { Bench } from "../state/bench.ts";
import { askingOf, type Question } from "./asking.ts";
import { CHART_ARROWS, chartStepNm } from "./chart-arrows.ts";
import { placeWords } from "./compare-place.ts";
import { listenForPlace } from "./listen-for-place.ts";

export interface GuessOnChartProps {
  readonly bench: Bench;
  readonly projection: ChartProjection;
  /** The element whose top left corner is the paper's. */
  readonly paper: () => DOMRect | null;
}

const COVER = "aircraft";

export function GuessOnChart({ bench, projection, paper }: GuessOnChartProps): JSX.Element | null {
  const asking = askingOf(bench);
  const question = asking.questions.value.find(({ cover }) => cover === COVER);
  const covers = useComputed(() => bench.scene.value.covers).value;
  const open = question !== undefined && !question.lifted && question.guessing && !covers.includes("chart");
  const anchor = useRef<HTMLDivElement>(null);
  const sheet = useRef(projection);
  sheet.current = projection;
  useEffect(() => {
    const ground = anchor.current?.parentElement;
    if (!open || !ground) return;
    return listenForPlace(ground, ({ x, y }) => {
      asking.ask(COVER);
      asking.draft(COVER, { kind: "place", position: sheet.current.toWorld(x, y) });
    });
  }, [open, asking]);
  const place = (position: LatLon) => asking.draft(COVER, { kind: "place", position });
  const draft = open && question.draft?.kind === "place" ? question.draft.position : null;
  return (
    <div class="guess-on-chart" ref={anchor}>
      {question === undefined || covers.includes("chart") ? null : (
        <Marks question={question} draft={draft} projection={projection} />
      )}
      {draft === null ? null : (
        <button
          type="button"
          class="hand hand-guess"
          style={{ transform: shift(projection, draft) }}
          aria-label={`Your guess, ${placeWords(bench.situation.value, draft)}. Arrow keys move it half a mile, with Shift five miles`}
          onPointerDown={(press) => {
            const box = paper();
            if (press.button !== 0 || !press.isPrimary || box === null) return;
            const at = projection.toPaper(draft);
            const grabbed = { x: press.clientX - box.left - at.x, y: press.clientY - box.top - at.y };
            followPointer(press, (hand) =>
              place(sheet.current.toWorld(hand.x - box.left - grabbed.x, hand.y - box.top - grabbed.y)),
            );
          }}
          onKeyDown={(event) => {
            const azimuth = CHART_ARROWS[event.key];
            if (azimuth === undefined || event.ctrlKey || event.metaKey) return;
            event.preventDefault();
            event.stopPropagation();
            place(direct(draft, azimuth, chartStepNm(event)));
          }}
        />
      )}
    </div>
  );
}

const shift = (projection: ChartProjection, position: LatLon): string => {
  const { x, y } = projection.toPaper(position);
  return `translate(${x}px, ${y}px)`;
};

interface MarksProps {
  readonly question: Question;
  readonly draft: LatLon | null;
  readonly projection: ChartProjection;
}

function Marks({ question, draft, projection }: MarksProps): JSX.Element {
  const { given, lifted } = question;
  const places = given.flatMap(({ answer, situation }, index) =>
    answer.kind === "place"
      ? [
          {
            position: answer.position,
            truth: lifted ? situation.scene.aircraft.position : null,
            words: given.length > 1 ? `guess ${index + 1}` : "your guess",
          },
        ]
      : [],
  );
  const all = draft === null ? places : [...places, { position: draft, truth: null, words: "your guess?" }];
  return (
    <svg class="guess-marks" aria-hidden="true">
      {all.map(({ position, truth, words }) => (
        <Mark
          key={words}
          at={projection.toPaper(position)}
          truth={truth === null ? null : projection.toPaper(truth)}
          words={words}
        />
      ))}
    </svg>
  );
}

interface MarkProps {
  readonly at: { readonly x: number; readonly y: number };
  readonly truth: { readonly x: number; readonly y: number } | null;
  readonly words: string;
}

const RADIUS_PX = 12;

/** A ring about an open dart, its words beside it on the side away from the truth. */
function Mark({ at, truth, words }: MarkProps): JSX.Element {
  const apartPx = truth === null ? 0 : Math.hypot(truth.x - at.x, truth.y - at.y);
  const leftward = truth !== null && truth.x > at.x;
  const unit =
    truth === null || apartPx === 0
      ? { x: 0, y: 0 }
      : { x: (truth.x - at.x) / apartPx, y: (truth.y - at.y) / apartPx };
  return (
    <g>
      {truth === null || apartPx <= RADIUS_PX ? null : (
        <line
          class="guess-to-truth"
          x1={at.x + unit.x * RADIUS_PX}
          y1={at.y + unit.y * RADIUS_PX}
          x2={truth.x}
          y2={truth.y}
        />
      )}
      <g transform={`translate(${at.x} ${at.y})`}>
        <circle class="guess-halo" r={RADIUS_PX} />
        <circle class="guess-ring" r={RADIUS_PX} />
        <path class="guess-ring" d="M-5 0H5M0 -5V5" />
        <text
          x={leftward ? -RADIUS_PX - 3 : RADIUS_PX + 3}
          y={truth === null ? 4.5 : truth.y > at.y ? -RADIUS_PX + 3 : RADIUS_PX + 6}
          text-anchor={leftward ? "end" : "start"}
        >
          {words}
        </text>
      </g>
    </g>
  );
}
