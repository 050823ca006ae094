/**
 * The chart's picture, the very one that `figure` draws, composed of its parts so that a drag redraws only what moves: the rest keeps
 * its elements as long as nothing of it has changed.
 */

import type { ComponentChild, JSX } from "preact";
import { useMemo } from "preact/hooks";
import {
  Chart,
  ChartAircraft,
  ChartFurniture,
  ChartGround,
  ChartLines,
  ChartStations,
  type ChartView,
  chartDescription,
  chartFrame,
  chartTitle,
  type Lit,
  layOutLines,
  type Theme,
  Trail,
  type TrailPoint,
  type WorldOutlines,
} from "../../draw/index.ts";
import { isCovered, type Situation } from "../../scene/index.ts";
import type { ChartSize } from "./chart-window.ts";
import { useHeldGround } from "./held-ground.ts";

export interface ChartPictureProps {
  readonly situation: Situation;
  readonly view: ChartView;
  readonly size: ChartSize;
  readonly theme: Theme;
  readonly typeScale: number;
  readonly lit: Lit | null;
  /** Whose lines are drawn in full. */
  readonly receiver: string;
  /** Where the aircraft has flown. */
  readonly trail: readonly TrailPoint[];
  /** Outlines of the world's land, where the scene has none of its own. */
  readonly world: WorldOutlines | null;
  /** What lies between the ground and the rest, such as a needle field; null for nothing. */
  readonly overGround: ComponentChild;
}

const ID_PREFIX = "chart";

export function ChartPicture(props: ChartPictureProps): JSX.Element {
  const { situation, view, size, theme, typeScale } = props;
  if (!isCovered(situation.scene.covers, null, "chart")) return <OpenChart {...props} />;
  const sheet = { view, ...size, theme, typeScale, idPrefix: ID_PREFIX };
  return <Chart situation={situation} {...sheet} />;
}

function OpenChart(props: ChartPictureProps): JSX.Element {
  const { situation, view, size, theme, typeScale, lit, receiver, trail, world, overGround } = props;
  const { widthPx, heightPx } = size;
  const frame = useMemo(
    () => chartFrame({ view, widthPx, heightPx, theme, typeScale, idPrefix: ID_PREFIX }),
    [view, widthPx, heightPx, theme, typeScale],
  );
  const ground = useHeldGround(frame, situation, receiver);
  const { land, wind, signal, covers } = situation.scene;
  const groundPicture = useMemo(
    () => <ChartGround frame={frame} situation={situation} ground={ground} world={world} />,
    [frame, ground, land, world],
  );
  const stationsPicture = useMemo(
    () => <ChartStations frame={frame} situation={situation} ground={ground} lit={lit} />,
    [frame, ground, lit, signal, covers],
  );
  const furniturePicture = useMemo(
    () => <ChartFurniture frame={frame} situation={situation} ground={ground} lit={lit} />,
    [frame, ground, lit, wind],
  );
  const offsetShown = lit?.parts.includes("offset") ?? false;
  const lines = layOutLines(frame, situation, ground, { receiver, offsetShown });
  const moving = { frame, situation, ground, lit, lines };
  const sheet = {
    xmlns: "http://www.w3.org/2000/svg",
    width: widthPx,
    height: heightPx,
    viewBox: `0 0 ${widthPx} ${heightPx}`,
  };
  const picture = (
    <svg {...sheet} role="img" aria-labelledby={`${ID_PREFIX}-title ${ID_PREFIX}-desc`}>
      <title id={`${ID_PREFIX}-title`}>{chartTitle(situation)}</title>
      <desc id={`${ID_PREFIX}-desc`}>{chartDescription(situation)}</desc>
      {overGround === null ? groundPicture : null}
      <ChartLines {...moving} />
      {trail.length < 2 ? null : (
        <g clip-path={`url(#${ID_PREFIX}-window)`}>
          <Trail
            points={trail}
            projection={frame.projection}
            theme={theme}
            covers={situation.scene.covers}
            typeScale={typeScale}
          />
        </g>
      )}
      {stationsPicture}
      <ChartAircraft {...moving} />
      {furniturePicture}
    </svg>
  );
  if (overGround === null) return picture;
  return (
    <>
      <svg {...sheet} aria-hidden="true">
        {groundPicture}
      </svg>
      {overGround}
      {picture}
    </>
  );
}
