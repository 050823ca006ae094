/** Under a dial: the selected course in three digits and the needle in words; for a pointer, what head and tail mean. */

import { threeDigits } from "../../earth/index.ts";
import { lineWidthPx, TextLine } from "../plain/text-line.tsx";
import { textWidthPx } from "../plain/text-width.ts";
import { CoveredLine } from "./covered-line.tsx";
import { coveredParts } from "./covers.ts";
import { needleWords } from "./face-sentence.ts";
import { BoxWash, isLit } from "./lit-wash.tsx";
import type { ReadoutProps } from "./readout-props.ts";

export const courseReadoutPx = (scale: number): number => 22 * scale;

const POINTER_LEGENDS = ["head: to the station · tail: radial", "head: to · tail: radial", "tail: radial"];

export function CourseReadout({ reading, x, y, widthPx, scale, theme, covers = [], lit }: ReadoutProps) {
  const { name, course, face } = reading.settings;
  const covered = coveredParts(name, covers);
  const [numberPx, wordPx] = [16 * scale, 12 * scale];
  const baseline = y + 16 * scale;
  if (face === "rmi") {
    // What head and tail mean is part of the argument.
    if (covers.includes("reasons")) return null;
    const legend = POINTER_LEGENDS.find((words) => textWidthPx(words, wordPx, "words") <= widthPx) ?? "";
    return (
      <TextLine
        x={x + widthPx / 2}
        y={baseline}
        sizePx={wordPx}
        fill={theme.soft}
        typeface="words"
        anchor="middle"
      >
        {legend}
      </TextLine>
    );
  }
  const words = covered.has("needle") ? "" : needleWords(reading, covers);
  const wordsPx = textWidthPx(words, wordPx, "words");
  const labelPx = textWidthPx("course", wordPx, "words") + 5 * scale;
  const coursePx = lineWidthPx("000", numberPx, "numbers");
  const labelled = labelPx + coursePx + 10 * scale + wordsPx <= widthPx;
  return (
    <g data-receiver={name}>
      {covered.has("course") ? (
        <CoveredLine
          part="course"
          x={x}
          middleY={y + 11 * scale}
          heightPx={19 * scale}
          roomPx={widthPx - wordsPx - 8 * scale}
          theme={theme}
        />
      ) : (
        <g data-part="course-readout">
          {(isLit(lit, name, "course-card") || isLit(lit, name, "course")) && (
            <BoxWash
              x={x - 4 * scale}
              y={y}
              widthPx={(labelled ? labelPx : 0) + coursePx + 8 * scale}
              heightPx={22 * scale}
              theme={theme}
            />
          )}
          {labelled && (
            <TextLine x={x} y={baseline} sizePx={wordPx} fill={theme.soft} typeface="words">
              course
            </TextLine>
          )}
          <TextLine
            x={labelled ? x + labelPx : x}
            y={baseline}
            sizePx={numberPx}
            fill={theme.course}
            typeface="numbers"
          >
            {threeDigits(course)}
          </TextLine>
        </g>
      )}
      {words !== "" && (
        <TextLine
          x={x + widthPx}
          y={baseline}
          sizePx={wordPx}
          fill={theme.soft}
          typeface="words"
          anchor="end"
        >
          {words}
        </TextLine>
      )}
    </g>
  );
}
