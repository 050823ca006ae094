/** Which meridians and parallels a sheet shows, and where they meet its edges. Minutes of arc; longitude from the centre's meridian. */

import { wrap180 } from "../../earth/index.ts";
import type { PaperPoint } from "../plain/paper.ts";
import type { ChartFrame } from "./frame.ts";

/** Steps in minutes of arc, each with how finely the border is ticked between two lines. */
const STEPS: readonly { readonly stepMin: number; readonly tickMin: number }[] = [
  { stepMin: 1, tickMin: 0.5 },
  { stepMin: 2, tickMin: 1 },
  { stepMin: 5, tickMin: 1 },
  { stepMin: 10, tickMin: 2 },
  { stepMin: 15, tickMin: 5 },
  { stepMin: 30, tickMin: 10 },
  { stepMin: 60, tickMin: 20 },
  { stepMin: 120, tickMin: 60 },
  { stepMin: 300, tickMin: 60 },
  { stepMin: 600, tickMin: 120 },
  { stepMin: 1200, tickMin: 300 },
];
/** Lines stand at least this far apart. */
const LEAST_APART_PX = 92;
/** Poleward of this the meridians run together and no net is drawn. */
const NET_LIMIT_DEG = 86;

export interface Net {
  /** In minutes of arc, south and west negative. */
  readonly parallelsMin: readonly number[];
  readonly meridiansMin: readonly number[];
  readonly latTickMin: number;
  readonly lonTickMin: number;
  readonly bounds: Bounds;
}

export interface Bounds {
  readonly southMin: number;
  readonly northMin: number;
  /** West and east of the centre's meridian. */
  readonly westMin: number;
  readonly eastMin: number;
}

export type Side = "left" | "right" | "top" | "bottom";

/** Which lines to draw; null where the sheet reaches so near a pole that a net would not be one. */
export function netOf(frame: ChartFrame): Net | null {
  const bounds = boundsOf(frame);
  if (!bounds) return null;
  const { widthPx, heightPx } = frame;
  const pxPerLatMin = heightPx / (bounds.northMin - bounds.southMin);
  const pxPerLonMin = widthPx / (bounds.eastMin - bounds.westMin);
  const apartPx = LEAST_APART_PX * Math.sqrt(frame.typeScale) * (frame.typeScale > 1.4 ? 1.3 : 1);
  const choose = (pxPerMin: number) =>
    STEPS.find(({ stepMin }) => stepMin * pxPerMin >= apartPx) ?? STEPS.at(-1);
  const lat = choose(pxPerLatMin);
  const lon = choose(pxPerLonMin);
  if (!lat || !lon) return null;
  const centreLonMin = frame.view.centre.lonDeg * 60;
  return {
    parallelsMin: multiples(lat.stepMin, bounds.southMin, bounds.northMin),
    meridiansMin: multiples(lon.stepMin, bounds.westMin + centreLonMin, bounds.eastMin + centreLonMin).map(
      (lonMin) => lonMin - centreLonMin,
    ),
    latTickMin: lat.tickMin,
    lonTickMin: lon.tickMin,
    bounds,
  };
}

function boundsOf(frame: ChartFrame): Bounds | null {
  const { widthPx, heightPx, projection, view } = frame;
  const edge = [0, 0.25, 0.5, 0.75, 1].flatMap((part) => [
    projection.toWorld(part * widthPx, 0),
    projection.toWorld(part * widthPx, heightPx),
    projection.toWorld(0, part * heightPx),
    projection.toWorld(widthPx, part * heightPx),
  ]);
  const lats = edge.map(({ latDeg }) => latDeg);
  const lons = edge.map(({ lonDeg }) => wrap180(lonDeg - view.centre.lonDeg));
  const southMin = Math.min(...lats) * 60;
  const northMin = Math.max(...lats) * 60;
  const westMin = Math.min(...lons) * 60;
  const eastMin = Math.max(...lons) * 60;
  const nearPole = Math.max(Math.abs(southMin), Math.abs(northMin)) > NET_LIMIT_DEG * 60;
  if (nearPole || !(eastMin > westMin) || !(northMin > southMin) || eastMin - westMin > 240 * 60) return null;
  return { southMin, northMin, westMin, eastMin };
}

export function paperAt(frame: ChartFrame, latMin: number, lonFromCentreMin: number): PaperPoint {
  const lonDeg = wrap180(frame.view.centre.lonDeg + lonFromCentreMin / 60);
  return frame.projection.toPaper({ latDeg: latMin / 60, lonDeg });
}

/**
 * Where a parallel meets the left or right edge (its y), or a meridian the top or bottom (its x). Lines are nearly straight over
 * a sheet, so walking along the line to the edge settles in a few steps; null when it does not meet the edge near the sheet.
 */
export function crossing(frame: ChartFrame, side: Side, lineMin: number, bounds: Bounds): number | null {
  const { window } = frame;
  const upright = side === "left" || side === "right";
  const goal = window[side];
  const point = (alongMin: number) =>
    upright ? paperAt(frame, lineMin, alongMin) : paperAt(frame, alongMin, lineMin);
  const miss = (at: PaperPoint) => (upright ? at.x : at.y) - goal;
  let a = upright ? bounds.westMin : bounds.southMin;
  let b = upright ? bounds.eastMin : bounds.northMin;
  let missA = miss(point(a));
  let missB = miss(point(b));
  for (let step = 0; step < 6 && Math.abs(missB) > 0.01 && missA !== missB; step++) {
    const next = b - (missB * (b - a)) / (missB - missA);
    if (!Number.isFinite(next) || Math.abs(upright ? next : next / 60) > (upright ? 1e5 : 89)) return null;
    a = b;
    missA = missB;
    b = next;
    missB = miss(point(b));
  }
  if (Math.abs(missB) > 0.5) return null;
  const at = point(b);
  return upright ? at.y : at.x;
}

function multiples(step: number, from: number, to: number): number[] {
  const found: number[] = [];
  for (let index = Math.ceil(from / step); index * step <= to; index++) found.push(index * step);
  return found;
}

/** 10°15′S; the equator has no side. */
export function latitudeText(latMin: number): string {
  const side = latMin > 0 ? "N" : latMin < 0 ? "S" : "";
  return `${degreesMinutes(Math.abs(latMin), 2)}${side}`;
}

/** 002°15′E, from any number of minutes; 180° and 000° have no side. */
export function longitudeText(lonMin: number): string {
  const wrapped = wrap180(lonMin / 60) * 60;
  const whole = Math.round(Math.abs(wrapped) * 10) / 10;
  const side = whole === 0 || whole === 10_800 ? "" : wrapped > 0 ? "E" : "W";
  return `${degreesMinutes(whole, 3)}${side}`;
}

function degreesMinutes(minutes: number, degreeDigits: number): string {
  const tenths = Math.round(minutes * 10);
  const degrees = Math.floor(tenths / 600);
  const rest = (tenths % 600) / 10;
  const text = Number.isInteger(rest) ? String(rest).padStart(2, "0") : rest.toFixed(1).padStart(4, "0");
  return `${String(degrees).padStart(degreeDigits, "0")}°${text}′`;
}
