/**
 * The lighthouse picture: a plan of the station with its turning beam, the flash at its north, a stopwatch, and beside them the time that
 * the selected course would make and the time that was measured. A picture of a comparison that in truth is made 30 times a second.
 */

import { reciprocal, threeDigits } from "../../earth/index.ts";
import type { ReceiverReading } from "../../panel/index.ts";
import { Rose } from "../chart/rose.tsx";
import { needleWords } from "../faces/index.ts";
import { markedCourse } from "../figure/course-marks.tsx";
import { lagMs, waveIdent } from "../figure/wave-reading.ts";
import { fromPoint, type PaperPoint, pathThrough } from "../plain/paper.ts";
import { angle, px } from "../plain/px.ts";
import { TextLine } from "../plain/text-line.tsx";
import { LINE_HEIGHT, textWidthPx } from "../plain/text-width.ts";
import type { Theme } from "../theme.ts";
import { beamDeg, isFlash, lighthouseTimes } from "./lighthouse-times.ts";
import { MARGIN_PX, Plate, type SignalPictureProps, TITLE_PX } from "./plate.tsx";
import { rowsHeightPx, type WordRow, WordRows, wrapRows } from "./word-rows.tsx";

export interface LighthouseProps extends SignalPictureProps {
  /** Since a flash, seconds, 0 or more. */
  readonly atS: number;
  readonly turnS: number;
}

const seconds = (time: number): string => `${time.toFixed(2)} s`;
const BEAM_HALF_DEG = 5;

/** What stands still in the picture, in words; empty without a bearing. */
export function lighthouseSentence(
  reading: ReceiverReading,
  turnS: number,
  covers: readonly string[] = [],
): string {
  const times = lighthouseTimes(reading, turnS);
  if (times === null) return "";
  const swept = `In this picture the beam turns once in ${turnS} seconds. It sweeps you ${times.measuredS.toFixed(2)} seconds after the flash: radial ${threeDigits(reading.radial ?? 0)}.`;
  const course = markedCourse(reading, covers);
  if (course === null) return swept;
  return `${swept} On course ${threeDigits(course)} the needle is centred at ${times.fromS.toFixed(2)} seconds, FROM, or at ${times.toS.toFixed(2)}, TO. ${differenceWords(reading, turnS)}`;
}

/** What the picture is, and what it is not. */
export function lighthouseNotes(
  reading: ReceiverReading,
  turnS: number,
  covers: readonly string[] = [],
): string[] {
  const example = `This is a picture. The real pattern turns 30 times a second, so radial 060 comes ${lagMs(60).toFixed(2)} ms after the reference, not ${(turnS / 6).toFixed(0)} s after a flash.`;
  const named = waveIdent(reading, covers);
  const declinationDeg = named === null ? null : Math.round(reading.station?.declinationDeg ?? 0);
  const aligned =
    declinationDeg === null
      ? ""
      : declinationDeg === 0
        ? `; at ${named} the two were the same then`
        : `; at ${named} it points ${Math.abs(declinationDeg)}° ${declinationDeg < 0 ? "west" : "east"} of true north`;
  const notes = [
    example,
    `North is the station's own magnetic alignment, as it was surveyed, not true north${aligned}.`,
  ];
  return reading.measured?.arriving.modulation.kind === "doppler"
    ? [...notes, "A Doppler station has no beam that turns; what the receiver compares is the same."]
    : notes;
}

/** "0.13 s early is 4° of the turn: needle 2 dots right, TO."; in short "0.13 s early, 4°: needle 2 dots right". */
function differenceWords(reading: ReceiverReading, turnS: number, short = false): string {
  const times = lighthouseTimes(reading, turnS);
  if (times === null) return "";
  const apartDeg = Math.round((Math.abs(times.lateS) / turnS) * 360);
  const flag = reading.flag === "OFF" ? "no flag, abeam" : reading.flag;
  if (apartDeg === 0) return `On time: needle ${needleWords(reading)}, ${flag}.`;
  const way = times.lateS > 0 ? "late" : "early";
  if (short) return `${seconds(Math.abs(times.lateS))} ${way}, ${apartDeg}°: needle ${needleWords(reading)}`;
  return `${Math.abs(times.lateS).toFixed(2)} s ${way} is ${apartDeg}° of the turn: needle ${needleWords(reading)}, ${flag}.`;
}

