/** The flag inside a dial, in the lower half, clear of the numerals; or the strip over it. */

import { px } from "../plain/px.ts";
import type { CoverablePart } from "./covers.ts";
import type { DialGeometry } from "./dial-geometry.ts";
import { DialStrip } from "./dial-marks.tsx";
import type { DialProps } from "./dial-props.ts";
import { FlagPlate, plateSize } from "./flag-plate.tsx";
import { isLit } from "./lit-wash.tsx";

/** Height of the middle of a plate below the middle of the dial: as low as its lower corners stay inside the numerals. */
export function plateMiddleY(geometry: DialGeometry): number {
  const { widthPx, heightPx } = plateSize("FROM", geometry.plateTextPx, !geometry.tiny);
  const lowestPx = Math.sqrt(Math.max(0, geometry.clearRadiusPx ** 2 - (widthPx / 2) ** 2));
  return Math.min(geometry.innerRadiusPx * 0.62, lowestPx - heightPx / 2);
}

export interface FaceFlagProps extends DialProps {
  readonly geometry: DialGeometry;
  readonly covered: ReadonlySet<CoverablePart>;
}

export function FaceFlag({ reading, theme, idPrefix, lit, geometry, covered }: FaceFlagProps) {
  if (covered.has("flag")) return <DialStrip geometry={geometry} theme={theme} part="flag" />;
  const { widthPx, heightPx } = plateSize(reading.flag, geometry.plateTextPx, !geometry.tiny);
  const middleY = plateMiddleY(geometry);
  const borderPx = Math.max(3, geometry.sizePx * 0.016);
  return (
    <>
      {isLit(lit, reading.settings.name, "flag") && (
        <rect
          data-lit="yes"
          x={px(-widthPx / 2 - borderPx)}
          y={px(middleY - heightPx / 2 - borderPx)}
          width={px(widthPx + 2 * borderPx)}
          height={px(heightPx + 2 * borderPx)}
          rx="4"
          fill="none"
          stroke={theme.ink}
          stroke-width={px(borderPx * 0.45)}
        />
      )}
      <FlagPlate
        flag={reading.flag}
        middleX={0}
        middleY={middleY}
        textPx={geometry.plateTextPx}
        theme={theme}
        idPrefix={idPrefix}
        withTriangle={!geometry.tiny}
      />
    </>
  );
}
