/** Azimuth and distance from one station to places within 200 NM: the station frame beside geographiclib in the same run. */

import geographiclib from "geographiclib-geodesic";
import {
  azimuthDistance,
  azimuthDistances,
  direct,
  type LatLon,
  placeTable,
  stationFrame,
  trueDeg,
} from "../src/earth/index.ts";
import { figure, perSecond } from "./rate.ts";

const STATION: LatLon = { latDeg: -10.3, lonDeg: 2.2 };
const COUNT = 5000;

/** Spread evenly by the golden angle, so that no direction or distance is favoured. */
const places = Array.from({ length: COUNT }, (_, index) =>
  direct(STATION, trueDeg(index * 137.507764), 200 * Math.sqrt((index + 1) / COUNT)),
);

/** Lines of the report. */
export function bearings(): string[] {
  const { WGS84, DISTANCE, AZIMUTH } = geographiclib.Geodesic;
  const full = perSecond(COUNT, () => {
    for (const { latDeg, lonDeg } of places)
      WGS84.Inverse(STATION.latDeg, STATION.lonDeg, latDeg, lonDeg, DISTANCE | AZIMUTH);
  });
  const frame = stationFrame(STATION);
  const out = { azimuthDeg: 0, distanceNm: 0 };
  const single = perSecond(COUNT, () => {
    for (const { latDeg, lonDeg } of places) azimuthDistance(frame, latDeg, lonDeg, out);
  });
  const table = placeTable(
    places.map((place) => place.latDeg),
    places.map((place) => place.lonDeg),
  );
  const azimuthsDeg = new Float64Array(COUNT);
  const distancesNm = new Float64Array(COUNT);
  const bulk = perSecond(COUNT, () => azimuthDistances(frame, table, azimuthsDeg, distancesNm));
  return [
    `geographiclib-geodesic, azimuth and distance   ${figure(full)} a second`,
    `station frame, place by place                  ${figure(single)} a second   ${(single / full).toFixed(1)} times`,
    `station frame, places made ready               ${figure(bulk)} a second   ${(bulk / full).toFixed(1)} times`,
  ];
}
