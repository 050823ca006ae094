/**
 * What one receiver has shown over a flight, against time: the needle in dots (right is up), the flag, the DME. The readings themselves,
 * without the needle's lag. A pure picture; what the scene covers is not drawn.
 */

import type { VNode } from "preact";
import type { Face } from "../../panel/index.ts";
import { coveredParts } from "../faces/covers.ts";
import { PaperStrip } from "../plain/paper-strip.tsx";
import { px } from "../plain/px.ts";
import { TextLine } from "../plain/text-line.tsx";
import { TitledPicture } from "../plain/titled-picture.tsx";
import type { Theme } from "../theme.ts";
import { FlagRow } from "./flag-row.tsx";
import { BandNote, type BandProps, DmeBand, NeedleBand } from "./history-bands.tsx";
import { type Band, layOutHistory } from "./history-layout.ts";
import { type HistoryPoint, historySentence } from "./history-sentence.ts";
import { timeWords } from "./time-words.ts";

export interface NeedleHistoryProps {
  readonly receiver: string;
  readonly face: Face;
  /** In the order of time. */
  readonly points: readonly HistoryPoint[];
  /** The moment shown on the bench. */
  readonly nowS: number;
  /** The scene's. */
  readonly covers: readonly string[];
  readonly widthPx: number;
  readonly heightPx: number;
  readonly theme: Theme;
  readonly idPrefix: string;
  readonly typeScale?: number;
}

export function NeedleHistory(props: NeedleHistoryProps): VNode {
  const { receiver, face, points, covers, nowS, widthPx, heightPx, theme, idPrefix, typeScale = 1 } = props;
  const covered = coveredParts(receiver, covers);
  const layout = layOutHistory({
    widthPx,
    heightPx,
    scale: typeScale,
    startS: points[0]?.timeS ?? 0,
    endS: points.at(-1)?.timeS ?? 0,
  });
  const seen = {
    needle: face !== "rmi" && !covered.has("needle"),
    flag: face !== "rmi" && !covered.has("flag"),
    dme: !covered.has("dme"),
  };
  const strip = (part: string, band: Band) => (
    <PaperStrip
      middleX={(layout.left + layout.right) / 2}
      middleY={(band.top + band.bottom) / 2}
      widthPx={Math.min(260 * typeScale, (layout.right - layout.left) * 0.8)}
      heightPx={Math.min(24 * typeScale, band.bottom - band.top)}
      covered={part}
      theme={theme}
    />
  );
  const nowX = px(layout.xOf(nowS));
  return (
    <TitledPicture
      widthPx={widthPx}
      heightPx={heightPx}
      idPrefix={idPrefix}
      title={`${receiver} over time`}
      words={historySentence(receiver, points, seen)}
    >
      <TimeAxis layout={layout} theme={theme} startS={points[0]?.timeS ?? 0} />
      {face === "rmi" ? (
        <BandNote layout={layout} theme={theme} band={layout.needle} text="a pointer has no needle to plot" />
      ) : covered.has("needle") ? (
        strip("needle", layout.needle)
      ) : (
        <NeedleBand layout={layout} theme={theme} points={points} />
      )}
      {face === "rmi" ? null : covered.has("flag") ? (
        strip("TO/FROM", layout.flag)
      ) : (
        <FlagRow layout={layout} theme={theme} points={points} idPrefix={idPrefix} />
      )}
      {covered.has("dme") ? (
        strip("DME", layout.dme)
      ) : (
        <DmeBand layout={layout} theme={theme} points={points} />
      )}
      {/* The bare paper beside the line keeps it in sight across dark plates. */}
      {[theme.paper, theme.ink].map((stroke, index) => (
        <line
          key={stroke}
          data-part={index === 0 ? undefined : "now"}
          x1={nowX}
          x2={nowX}
          y1={px(layout.needle.top - 4)}
          y2={px(layout.axisY)}
          stroke={stroke}
          stroke-width={px((index === 0 ? 4 : 1.3) * typeScale)}
        />
      ))}
    </TitledPicture>
  );
}

function TimeAxis({ layout, theme, startS }: Omit<BandProps, "points"> & { readonly startS: number }): VNode {
  const { left, right, axisY, sizePx, spanS, tickS, xOf } = layout;
  const first = Math.ceil(startS / tickS) * tickS;
  const count = Math.floor((startS + spanS - first) / tickS) + 1;
  const ticks = Array.from({ length: count }, (_, index) => first + index * tickS);
  return (
    <g data-axis="time">
      <line x1={px(left)} x2={px(right)} y1={px(axisY)} y2={px(axisY)} stroke={theme.line} stroke-width={1} />
      {ticks.map((timeS) => (
        <g key={timeS}>
          <line
            x1={px(xOf(timeS))}
            x2={px(xOf(timeS))}
            y1={px(axisY)}
            y2={px(axisY + 4)}
            stroke={theme.soft}
            stroke-width={1}
          />
          <TextLine
            x={xOf(timeS)}
            y={axisY + 4 + sizePx}
            sizePx={sizePx}
            fill={theme.soft}
            typeface="words"
            anchor={timeS === startS + spanS ? "end" : "middle"}
          >
            {timeWords(timeS)}
          </TextLine>
        </g>
      ))}
    </g>
  );
}
