/**
 * The phase as an angle on the station's rose: as many degrees as the variable wave comes late, so many clockwise from the station's
 * north. The radial stands dashed as on the chart, the course solid, and between the radial and the nearer end of the course line the
 * angle that the needle shows.
 */

import { reciprocal, threeDigits, turnBetween } from "../../earth/index.ts";
import { Rose } from "../chart/rose.tsx";
import { coveredParts, needleWords } from "../faces/index.ts";
import { isLit, WASH_OPACITY } from "../faces/lit-wash.tsx";
import { markedCourse } from "../figure/course-marks.tsx";
import { lagMs, TURN_MS } from "../figure/wave-reading.ts";
import { fromPoint, type PaperPoint } from "../plain/paper.ts";
import { px } from "../plain/px.ts";
import type { Theme } from "../theme.ts";
import { MARGIN_PX, Plate, type SignalPictureProps, TITLE_PX } from "./plate.tsx";
import { rowsHeightPx, type WordRow, WordRows, wrapRows } from "./word-rows.tsx";

/** The phase and what comes of it; empty without a bearing. */
export function roseSentence(reading: SignalPictureProps["reading"], covers: readonly string[] = []): string {
  if (reading.radial === null) return "";
  const phase = `The variable wave lags the reference by ${Math.round(reading.radial)} degrees, ${lagMs(reading.radial).toFixed(1)} milliseconds of a turn of ${TURN_MS.toFixed(1)}: radial ${threeDigits(reading.radial)}.`;
  const course = markedCourse(reading, covers);
  if (course === null) return phase;
  return `${phase} The course line runs ${threeDigits(course)} and ${threeDigits(reciprocal(course))}: the needle is ${needleWords(reading)}, ${reading.flag}.`;
}

export function RoseAngle(props: SignalPictureProps) {
  const { reading, widthPx, heightPx, theme, covers = [], lit, typeScale: scale = 1 } = props;
  const { radial, settings } = reading;
  if (radial === null) return null;
  const course = markedCourse(reading, covers);
  const beside = widthPx > heightPx * 1.45;
  const top = TITLE_PX * scale;
  const marginPx = MARGIN_PX * scale;
  // Beside its words the rose has the whole height, and the title stands with the words.
  const roseTop = beside ? marginPx * 0.5 : top;
  const roomHigh = heightPx - roseTop - marginPx * 0.5;
  const besidePx = Math.min(roomHigh, widthPx * 0.5);
  const roomPx = beside ? widthPx - besidePx - marginPx * 3 : widthPx - 2 * marginPx;
  const rows = wrapRows(rowsFor(reading, covers, theme), roomPx, scale, "words-bold");
  const rowsPx = rowsHeightPx(rows, scale);
  const acrossPx = beside ? besidePx : Math.min(widthPx - 2 * marginPx, roomHigh - rowsPx - 4 * scale);
  const radiusPx = Math.max(12, acrossPx / 2 - 16 * scale);
  const at: PaperPoint = beside
    ? { x: marginPx + acrossPx / 2, y: roseTop + roomHigh / 2 + 3 * scale }
    : { x: widthPx / 2, y: top + acrossPx / 2 };
  const rowY = beside ? top + 8 * scale : top + acrossPx + 4 * scale;
  const rowX = beside ? marginPx * 2 + acrossPx : marginPx;
  const innerPx = radiusPx * 0.34;
  const nearer =
    course === null ? null : Math.abs(turnBetween(course, radial)) <= 90 ? course : reciprocal(course);
  return (
    <Plate
      {...props}
      title="The phase is the radial"
      sentence={roseSentence(reading, covers)}
      scale={scale}
      picture="rose"
      receiver={settings.name}
      {...(beside ? { titleX: rowX } : {})}
    >
      <Rose
        at={at}
        radiusPx={radiusPx}
        northDeg={0}
        theme={{ ...theme, sea: theme.paper }}
        figuresPx={11 * scale}
        strokePx={scale}
        quiet={true}
      />
      <path
        d={sector(at, innerPx, 0, radial)}
        data-angle={px(radial)}
        fill={theme.radial}
        fill-opacity="0.14"
      />
      <path
        d={arc(at, innerPx, 0, radial)}
        fill="none"
        stroke={theme.radial}
        stroke-width={px(1.8 * scale)}
      />
      <Spoke at={at} angleDeg={0} toPx={innerPx * 1.2} stroke={theme.soft} widthPx={1.2 * scale} />
      {course !== null && (
        <g data-part="course">
          {[course, reciprocal(course)].map((deg) => (
            <Spoke
              key={deg}
              at={at}
              angleDeg={deg}
              toPx={radiusPx}
              stroke={theme.course}
              widthPx={(deg === course ? 2 : 1.2) * scale}
              washed={isLit(lit, settings.name, "course")}
              theme={theme}
            />
          ))}
        </g>
      )}
      {nearer !== null && (
        <g data-part="needle">
          {isLit(lit, settings.name, "needle") && (
            <path
              d={arc(at, radiusPx + 6 * scale, nearer, nearer + turnBetween(nearer, radial))}
              fill="none"
              stroke={theme.ink}
              stroke-opacity={WASH_OPACITY}
              stroke-width={px(14 * scale)}
              data-lit="yes"
            />
          )}
          <path
            d={arc(at, radiusPx + 6 * scale, nearer, nearer + turnBetween(nearer, radial))}
            fill="none"
            stroke={theme.course}
            stroke-width={px(4 * scale)}
          />
        </g>
      )}
      <g data-part="radial" data-angle={px(radial)}>
        <Spoke
          at={at}
          angleDeg={radial}
          toPx={radiusPx + 8 * scale}
          stroke={theme.radial}
          widthPx={2.2 * scale}
          dashed
          washed={isLit(lit, settings.name, "radial")}
          theme={theme}
        />
        <circle
          cx={px(fromPoint(at, radial, radiusPx + 8 * scale).x)}
          cy={px(fromPoint(at, radial, radiusPx + 8 * scale).y)}
          r={px(3.6 * scale)}
          fill={theme.ink}
        />
      </g>
      <WordRows
        rows={rows}
        x={rowX}
        top={rowY}
        scale={scale}
        typeface="words-bold"
        theme={theme}
        isLit={(part) => isLit(lit, settings.name, part)}
      />
    </Plate>
  );
}

