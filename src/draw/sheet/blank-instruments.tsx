/** Empty instruments on paper, to be drawn in: the face without its needle and flag, and the rose of a station for a chart that is covered. */

import type { VNode } from "preact";
import { CompassCard, DialRing } from "../faces/compass-card.tsx";
import { DeviationDots } from "../faces/deviation-scale.tsx";
import { dialGeometry } from "../faces/dial-geometry.ts";
import { CourseIndexes, DialStrip } from "../faces/dial-marks.tsx";
import { px } from "../plain/px.ts";
import { TextLine } from "../plain/text-line.tsx";
import { TitledPicture } from "../plain/titled-picture.tsx";
import type { Theme } from "../theme.ts";

export interface BlankProps {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly theme: Theme;
  /** Begins every id in the picture. */
  readonly idPrefix: string;
}

const NOTE_PX = 11;

/** A face with its dots and an empty plate for the flag. `course` stands under the index, or the card is left out. */
export function BlankDial({ course, ...props }: BlankProps & { readonly course: number | null }): VNode {
  const { widthPx, heightPx, theme, idPrefix } = props;
  const geometry = dialGeometry(Math.min(widthPx, heightPx));
  return (
    <TitledPicture
      widthPx={widthPx}
      heightPx={heightPx}
      idPrefix={idPrefix}
      title="An empty course indicator"
      words="An empty course indicator to draw needle and flag in."
    >
      <g transform={`translate(${px(widthPx / 2)} ${px(heightPx / 2)})`}>
        <DialRing geometry={geometry} theme={theme} />
        {course !== null && (
          <CompassCard geometry={geometry} topDeg={course} theme={theme} part="course-card" />
        )}
        <CourseIndexes geometry={geometry} theme={theme} />
        <DeviationDots geometry={geometry} theme={theme} />
        <DialStrip geometry={geometry} theme={theme} part="flag" />
      </g>
    </TitledPicture>
  );
}

/** A rose with the station in its middle. `north` says which north stands at the top. */
export function BlankRose({
  ident,
  north,
  ...props
}: BlankProps & {
  readonly ident: string;
  readonly north: string;
}): VNode {
  const { widthPx, heightPx, theme, idPrefix } = props;
  const geometry = dialGeometry(Math.min(widthPx, heightPx));
  const wordPx = geometry.numeralSizePx * 0.9;
  return (
    <TitledPicture
      widthPx={widthPx}
      heightPx={heightPx}
      idPrefix={idPrefix}
      title="An empty rose"
      words={`An empty rose around ${ident}, ${north} at the top, to draw in.`}
    >
      <g transform={`translate(${px(widthPx / 2)} ${px(heightPx / 2)})`}>
        <DialRing geometry={geometry} theme={theme} />
        <CompassCard geometry={geometry} topDeg={0} theme={theme} part="heading" />
        <path d="M-5 0H5M0 -5V5" stroke={theme.ink} stroke-width="1.2" />
        <TextLine x={8} y={-6} sizePx={wordPx} fill={theme.ink} typeface="words-bold">
          {ident}
        </TextLine>
      </g>
      <TextLine x={8} y={18} sizePx={NOTE_PX} fill={theme.soft} typeface="words">
        {`N: ${north}`}
      </TextLine>
    </TitledPicture>
  );
}
