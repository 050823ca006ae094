/** The spectrum in three pieces of one axis, each around one part of the signal; sizes as parts of the carrier, in ratios. */

import type { VorSignal } from "../../radio/index.ts";
import { waveIdent } from "../figure/wave-reading.ts";
import { px } from "../plain/px.ts";
import { TextLine } from "../plain/text-line.tsx";
import { textWidthPx } from "../plain/text-width.ts";
import { disturbances } from "./picture-signal.ts";
import { MARGIN_PX, Plate, type SignalPictureProps, TITLE_PX } from "./plate.tsx";
import type { Spectrum } from "./spectrum-of.ts";

export interface SpectrumPictureProps extends SignalPictureProps {
  readonly signal: VorSignal;
  readonly spectrum: Spectrum;
}

interface Piece {
  readonly fromHz: number;
  readonly toHz: number;
  readonly marksHz: readonly number[];
  readonly words: string;
  readonly short: string;
  /** Part of the width. */
  readonly share: number;
}

const PIECES: readonly Piece[] = [
  { fromHz: 0, toHz: 120, marksHz: [30], words: "30 Hz AM", short: "30 AM", share: 0.24 },
  { fromHz: 900, toHz: 1140, marksHz: [1020], words: "1020 Hz ident", short: "ident", share: 0.22 },
  {
    fromHz: 9240,
    toHz: 10_680,
    marksHz: [9480, 9960, 10_440],
    words: "9960 Hz FM, swings ±480 Hz",
    short: "9960 FM ±480",
    share: 0.54,
  },
];
const GRID = [0.001, 0.01, 0.1] as const;
const LEAST = 0.0005;
const MOST = 0.5;

export function spectrumSentence(
  reading: SignalPictureProps["reading"],
  signal: VorSignal,
  covers: readonly string[] = [],
): string {
  const { toneDepth, identDepth, ident } = signal.modulation;
  const percent = (depth: number): string => `${Math.round(depth * 100)} percent`;
  const tone =
    ident.kind === "none" ? "no ident at 1020 hertz" : `the ident at 1020 hertz, ${percent(identDepth)}`;
  return `The spectrum of ${waveIdent(reading, covers) ?? "the station"}: a line at 30 hertz, ${percent(toneDepth)} of the carrier; ${tone}; and round 9960 hertz a sheaf of lines 30 hertz apart, from 9480 to 10440, which is its swing of 480 hertz.${disturbances(signal)}`;
}

export function SpectrumPicture(props: SpectrumPictureProps) {
  const { reading, signal, spectrum, widthPx, heightPx, theme, covers, typeScale: scale = 1 } = props;
  const sizePx = 12 * scale;
  const left = (MARGIN_PX + 36) * scale;
  const right = widthPx - MARGIN_PX * scale;
  const top = (TITLE_PX + 20) * scale;
  const bottom = heightPx - 24 * scale;
  const gapPx = 14 * scale;
  const roomPx = right - left - gapPx * (PIECES.length - 1);
  const yOf = (amplitude: number): number =>
    bottom -
    (Math.log(Math.max(LEAST, Math.min(MOST, amplitude)) / LEAST) / Math.log(MOST / LEAST)) * (bottom - top);
  let x = left;
  const placed = PIECES.map((piece) => {
    const fromX = x;
    const piecePx = piece.share * roomPx;
    x += piecePx + gapPx;
    return { ...piece, fromX, toX: fromX + piecePx };
  });
  return (
    <Plate
      {...props}
      title="Its spectrum"
      sentence={spectrumSentence(reading, signal, covers)}
      scale={scale}
      picture="spectrum"
      receiver={reading.settings.name}
    >
      {GRID.map((part) => (
        <g key={part}>
          {placed.map(({ fromX, toX }) => (
            <line
              key={fromX}
              x1={px(fromX)}
              x2={px(toX)}
              y1={px(yOf(part))}
              y2={px(yOf(part))}
              stroke={theme.line}
              stroke-width="1"
            />
          ))}
          <TextLine
            x={left - 6 * scale}
            y={yOf(part) + 4 * scale}
            sizePx={sizePx}
            fill={theme.soft}
            typeface="words"
            anchor="end"
          >
            {`${part * 100} %`}
          </TextLine>
        </g>
      ))}
      {placed.map(({ fromHz, toHz, fromX, toX, marksHz, words, short }) => {
        const xOf = (hz: number): number => fromX + ((hz - fromHz) / (toHz - fromHz)) * (toX - fromX);
        const fits = (text: string): boolean =>
          textWidthPx(text, sizePx, "words-bold") <= toX - fromX + gapPx;
        return (
          <g key={words} data-piece={fromHz} data-from-x={px(fromX)} data-to-x={px(toX)} data-to-hz={toHz}>
            <line
              x1={px(fromX)}
              x2={px(toX)}
              y1={px(bottom)}
              y2={px(bottom)}
              stroke={theme.soft}
              stroke-width="1"
            />
            <path
              d={lines(spectrum, fromHz, toHz, xOf, yOf, bottom)}
              fill="none"
              stroke={theme.radial}
              stroke-width={px((toHz - fromHz > 1000 ? 1.1 : 2) * scale)}
            />
            <TextLine x={fromX} y={top - 7 * scale} sizePx={sizePx} fill={theme.ink} typeface="words-bold">
              {fits(words) ? words : short}
            </TextLine>
            {marksHz.map((hz) => (
              <TextLine
                key={hz}
                x={xOf(hz)}
                y={bottom + 15 * scale}
                sizePx={sizePx}
                fill={theme.soft}
                typeface="numbers"
                anchor="middle"
              >
                {String(hz)}
              </TextLine>
            ))}
          </g>
        );
      })}
    </Plate>
  );
}

/** Line by line from the axis up, bin by bin. */
function lines(
  { binHz, amplitudes }: Spectrum,
  fromHz: number,
  toHz: number,
  xOf: (hz: number) => number,
  yOf: (amplitude: number) => number,
  bottom: number,
): string {
  const points: string[] = [`${px(xOf(fromHz))} ${px(bottom)}`];
  for (let bin = Math.ceil(fromHz / binHz); bin <= toHz / binHz; bin++)
    points.push(`${px(xOf(bin * binHz))} ${px(yOf(amplitudes[bin] ?? 0))}`);
  return `M${points.join("L")}`;
}
