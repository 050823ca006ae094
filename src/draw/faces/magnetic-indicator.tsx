/**
 * The radio magnetic indicator (Instrument Flying Handbook ch. 9): the card turns with the heading, the pointer's head lies on the
 * bearing to the station and its tail on your radial, whatever course is selected. Up to two pointers: 1 single, 2 double.
 */

import type { ReceiverReading } from "../../panel/index.ts";
import { px } from "../plain/px.ts";
import { middleBaseline, TextLine } from "../plain/text-line.tsx";
import type { Theme } from "../theme.ts";
import { CompassCard, DialRing } from "./compass-card.tsx";
import { coveredParts } from "./covers.ts";
import { type DialGeometry, dialGeometry } from "./dial-geometry.ts";
import { DialDart, DialStrip, LubberLine } from "./dial-marks.tsx";
import type { DialProps } from "./dial-props.ts";
import { plateMiddleY } from "./face-flag.tsx";
import { FlagPlate } from "./flag-plate.tsx";
import { isLit, RingWash, WASH_OPACITY } from "./lit-wash.tsx";

export interface MagneticIndicatorProps extends DialProps {
  /** The receiver of the double pointer, when one dial serves two. */
  readonly second?: ReceiverReading | undefined;
}

export function MagneticIndicator(props: MagneticIndicatorProps) {
  const { reading, second, sizePx, theme, idPrefix, covers = [], lit } = props;
  const geometry = dialGeometry(sizePx);
  const shown = second === undefined ? [reading] : [reading, second];
  const headingSeen = !coveredParts(reading.settings.name, covers).has("heading");
  const pointers = shown.map((each, index) => {
    const covered = coveredParts(each.settings.name, covers);
    return {
      reading: each,
      double: index === 1 || (second === undefined && pointerNumber(each, index) === "2"),
      label: pointerNumber(each, index),
      covered: covered.has("needle"),
    };
  });
  const dead = pointers.filter((each) => !each.covered && each.reading.rmiPointerRelativeDeg === null);
  return (
    <g data-face="rmi" data-receiver={reading.settings.name}>
      <DialRing geometry={geometry} theme={theme} />
      {headingSeen && (
        <>
          {shown.some((each) => isLit(lit, each.settings.name, "heading")) && (
            <RingWash outerPx={geometry.ringRadiusPx} innerPx={geometry.innerRadiusPx} theme={theme} />
          )}
          <CompassCard geometry={geometry} topDeg={reading.heading} theme={theme} part="heading" />
        </>
      )}
      <LubberLine geometry={geometry} theme={theme} />
      <DialDart geometry={geometry} theme={theme} lengthPx={geometry.innerRadiusPx * 0.3} />
      {pointers.map(
        (each) =>
          !each.covered &&
          each.reading.rmiPointerRelativeDeg !== null && (
            <Pointer
              key={each.label}
              geometry={geometry}
              theme={theme}
              receiver={each.reading.settings.name}
              relativeDeg={each.reading.rmiPointerRelativeDeg}
              double={each.double}
              label={each.label}
              lit={isLit(lit, each.reading.settings.name, "needle")}
            />
          ),
      )}
      {dead.length > 0 && (
        <FlagPlate
          flag="OFF"
          pointer={dead.length < pointers.length ? dead[0]?.label : undefined}
          middleX={0}
          middleY={plateMiddleY(geometry)}
          textPx={geometry.plateTextPx}
          theme={theme}
          idPrefix={idPrefix}
        />
      )}
      {!headingSeen && <DialStrip geometry={geometry} theme={theme} part="heading" />}
      {pointers.some((each) => each.covered) && <DialStrip geometry={geometry} theme={theme} part="needle" />}
    </g>
  );
}

/** The figure that the receiver's name ends in: 1 for NAV1; its place when the name has none. */
function pointerNumber(reading: ReceiverReading, index: number): string {
  return /\d$/.exec(reading.settings.name)?.[0] ?? String(index + 1);
}

interface PointerProps {
  readonly geometry: DialGeometry;
  readonly theme: Theme;
  readonly receiver: string;
  readonly relativeDeg: number;
  readonly double: boolean;
  readonly label: string;
  readonly lit: boolean;
}

function Pointer({ geometry, theme, receiver, relativeDeg, double, label, lit }: PointerProps) {
  const { innerRadiusPx, needleStrokePx, clearRadiusPx } = geometry;
  const headBasePx = innerRadiusPx * 0.72;
  const halfHeadPx = innerRadiusPx * 0.13;
  const discPx = Math.max(7.5, innerRadiusPx * 0.13);
  const labelPx = Math.max(12, discPx * 1.35);
  const hubPx = innerRadiusPx * 0.24;
  const rails = double ? [-halfHeadPx * 0.42, halfHeadPx * 0.42] : [0];
  const strokePx = double ? needleStrokePx * 0.55 : needleStrokePx;
  // Broken round the aircraft in the middle, so that neither hides the other.
  const shaft = rails
    .map(
      (x) =>
        `M${px(x)} ${px(clearRadiusPx)}L${px(x)} ${px(hubPx)}M${px(x)} ${px(-hubPx)}L${px(x)} ${px(-headBasePx)}`,
    )
    .join("");
  return (
    <g data-part="needle" data-receiver={receiver} transform={`rotate(${px(relativeDeg)})`}>
      {lit && (
        <line
          data-lit="yes"
          y1={px(-clearRadiusPx)}
          y2={px(clearRadiusPx)}
          stroke={theme.ink}
          stroke-opacity={WASH_OPACITY}
          stroke-width={px(halfHeadPx * 3.2)}
          stroke-linecap="round"
        />
      )}
      <path d={shaft} stroke={theme.radial} stroke-width={px(strokePx)} />
      <path
        d={`M0 ${px(-clearRadiusPx)}L${px(halfHeadPx)} ${px(-headBasePx)}L${px(-halfHeadPx)} ${px(-headBasePx)}Z`}
        fill={double ? theme.paper : theme.radial}
        stroke={theme.radial}
        stroke-width={px(Math.max(1.2, needleStrokePx * 0.5))}
        stroke-linejoin="round"
      />
      <g transform={`translate(0 ${px(innerRadiusPx * 0.56)}) rotate(${px(-relativeDeg)})`}>
        <circle
          r={px(discPx)}
          fill={theme.paper}
          stroke={theme.radial}
          stroke-width={px(Math.max(1, needleStrokePx * 0.45))}
        />
        <TextLine
          x={0}
          y={middleBaseline(0, labelPx)}
          sizePx={labelPx}
          fill={theme.radial}
          typeface="words-bold"
          anchor="middle"
        >
          {label}
        </TextLine>
      </g>
    </g>
  );
}
