/** An aircraft set down by radial and distance from a station: the beginning of nearly every problem. */

import {
  direct,
  type LatLon,
  magneticDeg,
  nmFromFt,
  type StationDeg,
  stationDeg,
  trueDeg,
  trueFromStation,
  variation,
  type Wind,
  wrap180,
} from "../earth/index.ts";
import type { Face, ReceiverReading, ReceiverSettings } from "../panel/index.ts";
import { type Station, serviceRadiusNm } from "../radio/index.ts";
import type { Scene } from "../scene/index.ts";
import type { Chance } from "./chance.ts";
import type { Facts } from "./facts.ts";
import { physicalNeedleDeg, physicalRadial } from "./functions.ts";
import type { World } from "./world.ts";

/** The club trainer of every problem, kt. */
export const TAS_KT = 100;
export const CALM: Wind = { from: trueDeg(0), speedKt: 0 };
const HIGHEST_ALTITUDE_FT = 18_000;

/** An aircraft and the station its receiver is tuned to. */
export interface Stand {
  readonly station: Station;
  readonly position: LatLon;
  readonly altitudeFt: number;
  readonly facts: Facts;
}

/** Sets the aircraft down. Radial, course (station's north) and heading (magnetic) in degrees. */
export function stand(
  world: World,
  at: {
    readonly station: Station;
    readonly radialDeg: number;
    readonly distanceNm: number;
    readonly altitudeFt: number;
    readonly courseDeg: number;
    readonly headingDeg: number;
    readonly wind?: Wind;
    readonly tasKt?: number;
  },
): Stand {
  const { station, distanceNm, altitudeFt } = at;
  const azimuth = trueFromStation(stationDeg(at.radialDeg), station.declinationDeg);
  const position = direct(station.position, azimuth, distanceNm);
  const { variationDeg } = variation({ position, altitudeFt, date: world.date });
  return {
    station,
    position,
    altitudeFt,
    facts: {
      azimuth,
      declinationDeg: station.declinationDeg,
      variationDeg,
      course: stationDeg(at.courseDeg),
      heading: magneticDeg(at.headingDeg),
      distanceNm,
      heightNm: nmFromFt(altitudeFt - station.elevationFt),
      tasKt: at.tasKt ?? TAS_KT,
      wind: at.wind ?? CALM,
    },
  };
}

/** A place drawn round a station: whole degrees and miles, inside the published volume where there is one, in hundreds of feet. */
export interface Spot {
  readonly station: Station;
  readonly radialDeg: number;
  readonly distanceNm: number;
  readonly altitudeFt: number;
}

/**
 * Draws a spot, 6 to 55 NM out and 1,500 to 6,500 ft above the station unless told otherwise; null where the station's class does not
 * reach so far.
 */
export function drawSpot(
  chance: Chance,
  stations: readonly Station[],
  ranges: {
    readonly distanceNm?: readonly [number, number];
    readonly heightFt?: readonly [number, number];
  } = {},
): Spot | null {
  if (stations.length === 0) return null;
  const station = chance.pick(stations);
  const [lowestFt, highestFt] = ranges.heightFt ?? [1_500, 6_500];
  const altitudeFt =
    Math.ceil((station.elevationFt + chance.integer(lowestFt / 100, highestFt / 100) * 100) / 100) * 100;
  if (altitudeFt > HIGHEST_ALTITUDE_FT) return null;
  const [nearestNm, wantedNm] = ranges.distanceNm ?? [6, 55];
  const farthestNm = Math.min(wantedNm, Math.floor(protectedNm(station, altitudeFt)));
  if (farthestNm < nearestNm) return null;
  return {
    station,
    radialDeg: chance.integer(1, 360),
    distanceNm: chance.integer(nearestNm, farthestNm),
    altitudeFt,
  };
}

/** Radius of the published volume at an altitude, NM; 40 where the class is not known. */
export function protectedNm(station: Station, altitudeFt: number): number {
  if (station.vorClass === null) return 40;
  return serviceRadiusNm(station.vorClass, altitudeFt - station.elevationFt);
}

/** Whether needle and flag leave no doubt: not within 5 degrees of abeam, and the needle centred or plainly off. */
export function isClearCut(facts: Facts): boolean {
  const offDeg = Math.abs(wrap180(physicalRadial(facts) - facts.course));
  if (Math.abs(offDeg - 90) < 5) return false;
  const needle = Math.abs(physicalNeedleDeg(facts));
  return needle < 1e-6 || needle >= 1.7;
}

/** A course near the spot's radial (two in five), near its reciprocal (seven in twenty) or free; whole degrees. */
export function drawCourse(chance: Chance, radialDeg: number, withinDeg = 9): number {
  if (chance.odds(0.4)) return radialDeg + chance.integer(-withinDeg, withinDeg);
  if (chance.odds(0.35 / 0.6)) return radialDeg + 180 + chance.integer(-withinDeg, withinDeg);
  return chance.integer(1, 360);
}

/** A receiver tuned to a station. */
export const tunedTo = (
  name: string,
  station: Station,
  course: StationDeg,
  face: Face = "cdi",
): ReceiverSettings => ({
  name,
  frequencyMhz: station.frequencyMhz,
  course,
  face,
  bearingErrorDeg: 0,
});

/** The scene of a stand, its receiver NAV1 tuned and its part covered. */
export function sceneAt(
  world: World,
  at: Stand,
  given: {
    readonly title: string;
    readonly ask: string;
    readonly covers: readonly string[];
    /** In place of NAV1 with a fixed card. */
    readonly receivers?: readonly ReceiverSettings[];
  },
): Scene {
  return {
    title: given.title,
    about: "",
    date: world.date,
    stations: world.stations,
    land: world.land,
    aircraft: {
      position: at.position,
      heading: at.facts.heading,
      altitudeFt: at.altitudeFt,
      tasKt: at.facts.tasKt,
    },
    wind: at.facts.wind,
    receivers: given.receivers ?? [tunedTo("NAV1", at.station, at.facts.course)],
    signal: null,
    covers: given.covers,
    ask: given.ask,
  };
}

/** Whether a receiver measures a bearing from the station meant, which not every drawn place allows: ground may stand between. */
export const isReceived = (
  reading: ReceiverReading | undefined,
  station: Station,
): reading is ReceiverReading =>
  reading !== undefined &&
  (reading.signal.kind === "good" || reading.signal.kind === "weak") &&
  reading.signal.station.ident === station.ident;
