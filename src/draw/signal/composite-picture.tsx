/**
 * The composite as an AM detector gives it, over two turns of the pattern, with its three parts named; where there is room a piece of
 * three milliseconds, magnified until ident and sub-carrier are seen as waves.
 */

import type { VorSignal } from "../../radio/index.ts";
import { waveIdent } from "../figure/wave-reading.ts";
import { px } from "../plain/px.ts";
import { middleBaseline, TextLine } from "../plain/text-line.tsx";
import { LINE_HEIGHT, textWidthPx } from "../plain/text-width.ts";
import { COMPOSITE_RATE_HZ, type CompositeSamples, SHOWN_TURNS } from "./composite-samples.ts";
import { disturbances } from "./picture-signal.ts";
import { MARGIN_PX, Plate, type SignalPictureProps, TITLE_PX } from "./plate.tsx";

export interface CompositePictureProps extends SignalPictureProps {
  readonly signal: VorSignal;
  readonly samples: CompositeSamples;
}

/** The composite stands between these, carrier 1: all three depths add up to 0.7; noise beyond is cut off. */
const LEAST = 0.2;
const MOST = 1.8;
const LENS_S = 0.003;
/** Higher than this at scale 1 there is room for the magnified piece. */
const LENS_FROM_PX = 160;

export function compositeSentence(
  reading: SignalPictureProps["reading"],
  signal: VorSignal,
  covers: readonly string[] = [],
): string {
  const ident = waveIdent(reading, covers);
  const { kind, toneDepth } = signal.modulation;
  const [am, fm] =
    kind === "conventional"
      ? ["the variable wave", "the reference"]
      : ["the reference", "the variable wave, as a Doppler station sends it"];
  const tone = signal.modulation.ident.kind === "none" ? "." : ", and the ident's tone of 1020 hertz.";
  return `What ${ident ?? "the station"} sends, two turns of 33.3 milliseconds: the carrier swells and sinks 30 times a second by ${Math.round(toneDepth * 100)} percent, ${am}; on it lies the 9960 hertz, whose pitch swings 480 hertz either way 30 times a second, ${fm}${tone}${disturbances(signal)}`;
}

export function CompositePicture(props: CompositePictureProps) {
  const { reading, signal, samples, widthPx, heightPx, theme, covers, typeScale: scale = 1 } = props;
  const lens = heightPx > LENS_FROM_PX * scale;
  const sizePx = 12 * scale;
  const left = MARGIN_PX * scale;
  const right = widthPx - left;
  const legend = legendOf(signal, theme, scale);
  const widest = legend.reduce((sum, { words }) => sum + textWidthPx(words, sizePx, "words") + 34 * scale, 0);
  const inOneLine = widest <= right - left;
  const legendPx = (inOneLine ? 1 : legend.length) * sizePx * LINE_HEIGHT;
  const top = TITLE_PX * scale + legendPx + 4 * scale;
  const bottom = heightPx - 24 * scale;
  const mainBottom = lens ? top + (bottom - top) * 0.56 : bottom;
  const xOf = (part: number): number => left + part * (right - left);
  const yIn =
    (from: number, to: number) =>
    (value: number): number =>
      to - ((Math.min(MOST, Math.max(LEAST, value)) - LEAST) / (MOST - LEAST)) * (to - from);
  const mainY = yIn(top, mainBottom);
  const lensTop = mainBottom + 22 * scale;
  let legendX = left;
  return (
    <Plate
      {...props}
      title="The composite, as it arrives"
      sentence={compositeSentence(reading, signal, covers)}
      scale={scale}
      picture="composite"
      receiver={reading.settings.name}
    >
      {legend.map(({ words, stroke }, index) => {
        const x = inOneLine ? legendX : left;
        const y = (TITLE_PX + 6) * scale + (inOneLine ? 0 : index * sizePx * LINE_HEIGHT);
        legendX += textWidthPx(words, sizePx, "words") + 34 * scale;
        return (
          <g key={words}>
            <line x1={px(x)} x2={px(x + 16 * scale)} y1={px(y)} y2={px(y)} {...stroke} />
            <TextLine
              x={x + 21 * scale}
              y={middleBaseline(y, sizePx)}
              sizePx={sizePx}
              fill={theme.soft}
              typeface="words"
            >
              {words}
            </TextLine>
          </g>
        );
      })}
      <path
        data-band="composite"
        d={band(samples.audio, xOf, mainY, Math.floor(right - left))}
        fill={theme.soft}
        fill-opacity="0.35"
      />
      <path
        data-wave="slow"
        d={line(samples.slow, 0, samples.slow.length, 24, xOf, mainY)}
        fill="none"
        stroke={theme.radial}
        stroke-width={px(2.2 * scale)}
      />
      {lens && (
        <path
          d={line(samples.audio, 0, LENS_S * COMPOSITE_RATE_HZ, 1, xOf, yIn(lensTop, bottom))}
          data-wave="magnified"
          fill="none"
          stroke={theme.ink}
          stroke-width={px(1.1 * scale)}
        />
      )}
      {lens && (
        <Lens
          left={left}
          toX={xOf((LENS_S * 30) / SHOWN_TURNS)}
          right={right}
          mainY={[top, mainBottom]}
          lensTop={lensTop}
          theme={theme}
          scale={scale}
        />
      )}
      <Times
        lens={lens}
        left={left}
        right={right}
        y={heightPx - 8 * scale}
        sizePx={sizePx}
        fill={theme.soft}
      />
    </Plate>
  );
}

