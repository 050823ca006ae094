/** Places on a problem's chart: lettered ones to choose among, or the learner's own mark. */

import type { ChartProjection, ChartView } from "../../draw/index.ts";
import type { LatLon } from "../../earth/index.ts";
import { type ChartSize, projectionOf } from "../chart/chart-window.ts";
import { spreadLetters } from "./spread-letters.ts";

/** Lettered places keep away from the sheet's edge by so much of it. */
const PINS_ROOM = 1.35;
export const NARROWEST_PINS_NM = 20;

export interface Pin {
  readonly position: LatLon;
  /** A letter to choose it by, or null for the learner's own mark. */
  readonly letter: string | null;
  readonly chosen: boolean;
}

/**
 * The places to choose among are spread over the sheet: about the view's own middle, so that none of them is favoured. `leastNm` null: no
 * narrower than the view, which shows several stations.
 */
export function frameWith(
  view: ChartView,
  pins: readonly Pin[],
  { size, leastNm }: { readonly size: ChartSize; readonly leastNm: number | null },
): ChartView {
  if (pins.length === 0) return view;
  const { centre, widthNm } = view;
  const projection = projectionOf(view, size);
  const reach = Math.max(
    ...pins.map(({ position }) => {
      const { x, y } = projection.toPaper(position);
      return Math.max(
        Math.abs(x - size.widthPx / 2) / (size.widthPx / 2),
        Math.abs(y - size.heightPx / 2) / (size.heightPx / 2),
      );
    }),
  );
  return { centre, widthNm: Math.max(leastNm ?? widthNm, widthNm * reach * PINS_ROOM) };
}

export function Pins({
  pins,
  projection,
}: {
  readonly pins: readonly Pin[];
  readonly projection: ChartProjection;
}) {
  const places = pins.map(({ position }) => projection.toPaper(position));
  const letters = spreadLetters(places);
  return (
    <svg class="guess-marks practice-pins" aria-hidden="true">
      {pins.map(({ letter, chosen }, at) => {
        const [place, stands] = [places[at], letters[at]];
        if (place === undefined || stands === undefined) return null;
        const aside = Math.hypot(stands.x - place.x, stands.y - place.y) > 1;
        return (
          <g key={letter ?? "own"} data-chosen={chosen}>
            {aside ? (
              <>
                <line class="pin-leader" x1={place.x} y1={place.y} x2={stands.x} y2={stands.y} />
                <circle class="pin-place" cx={place.x} cy={place.y} r={3} />
              </>
            ) : null}
            <g transform={`translate(${stands.x} ${stands.y})`}>
              <circle class="guess-halo" r={11} />
              <circle class="guess-ring" r={11} />
              {letter === null ? (
                <path class="guess-ring" d="M-5 0H5M0 -5V5" />
              ) : (
                <text y={4.8} text-anchor="middle">
                  {letter}
                </text>
              )}
            </g>
          </g>
        );
      })}
    </svg>
  );
}