export function Lighthouse(props: LighthouseProps) {
  const { reading, atS, turnS, widthPx, heightPx, theme, covers = [], typeScale: scale = 1 } = props;
  const { radial, settings } = reading;
  const times = lighthouseTimes(reading, turnS);
  if (radial === null || times === null) return null;
  const course = markedCourse(reading, covers);
  const marginPx = MARGIN_PX * scale;
  const top = TITLE_PX * scale;
  const roomHigh = heightPx - marginPx;
  const acrossPx = Math.max(40, Math.min(roomHigh, widthPx * 0.46));
  const radiusPx = Math.max(12, acrossPx / 2 - 14 * scale);
  const at: PaperPoint = { x: marginPx + acrossPx / 2, y: marginPx * 0.5 + roomHigh / 2 + 3 * scale };
  const wordsX = marginPx * 1.7 + acrossPx;
  const beam = beamDeg(atS, turnS);
  return (
    <Plate
      {...props}
      title="The lighthouse picture"
      sentence={lighthouseSentence(reading, turnS, covers)}
      scale={scale}
      picture="lighthouse"
      receiver={settings.name}
      titleX={wordsX}
    >
      {isFlash(atS, turnS) && (
        <circle
          data-flash="yes"
          cx={px(at.x)}
          cy={px(at.y)}
          r={px(radiusPx)}
          fill={theme.radial}
          fill-opacity="0.22"
        />
      )}
      <Rose
        at={at}
        radiusPx={radiusPx}
        northDeg={0}
        theme={{ ...theme, sea: theme.paper }}
        figuresPx={11 * scale}
        strokePx={scale}
        quiet={true}
      />
      {course !== null && (
        <g data-part="course">
          <path
            d={pathThrough([fromPoint(at, reciprocal(course), radiusPx), fromPoint(at, course, radiusPx)])}
            stroke={theme.course}
            stroke-width={px(1.6 * scale)}
            fill="none"
          />
        </g>
      )}
      <g data-part="radial">
        <line
          x1={px(at.x)}
          y1={px(at.y)}
          x2={px(fromPoint(at, radial, radiusPx).x)}
          y2={px(fromPoint(at, radial, radiusPx).y)}
          stroke={theme.radial}
          stroke-width={px(1.8 * scale)}
          stroke-dasharray={`${px(5 * scale)} ${px(4 * scale)}`}
        />
      </g>
      <path
        data-beam={px(beam)}
        transform={`translate(${px(at.x)} ${px(at.y)}) rotate(${angle(beam)})`}
        d={pathThrough(
          [
            { x: 0, y: 0 },
            fromPoint({ x: 0, y: 0 }, -BEAM_HALF_DEG, radiusPx),
            fromPoint({ x: 0, y: 0 }, BEAM_HALF_DEG, radiusPx),
          ],
          true,
        )}
        fill={theme.radial}
        fill-opacity="0.75"
      />
      <circle cx={px(at.x)} cy={px(at.y)} r={px(4 * scale)} fill={theme.radial} />
      <g
        transform={`translate(${px(fromPoint(at, radial, radiusPx).x)} ${px(fromPoint(at, radial, radiusPx).y)})`}
        data-at={px(radial)}
      >
        <circle r={px(5 * scale)} fill={theme.ink} stroke={theme.paper} stroke-width={px(1.5 * scale)} />
      </g>
      <Watch
        {...props}
        left={wordsX}
        top={top}
        rightX={widthPx - marginPx}
        bottom={heightPx - marginPx * 0.6}
        passed={beam >= radial}
        rows={rowsFor(reading, turnS, covers, theme)}
      />
    </Plate>
  );
}