/** Where the magnified piece comes from. */
function Lens(props: {
  readonly left: number;
  readonly toX: number;
  readonly right: number;
  readonly mainY: readonly [number, number];
  readonly lensTop: number;
  readonly theme: SignalPictureProps["theme"];
  readonly scale: number;
}) {
  const { left, toX, right, mainY, lensTop, theme, scale } = props;
  const [top, bottom] = mainY;
  return (
    <>
      <rect
        x={px(left)}
        y={px(top)}
        width={px(toX - left)}
        height={px(bottom - top)}
        fill="none"
        stroke={theme.ink}
        stroke-width={px(scale)}
      />
      <path
        d={`M${px(left)} ${px(bottom)}V${px(lensTop)}M${px(toX)} ${px(bottom)}L${px(right)} ${px(lensTop)}`}
        fill="none"
        stroke={theme.soft}
        stroke-width={px(0.8 * scale)}
      />
    </>
  );
}

function Times({
  lens,
  left,
  right,
  y,
  sizePx,
  fill,
}: {
  readonly lens: boolean;
  readonly left: number;
  readonly right: number;
  readonly y: number;
  readonly sizePx: number;
  readonly fill: string;
}) {
  const texts = lens
    ? ["0 ms", "the first 3 ms, magnified", "3 ms"]
    : ["0 ms", "33.3 ms, one turn", "66.7 ms"];
  return (
    <>
      {texts.map((text, index) => (
        <TextLine
          key={text}
          x={left + ((right - left) * index) / 2}
          y={y}
          sizePx={sizePx}
          fill={fill}
          typeface="words"
          anchor={(["start", "middle", "end"] as const)[index] ?? "start"}
        >
          {text}
        </TextLine>
      ))}
    </>
  );
}

function legendOf({ modulation }: VorSignal, theme: SignalPictureProps["theme"], scale: number) {
  const variableIsAm = modulation.kind === "conventional";
  const all = [
    {
      words: `30 Hz AM: the ${variableIsAm ? "variable" : "reference"}`,
      stroke: { stroke: theme.radial, "stroke-width": px(2.2 * scale) },
    },
    {
      words: `9960 Hz FM: the ${variableIsAm ? "reference" : "variable"}`,
      stroke: { stroke: theme.soft, "stroke-width": px(8 * scale), "stroke-opacity": "0.5" },
    },
    {
      words: "ident, 1020 Hz",
      stroke: { stroke: theme.soft, "stroke-width": px(3 * scale), "stroke-opacity": "0.5" },
    },
  ];
  return modulation.ident.kind === "none" ? all.slice(0, 2) : all;
}

/** From the least to the most sample of each column of the paper. */
function band(
  samples: Float64Array,
  xOf: (part: number) => number,
  yOf: (value: number) => number,
  columns: number,
): string {
  const upper: string[] = [];
  const lower: string[] = [];
  const count = Math.max(2, Math.min(columns, 600));
  for (let column = 0; column < count; column++) {
    const from = Math.floor((column * samples.length) / count);
    const to = Math.floor(((column + 1) * samples.length) / count);
    let least = Number.POSITIVE_INFINITY;
    let most = Number.NEGATIVE_INFINITY;
    for (let at = from; at < to; at++) {
      const value = samples[at] as number;
      if (value < least) least = value;
      if (value > most) most = value;
    }
    const x = px(xOf((column + 0.5) / count));
    upper.push(`${x} ${px(yOf(most))}`);
    lower.push(`${x} ${px(yOf(least))}`);
  }
  return `M${upper.join("L")}L${lower.reverse().join("L")}Z`;
}

function line(
  samples: Float64Array,
  from: number,
  to: number,
  step: number,
  xOf: (part: number) => number,
  yOf: (value: number) => number,
): string {
  const points: string[] = [];
  for (let at = from; at < to; at += step)
    points.push(`${px(xOf((at - from) / (to - from)))} ${px(yOf(samples[at] as number))}`);
  return `M${points.join("L")}`;
}
