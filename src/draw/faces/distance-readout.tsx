/** The DME: slant range, groundspeed by its rate, minutes to the station. Dashes where it gives none. */

import type { DmeReading } from "../../panel/index.ts";
import { lineWidthPx, TextLine } from "../plain/text-line.tsx";
import { textWidthPx } from "../plain/text-width.ts";
import type { Theme } from "../theme.ts";
import { CoveredLine } from "./covered-line.tsx";
import { coveredParts } from "./covers.ts";
import { BoxWash, isLit } from "./lit-wash.tsx";
import type { ReadoutProps } from "./readout-props.ts";

interface Figure {
  readonly label: string;
  readonly number: string;
  readonly unit: string;
}

/** What the three windows show; a dash for each figure that is not there. */
export function dmeFigures(dme: DmeReading | null): readonly [Figure, Figure, Figure] {
  const minutes = dme?.minutesToStation ?? null;
  return [
    { label: "DME", number: dme === null ? "––.–" : dme.distanceNm.toFixed(1), unit: "NM" },
    { label: "GS", number: dme === null ? "––" : dme.groundspeedKt.toFixed(0), unit: "kt" },
    { label: "", number: minutes === null ? "––" : minutes.toFixed(0), unit: "min" },
  ];
}

const NUMBER_PX = 16;
const WORD_PX = 12;
const ROW_PX = 22;
/** Least room between two figures. */
const BETWEEN_PX = 9;

function figureWidthPx({ label, number, unit }: Figure, scale: number): number {
  const labelPx = label === "" ? 0 : textWidthPx(label, WORD_PX * scale, "words") + 5 * scale;
  return (
    labelPx +
    lineWidthPx(number, NUMBER_PX * scale, "numbers") +
    4 * scale +
    textWidthPx(unit, WORD_PX * scale, "words")
  );
}

/** The widest it ever gets, so that a row stays a row while the numbers change. */
const WIDEST: DmeReading = { distanceNm: 199.9, groundspeedKt: 199, closingKt: 199, minutesToStation: 199 };

/** How the figures stand at this width: in a row, in a row with the speed's label left out, or in two rows. */
function arrangement(widthPx: number, scale: number): "row" | "short-row" | "two-rows" {
  const figures = dmeFigures(WIDEST);
  const rowPx = figures.reduce((sum, figure) => sum + figureWidthPx(figure, scale), 2 * BETWEEN_PX * scale);
  if (rowPx <= widthPx) return "row";
  const [, speed] = figures;
  const savedPx = figureWidthPx(speed, scale) - figureWidthPx({ ...speed, label: "" }, scale);
  return rowPx - savedPx <= widthPx ? "short-row" : "two-rows";
}

/** Height at this width: one row, or two where the figures do not stand side by side. */
export const distanceReadoutPx = (widthPx: number, scale: number): number =>
  (arrangement(widthPx, scale) === "two-rows" ? 2 : 1) * ROW_PX * scale;

export function DistanceReadout({ reading, x, y, widthPx, scale, theme, covers = [], lit }: ReadoutProps) {
  const receiver = reading.settings.name;
  const heightPx = distanceReadoutPx(widthPx, scale);
  if (coveredParts(receiver, covers).has("dme"))
    return (
      <CoveredLine
        part="dme"
        x={x}
        middleY={y + heightPx / 2}
        heightPx={19 * scale}
        roomPx={widthPx}
        theme={theme}
      />
    );
  const arranged = arrangement(widthPx, scale);
  const oneRow = arranged !== "two-rows";
  const [distance, fullSpeed, minutes] = dmeFigures(reading.dme);
  const speed = arranged === "short-row" ? { ...fullSpeed, label: "" } : fullSpeed;
  const baseline = y + 16 * scale;
  const rightX = x + widthPx - figureWidthPx(minutes, scale);
  const distanceEndX = x + figureWidthPx(distance, scale);
  const speedX = (distanceEndX + rightX - figureWidthPx(speed, scale)) / 2;
  const secondBaseline = oneRow ? baseline : baseline + ROW_PX * scale;
  return (
    <g data-part="dme" data-receiver={receiver}>
      {isLit(lit, receiver, "dme") && (
        <BoxWash x={x - 4 * scale} y={y} widthPx={widthPx + 8 * scale} heightPx={heightPx} theme={theme} />
      )}
      <OneFigure figure={distance} x={x} baseline={baseline} scale={scale} theme={theme} />
      <OneFigure
        figure={speed}
        x={oneRow ? speedX : x}
        baseline={secondBaseline}
        scale={scale}
        theme={theme}
      />
      <OneFigure figure={minutes} x={rightX} baseline={secondBaseline} scale={scale} theme={theme} />
    </g>
  );
}

interface OneFigureProps {
  readonly figure: Figure;
  readonly x: number;
  readonly baseline: number;
  readonly scale: number;
  readonly theme: Theme;
}

function OneFigure({ figure, x, baseline, scale, theme }: OneFigureProps) {
  const { label, number, unit } = figure;
  const [numberPx, wordPx] = [NUMBER_PX * scale, WORD_PX * scale];
  const numberX = label === "" ? x : x + textWidthPx(label, wordPx, "words") + 5 * scale;
  const unitX = numberX + lineWidthPx(number, numberPx, "numbers") + 4 * scale;
  return (
    <>
      {label !== "" && (
        <TextLine x={x} y={baseline} sizePx={wordPx} fill={theme.soft} typeface="words">
          {label}
        </TextLine>
      )}
      <TextLine x={numberX} y={baseline} sizePx={numberPx} fill={theme.ink} typeface="numbers">
        {number}
      </TextLine>
      <TextLine x={unitX} y={baseline} sizePx={wordPx} fill={theme.soft} typeface="words">
        {unit}
      </TextLine>
    </>
  );
}
