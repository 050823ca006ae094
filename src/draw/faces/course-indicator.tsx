/**
 * The fixed-card course indicator (Instrument Flying Handbook ch. 9): the card turns with the selector so that the selected course
 * stands under the index, a bar moves across five dots a side, and a plate says TO, FROM or OFF. Heading moves nothing on it.
 */

import { CompassCard, DialRing } from "./compass-card.tsx";
import { barLooksLive, coveredParts } from "./covers.ts";
import { barDots, DeviationBar, DeviationDots } from "./deviation-scale.tsx";
import { dialGeometry } from "./dial-geometry.ts";
import { CourseIndexes, DialStrip } from "./dial-marks.tsx";
import type { DialProps } from "./dial-props.ts";
import { FaceFlag } from "./face-flag.tsx";
import { BoxWash, isLit, RingWash } from "./lit-wash.tsx";

export function CourseIndicator(props: DialProps) {
  const { reading, sizePx, theme, covers = [], lit, shownDots } = props;
  const receiver = reading.settings.name;
  const covered = coveredParts(receiver, covers);
  const geometry = dialGeometry(sizePx);
  const dots = barDots(reading, shownDots);
  const { innerRadiusPx, needleHalfLengthPx, ringRadiusPx, dotSpacingPx } = geometry;
  return (
    <g data-face="cdi" data-receiver={receiver}>
      <DialRing geometry={geometry} theme={theme} />
      {isLit(lit, receiver, "course-card") && (
        <RingWash outerPx={ringRadiusPx} innerPx={innerRadiusPx} theme={theme} />
      )}
      {!covered.has("course") && (
        <CompassCard geometry={geometry} topDeg={reading.settings.course} theme={theme} part="course-card" />
      )}
      <CourseIndexes geometry={geometry} theme={theme} />
      <DeviationDots geometry={geometry} theme={theme} />
      {!covered.has("needle") && (
        <>
          {isLit(lit, receiver, "needle") && (
            <BoxWash
              x={dots * dotSpacingPx - dotSpacingPx * 0.8}
              y={-needleHalfLengthPx * 1.12}
              widthPx={dotSpacingPx * 1.6}
              heightPx={needleHalfLengthPx * 2.24}
              theme={theme}
            />
          )}
          <DeviationBar
            geometry={geometry}
            theme={theme}
            dots={dots}
            live={barLooksLive(reading, covered)}
            halfLengthPx={needleHalfLengthPx}
          />
        </>
      )}
      <FaceFlag {...props} geometry={geometry} covered={covered} />
      {covered.has("course") && <DialStrip geometry={geometry} theme={theme} part="course" />}
      {covered.has("needle") && <DialStrip geometry={geometry} theme={theme} part="needle" />}
    </g>
  );
}
