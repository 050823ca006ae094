/** Which thing on the chart a hand means: the nearest within reach, or else the bare place. Pure. */

import type { ChartProjection } from "../../draw/index.ts";
import type { LatLon } from "../../earth/index.ts";
import type { Scene } from "../../scene/index.ts";
import type { ScreenPoint } from "../input/turn.ts";
import { aircraftIsSeen, type MeasureEnd } from "./measured.ts";

/** A hand this near a thing means the thing, px. */
export const SNAP_PX = 10;

/** The end at a point of the paper. Of things equally near the station goes before the airfield, and that before the aircraft. */
export function snappedEnd(point: ScreenPoint, scene: Scene, projection: ChartProjection): MeasureEnd {
  let best: MeasureEnd = { kind: "place", at: projection.toWorld(point.x, point.y) };
  let bestPx = SNAP_PX;
  let found = false;
  const offer = (end: MeasureEnd, place: LatLon) => {
    const at = projection.toPaper(place);
    const awayPx = Math.hypot(at.x - point.x, at.y - point.y);
    // Places on the far side of the earth have no true distance on the paper; they are never near.
    if (!(awayPx <= SNAP_PX) || (awayPx >= bestPx && found)) return;
    found = true;
    best = end;
    bestPx = awayPx;
  };
  const named = new Set<string>();
  for (const { ident, position } of scene.stations) {
    // Where several share an ident the name means the first.
    offer(named.has(ident) ? { kind: "place", at: position } : { kind: "station", ident }, position);
    named.add(ident);
  }
  for (const { name, position } of scene.land?.airfields ?? []) offer({ kind: "airfield", name }, position);
  if (aircraftIsSeen(scene)) offer({ kind: "aircraft" }, scene.aircraft.position);
  return best;
}