function rowsFor(reading: SignalPictureProps["reading"], covers: readonly string[], theme: Theme): WordRow[] {
  const { radial } = reading;
  if (radial === null) return [];
  const course = markedCourse(reading, covers);
  const told: WordRow[] = [
    {
      part: "radial",
      words: `${threeDigits(radial)}° late: radial ${threeDigits(radial)} on the chart`,
      fill: theme.radial,
    },
  ];
  if (course === null) return told;
  const apart = Math.round(Math.abs(reading.deviationDeg ?? 0));
  told.push({
    part: "course",
    words: `course line ${threeDigits(course)} and ${threeDigits(reciprocal(course))}`,
    fill: theme.course,
  });
  if (!coveredParts(reading.settings.name, covers).has("needle"))
    told.push({
      part: "needle",
      words: `${apart}° apart: needle ${needleWords(reading)}`,
      fill: theme.course,
    });
  return told;
}

function Spoke(props: {
  readonly at: PaperPoint;
  readonly angleDeg: number;
  readonly toPx: number;
  readonly stroke: string;
  readonly widthPx: number;
  readonly dashed?: boolean;
  readonly washed?: boolean;
  readonly theme?: Theme;
}) {
  const { at, angleDeg, toPx, stroke, widthPx, dashed = false, washed = false, theme } = props;
  const end = fromPoint(at, angleDeg, toPx);
  const ends = { x1: px(at.x), y1: px(at.y), x2: px(end.x), y2: px(end.y) };
  return (
    <>
      {washed && theme !== undefined && (
        <line
          data-lit="yes"
          {...ends}
          stroke={theme.ink}
          stroke-opacity={WASH_OPACITY}
          stroke-width={px(widthPx + 12)}
        />
      )}
      <line
        {...ends}
        stroke={stroke}
        stroke-width={px(widthPx)}
        stroke-dasharray={dashed ? `${px(widthPx * 3)} ${px(widthPx * 2)}` : undefined}
      />
    </>
  );
}

/** Clockwise where the second angle is the larger, else the other way. Both angles clockwise from straight up. */
function arc(at: PaperPoint, radiusPx: number, fromDeg: number, toDeg: number): string {
  const from = fromPoint(at, fromDeg, radiusPx);
  const to = fromPoint(at, toDeg, radiusPx);
  const large = Math.abs(toDeg - fromDeg) > 180 ? 1 : 0;
  return `M${px(from.x)} ${px(from.y)}A${px(radiusPx)} ${px(radiusPx)} 0 ${large} ${toDeg >= fromDeg ? 1 : 0} ${px(to.x)} ${px(to.y)}`;
}

const sector = (at: PaperPoint, radiusPx: number, fromDeg: number, toDeg: number): string =>
  `${arc(at, radiusPx, fromDeg, toDeg)}L${px(at.x)} ${px(at.y)}Z`;
