/** Letters on a chart: the places to choose from, over all that is drawn there. */

import type { VNode } from "preact";
import type { LatLon } from "../../earth/index.ts";
import { type ChartView, chartProjection } from "../chart/index.ts";
import { px } from "../plain/px.ts";
import { middleBaseline, TextLine } from "../plain/text-line.tsx";
import type { Theme } from "../theme.ts";

export interface ChartMark {
  readonly letter: string;
  readonly position: LatLon;
}

interface Sized {
  readonly widthPx: number;
  readonly heightPx: number;
}

const MARK_PX = 12;
const RADIUS_PX = 9;
/** Free paper around the outermost mark, as a part of the chart's side; the graticule's border takes some of it. */
const FREE = 0.13;
/** Across, NM: less would leave no room for a station's rose. */
const LEAST_NM = 40;

/** The view made as wide as the places need, and not much wider: letters far apart are told apart. */
export function viewAround(view: ChartView, places: readonly LatLon[], size: Sized): ChartView {
  if (places.length === 0) return view;
  const { toPaper } = chartProjection(view, size.widthPx, size.heightPx);
  const needed = places.map((place) => {
    const { x, y } = toPaper(place);
    const part = (at: number, side: number) => Math.abs(at - side / 2) / (side * (0.5 - FREE));
    return Math.max(part(x, size.widthPx), part(y, size.heightPx));
  });
  const widthNm = Math.max(LEAST_NM, view.widthNm * Math.max(...needed));
  return { ...view, widthNm: Math.ceil(widthNm / 5) * 5 };
}

export function ChartMarks({
  view,
  marks,
  theme,
  ...size
}: Sized & {
  readonly view: ChartView;
  readonly marks: readonly ChartMark[];
  readonly theme: Theme;
}): VNode {
  const { toPaper } = chartProjection(view, size.widthPx, size.heightPx);
  return (
    <g>
      {marks.map(({ letter, position }) => {
        const { x, y } = toPaper(position);
        return (
          <g key={letter} data-mark={letter} transform={`translate(${px(x)} ${px(y)})`}>
            <circle r={RADIUS_PX} fill={theme.paper} stroke={theme.ink} stroke-width="1.4" />
            <TextLine
              x={0}
              y={middleBaseline(0, MARK_PX)}
              sizePx={MARK_PX}
              fill={theme.ink}
              typeface="words-bold"
              anchor="middle"
            >
              {letter}
            </TextLine>
          </g>
        );
      })}
    </g>
  );
}
