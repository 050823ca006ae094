/**
 * The two 30 Hz waves as the receiver compares them: the reference, alike in every direction, and the variable, which comes later by
 * the radial, one degree in 360 of a turn of a thirtieth of a second (ICAO Annex 10 Vol I, 3.3.4 and 3.3.5). Shape and timing are
 * true to scale; the carrier and the subcarrier that bear them are left out.
 */

import type { ReceiverReading } from "../../panel/index.ts";
import { isLit, WASH_OPACITY } from "../faces/lit-wash.tsx";
import type { Lit } from "../lit.ts";
import { px } from "../plain/px.ts";
import { middleBaseline, TextLine } from "../plain/text-line.tsx";
import { LINE_HEIGHT, wrapText } from "../plain/text-width.ts";
import { TitledPicture } from "../plain/titled-picture.tsx";
import type { Theme } from "../theme.ts";
import { CourseMarks, markedCourse } from "./course-marks.tsx";
import { LagMark } from "./lag-mark.tsx";
import { waveIdent, wavesSentence } from "./wave-reading.ts";
import { layoutWaves, type WavesLayout } from "./waves-layout.ts";

/** How much of time is drawn, turns before and after a peak of the reference. */
const FROM_TURNS = -0.3;
const TO_TURNS = 2.2;
const STEPS_PER_TURN = 90;

export interface TwoWavesProps {
  /** Null when no receiver measures a bearing. */
  readonly reading: ReceiverReading | null;
  readonly widthPx: number;
  readonly heightPx: number;
  readonly theme: Theme;
  readonly idPrefix: string;
  readonly typeScale?: number | undefined;
  /** The scene's covers; none when not given. */
  readonly covers?: readonly string[] | undefined;
  /** What the argument speaks of. */
  readonly lit?: Lit | undefined;
}

export function TwoWaves(props: TwoWavesProps) {
  const { reading, widthPx, heightPx, idPrefix } = props;
  return (
    <TitledPicture
      widthPx={widthPx}
      heightPx={heightPx}
      idPrefix={idPrefix}
      title="Signal"
      words={wavesSentence(reading, props.covers)}
    >
      {reading === null || reading.radial === null ? (
        <NoWaves {...props} />
      ) : (
        <Waves {...props} reading={reading} radialDeg={reading.radial} />
      )}
    </TitledPicture>
  );
}

function NoWaves({ reading, widthPx, heightPx, theme, typeScale = 1 }: TwoWavesProps) {
  const sizePx = 14 * typeScale;
  const lines = wrapText(wavesSentence(reading), widthPx - 28 * typeScale, sizePx, "words");
  return (
    <>
      {lines.map((line, index) => (
        <TextLine
          key={line}
          x={widthPx / 2}
          y={middleBaseline(heightPx / 2 + (index - (lines.length - 1) / 2) * sizePx * LINE_HEIGHT, sizePx)}
          sizePx={sizePx}
          fill={theme.soft}
          typeface="words"
          anchor="middle"
        >
          {line}
        </TextLine>
      ))}
    </>
  );
}

interface WavesProps extends TwoWavesProps {
  readonly reading: ReceiverReading;
  readonly radialDeg: number;
}