function rowsFor(
  reading: ReceiverReading,
  turnS: number,
  covers: readonly string[],
  theme: Theme,
): WordRow[] {
  const times = lighthouseTimes(reading, turnS);
  if (times === null || reading.radial === null) return [];
  const rows: WordRow[] = [
    {
      part: "radial",
      words: `swept you at ${seconds(times.measuredS)}: radial ${threeDigits(reading.radial)}`,
      fill: theme.radial,
    },
  ];
  const course = markedCourse(reading, covers);
  if (course === null) return rows;
  const near = times.nearer === "FROM" ? times.fromS : times.toS;
  return [
    ...rows,
    {
      part: "course",
      words: `course ${threeDigits(course)} expects ${seconds(near)} ${times.nearer}`,
      fill: theme.course,
    },
    { part: "needle", words: differenceWords(reading, turnS, true), fill: theme.ink },
  ];
}

interface WatchProps extends LighthouseProps {
  readonly left: number;
  readonly top: number;
  readonly rightX: number;
  readonly bottom: number;
  /** Whether the beam has swept the aircraft in this turn. */
  readonly passed: boolean;
  readonly rows: readonly WordRow[];
}

const AT_FLASH = "flash: the beam is at north";
const SWEPT = "since the flash; you are swept";

/** So that the longest of the notes fits, and each has the same size; never below 12 px. */
function noteSizePx(scale: number, widthPx: number): number {
  const widest = Math.max(...[AT_FLASH, SWEPT].map((text) => textWidthPx(text, 1, "words")));
  return Math.max(12, Math.min(12 * scale, widthPx / widest));
}

/** The stopwatch, and under it what it is compared with. */
function Watch(props: WatchProps) {
  const { atS, turnS, theme, typeScale: scale = 1, left, top, rightX, bottom, passed, rows } = props;
  const linePx = 12 * scale * LINE_HEIGHT;
  const wrapped = wrapRows(rows, rightX - left, scale, "words");
  const rowsPx = rowsHeightPx(wrapped, scale);
  const radiusPx = Math.min(34 * scale, Math.max(13 * scale, (bottom - top - rowsPx) / 2 - 4 * scale));
  const middle: PaperPoint = { x: left + radiusPx + 2 * scale, y: top + radiusPx };
  const inTurnS = atS % turnS;
  const hand = fromPoint(middle, (inTurnS / turnS) * 360, radiusPx * 0.82);
  const besideX = middle.x + radiusPx + 10 * scale;
  const note = isFlash(atS, turnS) ? AT_FLASH : passed ? SWEPT : "since the flash";
  return (
    <>
      <circle
        cx={px(middle.x)}
        cy={px(middle.y)}
        r={px(radiusPx)}
        fill="none"
        stroke={theme.ink}
        stroke-width={px(1.5 * scale)}
      />
      <line
        x1={px(middle.x)}
        y1={px(middle.y)}
        x2={px(hand.x)}
        y2={px(hand.y)}
        stroke={theme.ink}
        stroke-width={px(1.8 * scale)}
        data-hand={px((inTurnS / turnS) * 360)}
      />
      <g data-watch={inTurnS.toFixed(2)}>
        <TextLine
          x={besideX}
          y={middle.y + 3 * scale}
          sizePx={17 * scale}
          fill={theme.ink}
          typeface="numbers-bold"
        >
          {seconds(inTurnS)}
        </TextLine>
      </g>
      <TextLine
        x={besideX}
        y={middle.y + 3 * scale + linePx}
        sizePx={noteSizePx(scale, rightX - besideX)}
        fill={theme.soft}
        typeface="words"
      >
        {note}
      </TextLine>
      <WordRows
        rows={wrapped}
        x={left}
        top={middle.y + radiusPx + 8 * scale}
        scale={scale}
        typeface="words"
        theme={theme}
      />
    </>
  );
}
