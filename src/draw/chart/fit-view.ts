/** A good first view of a situation: the aircraft and the stations tuned, with room for their roses and words. */

import { type LatLon, wrap180 } from "../../earth/index.ts";
import type { Situation } from "../../scene/index.ts";
import { THEMES } from "../theme.ts";
import { chartFrame } from "./frame.ts";
import { type ChartView, chartProjection } from "./projection.ts";
import { seenOnChart } from "./seen.ts";
import { roseRadiusPx, tunedStations } from "./station-plan.ts";

const NARROWEST_NM = 40;
const WIDEST_NM = 500;
/** With one place alone to show. */
const ALONE_NM = 80;
/** A station farther than this from the others is left off the sheet. */
const TOO_FAR_NM = 260;
/** Free paper beyond a rose, px; less on a small sheet. */
const MARGIN_PX = 44;
/** Room for an aircraft that may be anywhere near the stations tuned. */
const COVERED_NM = 140;

/**
 * Widths are rounded up to 5 NM. The covered aircraft has no part in the view, or the view would give it away: the
 * stations tuned are shown with room round them.
 */
export function fitView(situation: Situation, widthPx: number, heightPx: number, typeScale = 1): ChartView {
  const places = placesToShow(situation);
  const first = places[0] ?? situation.scene.aircraft.position;
  const near = places.filter((place) => roughlyApartNm(first, place) <= TOO_FAR_NM);
  const centre = middleOf(near.length === 0 ? [first] : near);
  const trial = chartFrame({
    view: { centre, widthNm: 100 },
    widthPx,
    heightPx,
    theme: THEMES.light,
    idPrefix: "fit",
    typeScale,
  });
  const { left, right, top, bottom } = trial.window;
  const room = roseRadiusPx(trial) * 0.9 + Math.min(MARGIN_PX * typeScale, widthPx * 0.05);
  const roomX = Math.max(widthPx * 0.3, right - left - 2 * room);
  const roomY = Math.max(heightPx * 0.3, bottom - top - 2 * room);
  const points = near.map(chartProjection({ centre, widthNm: 100 }, widthPx, heightPx).toPaper);
  const spanX = Math.max(0, ...points.map(({ x }) => Math.abs(x - widthPx / 2))) * 2;
  const spanY = Math.max(0, ...points.map(({ y }) => Math.abs(y - heightPx / 2))) * 2;
  const wantedNm = 100 * Math.max(spanX / roomX, spanY / roomY);
  const covered = !seenOnChart(situation).aircraft;
  const narrowestNm = covered ? COVERED_NM : NARROWEST_NM;
  const widthNm =
    spanX + spanY < 1
      ? covered
        ? COVERED_NM
        : ALONE_NM
      : Math.min(WIDEST_NM, Math.max(narrowestNm, wantedNm));
  return { centre, widthNm: Math.ceil(widthNm / 5) * 5 };
}

function placesToShow(situation: Situation): LatLon[] {
  const tuned = [...tunedStations(situation).keys()].map(({ position }) => position);
  if (seenOnChart(situation).aircraft) return [situation.scene.aircraft.position, ...tuned];
  if (tuned.length > 0) return tuned;
  return situation.scene.stations.map(({ position }) => position);
}

/** Rough: good to a few per cent, which is enough to choose what to show. */
export function roughlyApartNm(a: LatLon, b: LatLon): number {
  const cosLat = Math.cos((((a.latDeg + b.latDeg) / 2) * Math.PI) / 180);
  return 60 * Math.hypot(a.latDeg - b.latDeg, wrap180(a.lonDeg - b.lonDeg) * cosLat);
}

/** The middle of the box round the places, on the short way round the earth. */
function middleOf(places: readonly LatLon[]): LatLon {
  const origin = places[0]?.lonDeg ?? 0;
  const lats = places.map(({ latDeg }) => latDeg);
  const lons = places.map(({ lonDeg }) => wrap180(lonDeg - origin));
  return {
    latDeg: (Math.min(...lats) + Math.max(...lats)) / 2,
    lonDeg: wrap180(origin + (Math.min(...lons) + Math.max(...lons)) / 2),
  };
}
