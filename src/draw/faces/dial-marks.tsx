/** Marks that stand still on a dial: index, lubber line, aircraft, and the strips over what is covered. */

import { dartFarWingPath, dartPath } from "../plain/dart.ts";
import { PaperStrip } from "../plain/paper-strip.tsx";
import { px } from "../plain/px.ts";
import { still } from "../still.ts";
import type { Theme } from "../theme.ts";
import { COVERED_AS, type CoverablePart } from "./covers.ts";
import type { DialGeometry } from "./dial-geometry.ts";

interface MarkProps {
  readonly geometry: DialGeometry;
  readonly theme: Theme;
}

/** Where the selected course is read, at the top, and its reciprocal, at the bottom, hollow. */
export const CourseIndexes = still(function CourseIndexes({ geometry, theme }: MarkProps) {
  const { ringRadiusPx, sizePx, tickPx } = geometry;
  const half = Math.max(4.5, sizePx * 0.03);
  const base = -ringRadiusPx - Math.max(4, sizePx * 0.034);
  const tip = -ringRadiusPx + tickPx.ten * 0.55;
  const outline = Math.max(1.1, sizePx / 200);
  return (
    <>
      <path
        data-part="course-index"
        d={`M0 ${px(tip)}L${px(half)} ${px(base)}L${px(-half)} ${px(base)}Z`}
        fill={theme.course}
      />
      <path
        data-part="reciprocal-index"
        d={`M0 ${px(-tip)}L${px(half * 0.85)} ${px(-base - outline)}L${px(-half * 0.85)} ${px(-base - outline)}Z`}
        fill={theme.paper}
        stroke={theme.course}
        stroke-width={px(outline)}
        stroke-linejoin="round"
      />
    </>
  );
});

/** The lubber line: the nose of the aircraft, under which the heading is read. */
export const LubberLine = still(function LubberLine({ geometry, theme }: MarkProps) {
  const { ringRadiusPx, sizePx, tickPx } = geometry;
  const half = Math.max(4, sizePx * 0.026);
  const base = -ringRadiusPx - Math.max(4, sizePx * 0.034);
  return (
    <path
      data-part="lubber"
      d={`M0 ${px(-ringRadiusPx + tickPx.ten * 0.55)}L${px(half)} ${px(base)}L${px(-half)} ${px(base)}Z`}
      fill={theme.ink}
    />
  );
});

/** The aircraft in the middle, nose to the lubber line. */
export function DialDart({ geometry, theme, lengthPx }: MarkProps & { readonly lengthPx: number }) {
  const stroke = Math.max(1, geometry.sizePx / 220);
  return (
    <g data-part="aircraft">
      <path
        d={dartPath(lengthPx)}
        fill={theme.ink}
        stroke={theme.paper}
        stroke-width={px(stroke)}
        stroke-linejoin="round"
      />
      <path d={dartFarWingPath(lengthPx)} fill={theme.paper} fill-opacity="0.26" />
    </g>
  );
}

/** A short bold mark across the ticks at the top; the caller turns it to where a pointer reads. */
export function RingMark({ geometry, colour }: { readonly geometry: DialGeometry; readonly colour: string }) {
  return (
    <line
      y1={px(-geometry.ringRadiusPx)}
      y2={px(-geometry.ringRadiusPx + geometry.tickPx.thirty)}
      stroke={colour}
      stroke-width={px(geometry.needleStrokePx)}
    />
  );
}

/** Where on a dial the strip over a part lies, as parts of the inner radius. */
const STRIPS: Partial<Record<CoverablePart, { readonly y: number; readonly height: number }>> = {
  needle: { y: -0.12, height: 0.5 },
  flag: { y: 0.66, height: 0.34 },
};

export function DialStrip(props: MarkProps & { readonly part: CoverablePart }) {
  const { geometry, theme, part } = props;
  const { innerRadiusPx, numeralRadiusPx, sizePx } = geometry;
  const place = STRIPS[part] ?? { y: -numeralRadiusPx / innerRadiusPx, height: 0.34 };
  // A needle is drawn in among the dots, and a card's numbers along the ring: neither wants a box.
  if (theme.blanks === true && part !== "flag") return null;
  return (
    <PaperStrip
      middleX={0}
      middleY={place.y * innerRadiusPx}
      widthPx={
        theme.blanks === true
          ? innerRadiusPx * 0.95
          : Math.max(108, Math.min(innerRadiusPx * 1.9, sizePx * 0.6))
      }
      heightPx={Math.max(20, place.height * innerRadiusPx)}
      covered={COVERED_AS[part]}
      theme={theme}
    />
  );
}
