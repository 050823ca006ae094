/**
 * Which station an ident means. Our own files hold each ident once and go before the table. In the worldwide table many
 * stations share an ident: then the one nearest to the aircraft is tuned, and a position may not be counted from it.
 */

import { FRAME_LIMIT_LAT_DEG, geodesicDistanceNm, type LatLon, latLonText } from "../earth/index.ts";
import { frequencyText, type Station } from "../radio/index.ts";
import { nearMatch } from "./near-match.ts";
import { listed } from "./reading.ts";

export interface Catalogue {
  readonly own: readonly Station[];
  readonly table: readonly Station[];
}

/** Farther than any station is received from an aircraft in these files (60,000 ft over a 4/3 earth reaches 301 NM). */
export const AROUND_NM = 300;
/** One degree of latitude is at least this many NM anywhere on the ellipsoid. */
const LEAST_NM_PER_DEG = 59.7;

/** The stations of an ident, upper or lower case: the own one, or else all of the table's. */
export function stationsNamed({ own, table }: Catalogue, ident: string): readonly Station[] {
  const named = (station: Station): boolean => station.ident === ident.toUpperCase();
  const owned = own.filter(named);
  return owned.length > 0 ? owned : table.filter(named);
}

/** The nearest of several stations; null when there are none. */
export function nearest(stations: readonly Station[], position: LatLon): Station | null {
  const byDistance = stations
    .map((station) => ({ station, distanceNm: geodesicDistanceNm(position, station.position) }))
    .sort((one, other) => one.distanceNm - other.distanceNm);
  return byDistance[0]?.station ?? null;
}

/** The table's stations that can matter to an aircraft there: those within `AROUND_NM`, and those named. */
export const stationsAround = (
  table: readonly Station[],
  position: LatLon,
  named: ReadonlySet<Station>,
): Station[] =>
  table.filter(
    (station) => named.has(station) || (hasFrame(station) && isWithin(station.position, position, AROUND_NM)),
  );

/** Whether a bearing can be counted at the station at all: near a pole its rose has no use. */
export const hasFrame = (station: Station): boolean =>
  Math.abs(station.position.latDeg) <= FRAME_LIMIT_LAT_DEG &&
  Math.abs(station.dmeSite?.position.latDeg ?? 0) <= FRAME_LIMIT_LAT_DEG;

const isWithin = (one: LatLon, other: LatLon, limitNm: number): boolean =>
  Math.abs(one.latDeg - other.latDeg) * LEAST_NM_PER_DEG <= limitNm &&
  geodesicDistanceNm(one, other) <= limitNm;

/** `Tamsel 115.60 at 10°09.0′S 002°19.0′E` and so on, at most four of them. */
export function describeSome(stations: readonly Station[]): string {
  const some = stations.slice(0, 4).map(({ name, frequencyMhz, position }) => {
    const where = latLonText(position);
    return `${name} ${frequencyText(frequencyMhz)} at ${where}`;
  });
  const more = stations.length - some.length;
  return listed(more > 0 ? [...some, `${more} more`] : some, "and");
}

/** What to say where an ident is unknown: the nearest known one, or the known ones when they are few. */
export function whichAreKnown({ own, table }: Catalogue, ident: string): string {
  const idents = [...new Set([...own, ...table].map((station) => station.ident))];
  if (idents.length === 0) return "the scene has no stations; name a file of them under stations:";
  const meant = nearMatch(ident, idents);
  if (meant !== null && idents.length <= 200) return `did you mean ${meant}?`;
  if (idents.length > 12) return `none of the scene's ${idents.length} idents is ${ident}`;
  return `its stations are ${listed(idents, "and")}`;
}
