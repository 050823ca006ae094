/** The heading indicator: the card turns under the lubber line, the aircraft stands still in the middle. */

import type { MagneticDeg } from "../../earth/index.ts";
import type { Lit } from "../lit.ts";
import type { Theme } from "../theme.ts";
import { CompassCard, DialRing } from "./compass-card.tsx";
import { headingCovered } from "./covers.ts";
import { dialGeometry } from "./dial-geometry.ts";
import { DialDart, DialStrip, LubberLine } from "./dial-marks.tsx";
import { RingWash } from "./lit-wash.tsx";

export interface HeadingIndicatorProps {
  readonly heading: MagneticDeg;
  readonly sizePx: number;
  readonly theme: Theme;
  readonly covers?: readonly string[] | undefined;
  readonly lit?: Lit | undefined;
}

export function HeadingIndicator({ heading, sizePx, theme, covers = [], lit }: HeadingIndicatorProps) {
  const geometry = dialGeometry(sizePx);
  const seen = !headingCovered(covers);
  return (
    <g data-face="heading">
      <DialRing geometry={geometry} theme={theme} />
      {seen && (
        <>
          {lit?.parts.includes("heading") && (
            <RingWash outerPx={geometry.ringRadiusPx} innerPx={geometry.innerRadiusPx} theme={theme} />
          )}
          <CompassCard geometry={geometry} topDeg={heading} theme={theme} part="heading" />
        </>
      )}
      <LubberLine geometry={geometry} theme={theme} />
      <DialDart geometry={geometry} theme={theme} lengthPx={geometry.innerRadiusPx * 0.95} />
      {!seen && <DialStrip geometry={geometry} theme={theme} part="heading" />}
    </g>
  );
}
