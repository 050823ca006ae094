/** Coast, relief tints by height, summits and airfields. */

import type { VNode } from "preact";
import type { LatLon } from "../../earth/index.ts";
import type { Land } from "../../radio/index.ts";
import { type PaperPoint, pathThrough } from "../plain/paper.ts";
import { angle, px } from "../plain/px.ts";
import { type ChartFrame, drawable, inset } from "./frame.ts";
import {
  AIRFIELD_RADIUS_PX,
  type AirfieldOnSheet,
  islandStyle,
  type Names,
  nameStyle,
  PEAK_RADIUS_PX,
  type PeakOnSheet,
} from "./names-layout.ts";
import { Words } from "./words.tsx";

/** Ground above this is tinted as middle, above the second as high; between, tints mix. */
const HIGH_FT = 2500;
/** How far the tint of shallow water reaches along a coast, both sides together. */
const SHALLOWS_PX = 16;

export function LandAreas({ frame, land }: { readonly frame: ChartFrame; readonly land: Land }): VNode {
  const { theme } = frame;
  const coasts = land.islands.map(({ coast }) => ringPath(frame, coast)).join("");
  const relief = land.relief
    .map(({ aboveFt, ring }) => ({ aboveFt, path: ringPath(frame, ring) }))
    .filter(({ path }) => path !== "");
  return (
    <g stroke-linejoin="round">
      {coasts !== "" && (
        <>
          {/* Shallow water along the coast, as engraved charts shade it. */}
          <path d={coasts} fill="none" stroke={theme.coast} stroke-opacity={0.1} stroke-width={SHALLOWS_PX} />
          <path d={coasts} fill="none" stroke={theme.coast} stroke-opacity={0.14} stroke-width={7} />
          <path d={coasts} fill={theme.land[0]} stroke={theme.coast} stroke-width={1.3} />
        </>
      )}
      {relief.map(({ aboveFt, path }) => (
        <path
          d={path}
          {...tint(frame, aboveFt)}
          stroke={theme.coast}
          stroke-opacity={0.45}
          stroke-width={0.7}
          data-above-ft={aboveFt}
        />
      ))}
    </g>
  );
}

export function LandNames({ frame, names }: { readonly frame: ChartFrame; readonly names: Names }): VNode {
  const { theme, typeScale } = frame;
  const style = (onLand: boolean) => ({
    ...nameStyle(typeScale),
    fill: theme.soft,
    halo: onLand ? theme.land[0] : theme.sea,
    haloPx: 2.6,
  });
  return (
    <g>
      {names.islands.map(({ text, box, onLand }) => (
        <Words
          text={text}
          x={box.x + (islandStyle(typeScale).spacingPx ?? 0) / 2}
          y={box.y}
          style={{ ...style(onLand), ...islandStyle(typeScale) }}
        />
      ))}
      {names.peaks.map((each) => (
        <Summit {...each} frame={frame} />
      ))}
      {names.airfields.map((each) => (
        <AirfieldSign {...each} frame={frame} />
      ))}
      {[...names.peaks, ...names.airfields].map(
        ({ name }) =>
          name && <Words text={name.text} x={name.box.x} y={name.box.y} style={style(name.onLand)} />,
      )}
    </g>
  );
}

function Summit({ at, peak, frame }: PeakOnSheet & { readonly frame: ChartFrame }): VNode {
  const half = PEAK_RADIUS_PX * frame.typeScale;
  return (
    <path
      d={`M${px(at.x)} ${px(at.y - half)}l${px(half)} ${px(half * 1.7)}h${px(-2 * half)}Z`}
      fill={frame.theme.soft}
      stroke={frame.theme.land[0]}
      stroke-width={1}
      data-peak={peak.name}
    />
  );
}

/** A ring with a bar along the runway. */
function AirfieldSign(props: AirfieldOnSheet & { readonly frame: ChartFrame }): VNode {
  const { at, airfield, runwayDeg, frame } = props;
  const radiusPx = AIRFIELD_RADIUS_PX * frame.typeScale;
  const reachPx = radiusPx * 1.75;
  return (
    <g
      transform={`translate(${px(at.x)} ${px(at.y)})`}
      stroke={frame.theme.soft}
      stroke-width={px(1.5 * Math.sqrt(frame.typeScale))}
      fill={frame.theme.paper}
      data-airfield={airfield.name}
    >
      <circle r={px(radiusPx)} />
      {runwayDeg !== null && (
        <path d={`M0 ${px(-reachPx)}V${px(reachPx)}`} transform={`rotate(${angle(runwayDeg)})`} />
      )}
    </g>
  );
}

function ringPath(frame: ChartFrame, ring: readonly LatLon[]): string {
  if (!ring.every((corner) => drawable(frame, corner))) return "";
  const corners = ring.map(frame.projection.toPaper);
  return reachesWindow(frame, corners) ? pathThrough(corners, true) : "";
}

/** Land wholly off the sheet is not drawn at all: it would cost time, and the rasteriser gives up where all it is given lies outside. */
function reachesWindow({ window }: ChartFrame, corners: readonly PaperPoint[]): boolean {
  const { left, top, right, bottom } = inset(window, -SHALLOWS_PX);
  const xs = corners.map(({ x }) => x);
  const ys = corners.map(({ y }) => y);
  return (
    Math.max(...xs) >= left && Math.min(...xs) <= right && Math.max(...ys) >= top && Math.min(...ys) <= bottom
  );
}

/** Low ground wears the first tint (under the coast), middle the second, high the third; in between the second shows through. */
function tint(frame: ChartFrame, aboveFt: number): { fill: string; "fill-opacity"?: number } {
  const [, middle, high] = frame.theme.land;
  if (aboveFt >= HIGH_FT) return { fill: high };
  if (aboveFt >= HIGH_FT / 2) return { fill: high, "fill-opacity": 0.5 };
  return aboveFt >= HIGH_FT / 5 ? { fill: middle } : { fill: middle, "fill-opacity": 0.5 };
}
