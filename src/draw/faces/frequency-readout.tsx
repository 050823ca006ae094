/** What a receiver is tuned to and what is heard on it: frequency and name, the ident with its code. */

import type { IdentHeard } from "../../panel/index.ts";
import { frequencyText, morseStrokes, morseUnits, TEST_IDENT } from "../../radio/index.ts";
import { px } from "../plain/px.ts";
import { lineWidthPx, middleBaseline, TextLine } from "../plain/text-line.tsx";
import { shortenText, textWidthPx } from "../plain/text-width.ts";
import type { Theme } from "../theme.ts";
import { CoveredLine } from "./covered-line.tsx";
import { coveredParts } from "./covers.ts";
import { BoxWash, isLit } from "./lit-wash.tsx";
import type { ReadoutProps } from "./readout-props.ts";

/** Height of the two lines. */
export const frequencyReadoutPx = (scale: number): number => 42 * scale;

export function FrequencyReadout({ reading, x, y, widthPx, scale, theme, covers = [], lit }: ReadoutProps) {
  const { name, frequencyMhz } = reading.settings;
  const covered = coveredParts(name, covers);
  const frequency = frequencyText(frequencyMhz);
  const [frequencyPx, namePx, identPx] = [20 * scale, 14 * scale, 12 * scale];
  const firstY = y + 11 * scale;
  const secondY = y + 33 * scale;
  const nameWidthPx = textWidthPx(name, namePx, "words-bold");
  // Under a covered frequency the letters would tell what is tuned; the code is left to be read.
  const label =
    covered.has("frequency") && reading.ident.kind !== "none" ? "ident" : identLabel(reading.ident);
  return (
    <g data-receiver={name}>
      {covered.has("frequency") ? (
        <CoveredLine
          part="frequency"
          x={x}
          middleY={firstY}
          heightPx={20 * scale}
          roomPx={widthPx - nameWidthPx - 8 * scale}
          theme={theme}
        />
      ) : (
        <g data-part="frequency">
          {isLit(lit, name, "frequency") && (
            <BoxWash
              x={x - 4 * scale}
              y={firstY - 12 * scale}
              widthPx={lineWidthPx(frequency, frequencyPx, "numbers") + 8 * scale}
              heightPx={24 * scale}
              theme={theme}
            />
          )}
          <TextLine
            x={x}
            y={middleBaseline(firstY, frequencyPx)}
            sizePx={frequencyPx}
            fill={theme.ink}
            typeface="numbers"
          >
            {frequency}
          </TextLine>
        </g>
      )}
      <TextLine
        x={x + widthPx}
        y={middleBaseline(firstY, frequencyPx)}
        sizePx={namePx}
        fill={theme.ink}
        typeface="words-bold"
        anchor="end"
      >
        {name}
      </TextLine>
      {covered.has("ident") ? (
        <CoveredLine
          part="ident"
          x={x}
          middleY={secondY}
          heightPx={18 * scale}
          roomPx={widthPx}
          theme={theme}
        />
      ) : (
        <g data-part="ident">
          {isLit(lit, name, "ident") && (
            <BoxWash
              x={x - 4 * scale}
              y={secondY - 9 * scale}
              widthPx={widthPx + 8 * scale}
              heightPx={18 * scale}
              theme={theme}
            />
          )}
          <TextLine
            x={x}
            y={middleBaseline(secondY, identPx)}
            sizePx={identPx}
            fill={theme.soft}
            typeface="words"
          >
            {shortenText(label, widthPx, identPx, "words")}
          </TextLine>
          <HeardCode
            ident={reading.ident}
            rightX={x + widthPx}
            middleY={secondY}
            roomPx={widthPx - textWidthPx(label, identPx, "words") - 10 * scale}
            unitPx={2 * scale}
            theme={theme}
          />
        </g>
      )}
    </g>
  );
}

/** What is heard, as short as it can be said. */
function identLabel(ident: IdentHeard): string {
  switch (ident.kind) {
    case "ident":
      return `ident ${ident.text}`;
    case "test":
      return "T-E-S-T";
    case "test-signal":
      return "test signal";
    case "none":
      return "no ident";
    case "dme-only":
      return `DME ident ${ident.text} only`;
    case "mixed":
      return `${ident.texts[0]} and ${ident.texts[1]} mixed`;
  }
}

interface HeardCodeProps {
  readonly ident: IdentHeard;
  readonly rightX: number;
  readonly middleY: number;
  readonly roomPx: number;
  /** Width of a dot. */
  readonly unitPx: number;
  readonly theme: Theme;
}

/** The code of the ident as bars, where there is room for it. */
function HeardCode({ ident, rightX, middleY, roomPx, unitPx, theme }: HeardCodeProps) {
  const text =
    ident.kind === "test"
      ? TEST_IDENT
      : ident.kind === "ident" || ident.kind === "dme-only"
        ? ident.text
        : "";
  if (text === "") return null;
  const lengthPx = morseUnits(text) * unitPx;
  if (lengthPx > roomPx) return null;
  const startX = rightX - lengthPx;
  const path = morseStrokes(text)
    .map(
      (stroke) => `M${px(startX + stroke.startUnits * unitPx)} ${px(middleY)}h${px(stroke.units * unitPx)}`,
    )
    .join("");
  return <path data-part="code" d={path} stroke={theme.radial} stroke-width={px(unitPx * 1.3)} />;
}
