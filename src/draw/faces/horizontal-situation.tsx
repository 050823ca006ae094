/**
 * The horizontal situation indicator (Instrument Flying Handbook ch. 9): the card turns with the heading under the lubber line, the
 * course pointer stands on the card at the selected course, and its middle part slides across the dots: a picture of the line seen
 * from above, with the aircraft in the middle.
 */

import { px } from "../plain/px.ts";
import { CompassCard, DialRing } from "./compass-card.tsx";
import { barLooksLive, coveredParts } from "./covers.ts";
import { barDots, DeviationBar, DeviationDots } from "./deviation-scale.tsx";
import { type DialGeometry, dialGeometry } from "./dial-geometry.ts";
import { DialDart, DialStrip, LubberLine, RingMark } from "./dial-marks.tsx";
import type { DialProps } from "./dial-props.ts";
import { FaceFlag } from "./face-flag.tsx";
import { FlagPlate, plateSize, trianglePath } from "./flag-plate.tsx";
import { BoxWash, isLit, RingWash } from "./lit-wash.tsx";

export function HorizontalSituation(props: DialProps) {
  const { reading, sizePx, theme, idPrefix, covers = [], lit } = props;
  const receiver = reading.settings.name;
  const covered = coveredParts(receiver, covers);
  const geometry = dialGeometry(sizePx);
  // The pointer's angle on the glass is course less heading: under a covered heading it must go too, and the other way round.
  const headingSeen = !covered.has("heading");
  const pointerSeen = headingSeen && !covered.has("course");
  return (
    <g data-face="hsi" data-receiver={receiver}>
      <DialRing geometry={geometry} theme={theme} />
      {headingSeen && (
        <>
          {isLit(lit, receiver, "heading") && (
            <RingWash outerPx={geometry.ringRadiusPx} innerPx={geometry.innerRadiusPx} theme={theme} />
          )}
          <CompassCard geometry={geometry} topDeg={reading.heading} theme={theme} part="heading" />
        </>
      )}
      <LubberLine geometry={geometry} theme={theme} />
      {pointerSeen && <CoursePointer {...props} geometry={geometry} />}
      <DialDart geometry={geometry} theme={theme} lengthPx={geometry.innerRadiusPx * 0.36} />
      {reading.flag === "OFF" || covered.has("flag") ? (
        <FaceFlag {...props} geometry={geometry} covered={covered} />
      ) : (
        <CornerFlag {...props} idPrefix={idPrefix} geometry={geometry} />
      )}
      {!headingSeen && <DialStrip geometry={geometry} theme={theme} part="heading" />}
      {headingSeen && !pointerSeen && <DialStrip geometry={geometry} theme={theme} part="course" />}
      {pointerSeen && covered.has("needle") && <DialStrip geometry={geometry} theme={theme} part="needle" />}
    </g>
  );
}

function CoursePointer(props: DialProps & { readonly geometry: DialGeometry }) {
  const { reading, theme, covers = [], lit, shownDots, geometry } = props;
  const { innerRadiusPx, needleStrokePx, dotSpacingPx } = geometry;
  const receiver = reading.settings.name;
  const covered = coveredParts(receiver, covers);
  const barHalfPx = innerRadiusPx * 0.5;
  const headBasePx = innerRadiusPx * 0.76;
  const halfHeadPx = innerRadiusPx * 0.12;
  const dots = barDots(reading, shownDots);
  return (
    <g data-part="course" transform={`rotate(${px(reading.courseRelativeDeg)})`}>
      <RingMark geometry={geometry} colour={theme.course} />
      <DeviationDots geometry={geometry} theme={theme} />
      <path
        d={`M0 ${px(-barHalfPx * 1.12)}L0 ${px(-headBasePx)}M0 ${px(barHalfPx * 1.12)}L0 ${px(innerRadiusPx)}`}
        stroke={theme.course}
        stroke-width={px(needleStrokePx)}
      />
      <path
        d={`M0 ${px(-innerRadiusPx)}L${px(halfHeadPx)} ${px(-headBasePx)}L${px(-halfHeadPx)} ${px(-headBasePx)}Z`}
        fill={theme.course}
      />
      {!covered.has("needle") && (
        <>
          {isLit(lit, receiver, "needle") && (
            <BoxWash
              x={dots * dotSpacingPx - dotSpacingPx * 0.8}
              y={-barHalfPx * 1.1}
              widthPx={dotSpacingPx * 1.6}
              heightPx={barHalfPx * 2.2}
              theme={theme}
            />
          )}
          <DeviationBar
            geometry={geometry}
            theme={theme}
            dots={dots}
            live={barLooksLive(reading, covered)}
            halfLengthPx={barHalfPx}
          />
        </>
      )}
      {!covered.has("flag") && reading.flag !== "OFF" && (
        <path
          data-part="to-from"
          data-flag={reading.flag}
          d={trianglePath(
            innerRadiusPx * 0.4,
            innerRadiusPx * (reading.flag === "TO" ? -0.66 : 0.66),
            innerRadiusPx * 0.11,
            reading.flag === "TO",
          )}
          fill={theme.radial}
        />
      )}
    </g>
  );
}

/** The word to the triangle on the pointer, beside the ring, where no pointer ever passes. */
function CornerFlag({
  reading,
  theme,
  idPrefix,
  lit,
  geometry,
}: DialProps & { readonly geometry: DialGeometry }) {
  const textPx = Math.max(12, geometry.plateTextPx * 0.86);
  const withTriangle = geometry.sizePx >= 170;
  const { widthPx, heightPx } = plateSize(reading.flag, textPx, withTriangle);
  const half = geometry.sizePx / 2;
  return (
    <>
      {isLit(lit, reading.settings.name, "flag") && (
        <BoxWash
          x={half - widthPx - 4}
          y={half - heightPx - 4}
          widthPx={widthPx + 8}
          heightPx={heightPx + 8}
          theme={theme}
        />
      )}
      <FlagPlate
        flag={reading.flag}
        middleX={half - widthPx / 2}
        middleY={half - heightPx / 2}
        textPx={textPx}
        theme={theme}
        idPrefix={idPrefix}
        withTriangle={withTriangle}
      />
    </>
  );
}
