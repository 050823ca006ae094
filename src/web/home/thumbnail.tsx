/** A scene drawn small, by the very components that draw it large: its chart and the face of its first receiver. */

import type { JSX } from "preact";
import { useEffect, useRef, useState } from "preact/hooks";
import {
  Chart,
  ChartAircraft,
  ChartGround,
  ChartLines,
  ChartStations,
  chartFrame,
  fitView,
  layOutGround,
  layOutLines,
  ReceiverFace,
  type Theme,
} from "../../draw/index.ts";
import { isCovered, resolveScene, type Scene, type Situation } from "../../scene/index.ts";
import { drawnInTurn } from "./drawn-in-turn.ts";

export interface ThumbnailProps {
  readonly scene: Scene;
  readonly theme: Theme;
  readonly idPrefix: string;
}

/** Drawn as large as a chart that can be read, and then shown small: a miniature, not a chart with little room. */
const WIDTH_PX = 620;
const HEIGHT_PX = 400;
const FACE_PX = 160;

/** Blank paper until its turn comes: when it is near enough to be seen, and the page has nothing better to do. */
export function Thumbnail({ scene, theme, idPrefix }: ThumbnailProps): JSX.Element {
  const sheet = useRef<HTMLSpanElement>(null);
  const [situation, setSituation] = useState<Situation | null>(null);
  useEffect(() => {
    const element = sheet.current;
    if (element === null) return;
    return drawnInTurn(element, () => setSituation(resolveScene(scene)));
  }, [scene]);
  return (
    <span class="thumbnail" ref={sheet} aria-hidden="true">
      {situation === null ? null : (
        <>
          <SmallChart situation={situation} theme={theme} idPrefix={`${idPrefix}-chart`} />
          <SmallFace situation={situation} theme={theme} idPrefix={`${idPrefix}-face`} />
        </>
      )}
    </span>
  );
}

interface PictureProps {
  readonly situation: Situation;
  readonly theme: Theme;
  readonly idPrefix: string;
}

/** The map without the furniture of its margin. */
function SmallChart({ situation, theme, idPrefix }: PictureProps): JSX.Element {
  const view = fitView(situation, WIDTH_PX, HEIGHT_PX);
  const props = { view, widthPx: WIDTH_PX, heightPx: HEIGHT_PX, theme, idPrefix };
  if (isCovered(situation.scene.covers, null, "chart")) return <Chart situation={situation} {...props} />;
  const frame = chartFrame(props);
  const ground = layOutGround(frame, situation);
  const parts = { frame, situation, ground, lines: layOutLines(frame, situation, ground, {}) };
  const { left, top, right, bottom } = frame.window;
  return (
    <svg
      viewBox={`${left} ${top} ${right - left} ${bottom - top}`}
      preserveAspectRatio="xMidYMid slice"
      aria-hidden="true"
    >
      <ChartGround {...parts} />
      <ChartLines {...parts} />
      <ChartStations {...parts} />
      <ChartAircraft {...parts} />
    </svg>
  );
}

/** The first receiver that is not covered as a whole. */
function SmallFace({ situation, theme, idPrefix }: PictureProps): JSX.Element | null {
  const { covers } = situation.scene;
  const reading = situation.receivers.find(({ settings }) => !covers.includes(settings.name));
  if (reading === undefined || isCovered(covers, null, "panel")) return null;
  return (
    <span class="thumbnail-face">
      <ReceiverFace reading={reading} sizePx={FACE_PX} theme={theme} covers={covers} idPrefix={idPrefix} />
    </span>
  );
}
