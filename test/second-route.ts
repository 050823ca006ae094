/**
 * A second route to the same answers: plain spherical trigonometry, with nothing imported from src. On a sphere of one
 * NM to the arc minute, so distances differ from the ellipsoid's by up to 0.5 % and azimuths by up to 0.2 degree; the
 * tests that use it say how closely they expect to agree. Latitude north, longitude east, cross-track right positive.
 */

export interface SpherePlace {
  readonly latDeg: number;
  readonly lonDeg: number;
}

/** One minute of arc is one NM (radius 3437.7468 NM). */
const NM_PER_RAD = (180 * 60) / Math.PI;

const rad = (deg: number) => (deg * Math.PI) / 180;
const deg = (radians: number) => (radians * 180) / Math.PI;
const onCircle = (degrees: number) => ((degrees % 360) + 360) % 360;
const east = (degrees: number) => onCircle(degrees + 180) - 180;

/** Great-circle distance, NM, by the haversine. */
export function sphereDistanceNm(a: SpherePlace, b: SpherePlace): number {
  const sinLat = Math.sin(rad(b.latDeg - a.latDeg) / 2);
  const sinLon = Math.sin(rad(b.lonDeg - a.lonDeg) / 2);
  const hav = sinLat ** 2 + Math.cos(rad(a.latDeg)) * Math.cos(rad(b.latDeg)) * sinLon ** 2;
  return 2 * Math.asin(Math.min(1, Math.sqrt(hav))) * NM_PER_RAD;
}

/** True azimuth at `a` of the great circle to `b`, [0, 360), by the four-part formula. */
export function sphereAzimuthDeg(a: SpherePlace, b: SpherePlace): number {
  const lon = rad(b.lonDeg - a.lonDeg);
  const [lat1, lat2] = [rad(a.latDeg), rad(b.latDeg)];
  const across = Math.sin(lon) * Math.cos(lat2);
  const along = Math.cos(lat1) * Math.sin(lat2) - Math.sin(lat1) * Math.cos(lat2) * Math.cos(lon);
  return onCircle(deg(Math.atan2(across, along)));
}

/** The place reached from `a` along an azimuth after a distance. */
export function sphereDestination(a: SpherePlace, azimuthDeg: number, distanceNm: number): SpherePlace {
  const d = distanceNm / NM_PER_RAD;
  const lat1 = rad(a.latDeg);
  const sinLat2 = Math.sin(lat1) * Math.cos(d) + Math.cos(lat1) * Math.sin(d) * Math.cos(rad(azimuthDeg));
  const lon = Math.atan2(
    Math.sin(rad(azimuthDeg)) * Math.sin(d) * Math.cos(lat1),
    Math.cos(d) - Math.sin(lat1) * sinLat2,
  );
  return { latDeg: deg(Math.asin(sinLat2)), lonDeg: east(a.lonDeg + deg(lon)) };
}

/** How far a place lies right of the great circle from `a` toward `b`, and how far along it, NM, by Napier's rules. */
export function sphereCrossTrack(a: SpherePlace, b: SpherePlace, place: SpherePlace) {
  const d = sphereDistanceNm(a, place) / NM_PER_RAD;
  const off = rad(sphereAzimuthDeg(a, place) - sphereAzimuthDeg(a, b));
  const across = Math.asin(Math.sin(d) * Math.sin(off));
  const along = Math.atan2(Math.sin(d) * Math.cos(off), Math.cos(d));
  return { crossTrackNm: across * NM_PER_RAD, alongTrackNm: along * NM_PER_RAD };
}

/** The place a fraction of the way from `a` to `b`. */
export const sphereIntermediate = (a: SpherePlace, b: SpherePlace, fraction: number): SpherePlace =>
  sphereDestination(a, sphereAzimuthDeg(a, b), sphereDistanceNm(a, b) * fraction);

/** Where an azimuth from `a` meets an azimuth from `b`: a triangle from one side and its two angles; null when they part. */
export function sphereCrossing(
  a: SpherePlace,
  azimuthADeg: number,
  b: SpherePlace,
  azimuthBDeg: number,
): SpherePlace | null {
  const side = sphereDistanceNm(a, b) / NM_PER_RAD;
  const angleA = rad(east(azimuthADeg - sphereAzimuthDeg(a, b)));
  const angleB = rad(east(sphereAzimuthDeg(b, a) - azimuthBDeg));
  // Both lines must leave on the same side of the base line.
  if (Math.sin(angleA) * Math.sin(angleB) <= 0) return null;
  const [A, B] = [Math.abs(angleA), Math.abs(angleB)];
  const cosC = -Math.cos(A) * Math.cos(B) + Math.sin(A) * Math.sin(B) * Math.cos(side);
  const fromA = Math.atan2(Math.sin(side) * Math.sin(A) * Math.sin(B), Math.cos(B) + Math.cos(A) * cosC);
  if (fromA > Math.PI / 2) return null;
  return sphereDestination(a, azimuthADeg, fromA * NM_PER_RAD);
}
