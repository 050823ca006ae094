/** Which radial a station sends toward a place: the true azimuth out of the station, counted from the station's own north. */

import { type StationDeg, stationDeg, stationFromTrue, type TrueDeg } from "../earth/index.ts";
import type { Station } from "./station.ts";

/**
 * A test station (VOT) sends this radial in every direction, so the needle centres with 000 FROM or 180 TO wherever
 * the aircraft stands. Source: FAA AIM 1-1-4.
 */
export const VOT_RADIAL: StationDeg = stationDeg(0);

/**
 * The radial transmitted toward a true azimuth, station to aircraft. Aircraft heading and the variation where the
 * aircraft is have no part in it. A VOT's is 000 everywhere.
 */
export const radialToward = (station: Station, azimuth: TrueDeg): StationDeg =>
  station.kind === "VOT" ? VOT_RADIAL : stationFromTrue(azimuth, station.declinationDeg);
