/**
 * The selected course among the waves. The needle is centred when the variable wave comes later by the course, with FROM, or by half a
 * turn more, with TO; each stands amid the ten degrees on either side that the needle's full scale spans.
 */

import { reciprocal, type StationDeg, threeDigits } from "../../earth/index.ts";
import { FULL_SCALE_DEG, type ReceiverReading } from "../../panel/index.ts";
import { coveredParts } from "../faces/index.ts";
import { px } from "../plain/px.ts";
import { TextLine } from "../plain/text-line.tsx";
import { textWidthPx } from "../plain/text-width.ts";
import type { Theme } from "../theme.ts";

/** The course to mark; null where the face has none, or a cover would be given away. */
export function markedCourse(reading: ReceiverReading, covers: readonly string[]): StationDeg | null {
  const { name, face, course } = reading.settings;
  const covered = coveredParts(name, covers);
  const open = (["course", "needle", "flag"] as const).every((part) => !covered.has(part));
  return face !== "rmi" && open ? course : null;
}

export interface CourseMarksProps {
  readonly course: StationDeg;
  readonly xOf: (turns: number) => number;
  /** Words reach no farther to the left. */
  readonly leftX: number;
  readonly topY: number;
  readonly bottomY: number;
  /** Baseline of the words. */
  readonly wordsY: number;
  readonly scale: number;
  readonly theme: Theme;
}

/** The first turn is marked, and a quarter beyond either end, so that a peak near an end too has its nearest line. */
const BEYOND_TURNS = 0.25;

export function CourseMarks(props: CourseMarksProps) {
  const { course, xOf, leftX, topY, bottomY, wordsY, scale, theme } = props;
  const sizePx = 12 * scale;
  const ways = [
    { flag: "FROM", direction: course },
    { flag: "TO", direction: reciprocal(course) },
  ] as const;
  const halfTurnPx = xOf(0.5) - xOf(0);
  const wordsFit = textWidthPx("000 FROM", sizePx, "words-bold") + 10 * scale <= halfTurnPx;
  const words = (flag: string, direction: StationDeg): string =>
    wordsFit ? `${threeDigits(direction)} ${flag}` : threeDigits(direction);
  const halfWidthPx = xOf(FULL_SCALE_DEG / 360) - xOf(0);
  return (
    <g data-part="course" data-course={threeDigits(course)}>
      {ways.flatMap(({ flag, direction }) =>
        [-1, 0, 1]
          .map((turn) => direction / 360 + turn)
          .filter((turns) => turns >= -BEYOND_TURNS && turns <= 1 + BEYOND_TURNS)
          .map((turns) => {
            const x = xOf(turns);
            const label = words(flag, direction);
            return (
              <g key={`${flag}${turns}`} data-centred={flag}>
                <rect
                  x={px(x - halfWidthPx)}
                  y={px(topY)}
                  width={px(2 * halfWidthPx)}
                  height={px(bottomY - topY)}
                  fill={theme.course}
                  fill-opacity="0.1"
                />
                <line
                  x1={px(x)}
                  x2={px(x)}
                  y1={px(topY)}
                  y2={px(bottomY)}
                  stroke={theme.course}
                  stroke-width={px(1.6 * scale)}
                />
                {x - textWidthPx(label, sizePx, "words-bold") / 2 >= leftX && (
                  <TextLine
                    x={x}
                    y={wordsY}
                    sizePx={sizePx}
                    fill={theme.course}
                    typeface="words-bold"
                    anchor="middle"
                  >
                    {label}
                  </TextLine>
                )}
              </g>
            );
          }),
      )}
    </g>
  );
}
