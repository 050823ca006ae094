/** A scene drawn small, by the very components that draw it large: its chart and the face of its first receiver. */

import type { JSX } from "preact";
import { useEffect, useRef, useState } from "preact/hooks";
import { Chart, fitView, ReceiverFace, type Theme } from "../../draw/index.ts";
import { isCovered, resolveScene, type Scene, type Situation } from "../../scene/index.ts";
import { drawnInTurn } from "./drawn-in-turn.ts";

export interface ThumbnailProps {
  readonly scene: Scene;
  readonly theme: Theme;
  readonly idPrefix: string;
}

/** Drawn as large as a chart that can be read, and then shown small: a miniature, not a chart with little room. */
const WIDTH_PX = 620;
const HEIGHT_PX = 392;
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
      {situation === null ? null : <Pictures situation={situation} theme={theme} idPrefix={idPrefix} />}
    </span>
  );
}

function Pictures({ situation, theme, idPrefix }: Omit<ThumbnailProps, "scene"> & SituationProp) {
  const { covers } = situation.scene;
  const [reading] = situation.receivers;
  return (
    <>
      <Chart
        situation={situation}
        view={fitView(situation, WIDTH_PX, HEIGHT_PX)}
        widthPx={WIDTH_PX}
        heightPx={HEIGHT_PX}
        theme={theme}
        idPrefix={`${idPrefix}-chart`}
      />
      {reading === undefined || isCovered(covers, null, "panel") ? null : (
        <span class="thumbnail-face">
          <ReceiverFace
            reading={reading}
            sizePx={FACE_PX}
            theme={theme}
            covers={covers}
            idPrefix={`${idPrefix}-face`}
          />
        </span>
      )}
    </>
  );
}

interface SituationProp {
  readonly situation: Situation;
}