function Waves(props: WavesProps) {
  const { reading, radialDeg, widthPx, heightPx, theme, typeScale: scale = 1 } = props;
  const course = markedCourse(reading, props.covers ?? []);
  const layout = layoutWaves(widthPx, heightPx, scale, TO_TURNS - FROM_TURNS, course !== null);
  const { left, right, middleY, amplitudePx, markY } = layout.plot;
  const lagTurns = radialDeg / 360;
  const xOf = (turns: number): number =>
    left + ((turns - FROM_TURNS) / (TO_TURNS - FROM_TURNS)) * (right - left);
  const strokes = waveStrokes(theme, scale);
  return (
    <>
      <Legend {...props} layout={layout} />
      {course !== null && (
        <CourseMarks
          course={course}
          xOf={xOf}
          leftX={left}
          topY={middleY - amplitudePx}
          bottomY={middleY + amplitudePx}
          wordsY={middleY - amplitudePx - 6 * scale}
          scale={scale}
          theme={theme}
        />
      )}
      <rect
        data-shade="radial"
        x={px(xOf(0))}
        y={px(middleY - amplitudePx)}
        width={px(xOf(lagTurns) - xOf(0))}
        height={px(2 * amplitudePx)}
        fill={theme.radial}
        fill-opacity="0.13"
      />
      {isLit(props.lit, reading.settings.name, "radial") && (
        <rect
          data-lit="yes"
          x={px(xOf(0) - 4 * scale)}
          y={px(middleY - amplitudePx - 4 * scale)}
          width={px(xOf(lagTurns) - xOf(0) + 8 * scale)}
          height={px(2 * amplitudePx + 28 * scale)}
          rx="3"
          fill={theme.ink}
          fill-opacity={WASH_OPACITY}
        />
      )}
      <line
        x1={px(left)}
        x2={px(right)}
        y1={px(middleY)}
        y2={px(middleY)}
        stroke={theme.line}
        stroke-width="1"
      />
      <path data-wave="reference" d={wavePath(layout, xOf, 0)} fill="none" {...strokes.reference} />
      <path
        data-wave="variable"
        data-receiver={reading.settings.name}
        d={wavePath(layout, xOf, lagTurns)}
        fill="none"
        {...strokes.variable}
      />
      {(["reference", "variable"] as const).map((wave) => (
        <line
          key={wave}
          data-peak={wave}
          x1={px(xOf(wave === "reference" ? 0 : lagTurns))}
          x2={px(xOf(wave === "reference" ? 0 : lagTurns))}
          y1={px(middleY - amplitudePx)}
          y2={px(markY + 5 * scale)}
          stroke={strokes[wave].stroke}
          stroke-width={px(Math.max(1, scale * 0.9))}
          stroke-dasharray={`${px(2 * scale)} ${px(3 * scale)}`}
        />
      ))}
      <LagMark
        fromX={xOf(0)}
        toX={xOf(lagTurns)}
        y={markY}
        rightX={right}
        radialDeg={radialDeg}
        scale={scale}
        theme={theme}
      />
    </>
  );
}

/** The reference is dashed and quiet, the variable solid in the colour of what the station gives. */
const waveStrokes = (theme: Theme, scale: number) => ({
  reference: {
    stroke: theme.soft,
    "stroke-width": px(1.7 * scale),
    "stroke-dasharray": `${px(6 * scale)} ${px(4 * scale)}`,
  },
  variable: { stroke: theme.radial, "stroke-width": px(2 * scale) },
});

function wavePath(layout: WavesLayout, xOf: (turns: number) => number, lagTurns: number): string {
  const { middleY, amplitudePx } = layout.plot;
  const count = Math.ceil((TO_TURNS - FROM_TURNS) * STEPS_PER_TURN);
  return Array.from({ length: count + 1 }, (_, index) => {
    const turns = FROM_TURNS + ((TO_TURNS - FROM_TURNS) * index) / count;
    const y = middleY - amplitudePx * Math.cos(2 * Math.PI * (turns - lagTurns));
    return `${index === 0 ? "M" : "L"}${px(xOf(turns))} ${px(y)}`;
  }).join("");
}

/** What each line is, with a piece of it. */
function Legend({
  reading,
  theme,
  typeScale: scale = 1,
  covers = [],
  layout,
}: WavesProps & { readonly layout: WavesLayout }) {
  const { marginPx, titleY, rows, samplePx, wordsLeftPx, sizePx, note } = layout;
  const strokes = waveStrokes(theme, scale);
  const ident = waveIdent(reading, covers);
  const title = ident === null ? "Signal" : `Signal of ${ident}`;
  return (
    <>
      <TextLine x={marginPx} y={titleY} sizePx={14 * scale} fill={theme.ink} typeface="words-bold">
        {title}
      </TextLine>
      {rows.map(({ wave, lines, x, middleY }) => (
        <g key={wave}>
          <line x1={px(x)} x2={px(x + samplePx)} y1={px(middleY)} y2={px(middleY)} {...strokes[wave]} />
          {lines.map((line, index) => (
            <TextLine
              key={line}
              x={x + wordsLeftPx}
              y={middleBaseline(middleY + index * sizePx * LINE_HEIGHT, sizePx)}
              sizePx={sizePx}
              fill={theme.soft}
              typeface="words"
            >
              {line}
            </TextLine>
          ))}
        </g>
      ))}
      {note !== null && (
        <TextLine x={marginPx} y={note.y} sizePx={sizePx} fill={theme.soft} typeface="words">
          {note.text}
        </TextLine>
      )}
    </>
  );
}
