/**
 * A station frame: the constants of one place on the WGS 84 ellipsoid, worked out once, so that azimuth and distance to
 * thousands of other places are cheap. The straight chord to the place is taken in the station's own east, north and up;
 * its direction is the normal section's azimuth, and closed series lead from section to geodesic and from chord to arc
 * (Rapp, Geometric Geodesy, part I, sections 3 and 4, from memory; each coefficient confirmed against Karney's method).
 *
 * Measured against geographiclib-geodesic for stations from 80 S to 80 N: at 200 NM azimuth within 5e-7 degree and
 * distance within 1.5 mm; at 400 NM 2.5e-6 degree and 4 cm; at 600 NM 7e-6 degree and 0.3 m. The errors grow with the
 * fourth power of distance (azimuth) and the fifth (distance), so beyond 600 NM the full method answers instead.
 */

import { type TrueDeg, trueDeg } from "./direction.ts";
import { inverse, SAME_PLACE_M, type SamePlace } from "./geodesic.ts";
import { type LatLon, latLon, refuseBadPlace } from "./position.ts";
import { M_PER_NM } from "./units.ts";

/** WGS 84 (NGA): semi-major axis and flattening. */
const A_M = 6_378_137;
const F = 1 / 298.257223563;
const E2 = F * (2 - F);
const SECOND_E2 = E2 / (1 - E2);
const RAD_PER_DEG = Math.PI / 180;

/** Poleward of this no frame is made: there a compass rose turns with every mile and the trade uses grid directions. */
export const FRAME_LIMIT_LAT_DEG = 80;
/** The series serve to this chord; beyond it the full geodesic method answers. */
export const SERIES_LIMIT_NM = 600;
const SERIES_LIMIT_M2 = (SERIES_LIMIT_NM * M_PER_NM) ** 2;
const SAME_PLACE_M2 = SAME_PLACE_M ** 2;

export interface StationFrame {
  readonly position: LatLon;
  readonly sinLat: number;
  readonly cosLat: number;
  readonly sinLon: number;
  readonly cosLon: number;
  /** Distance from the earth's axis, and north of the equator's plane, metres. */
  readonly axialM: number;
  readonly polarM: number;
  /** One over the radius of curvature in the prime vertical, per metre. */
  readonly perRadius: number;
  /** Second eccentricity squared times cos^2 latitude, and times sin latitude cos latitude. */
  readonly eta2: number;
  readonly eta2Tan: number;
}

/** Where `azimuthDistance` writes. */
export interface AzimuthDistance {
  /** From true north at the station, [0, 360). */
  azimuthDeg: number;
  /** Along the geodesic, NM. */
  distanceNm: number;
}

/** The frame of a station. Throws RangeError on a position out of range or poleward of 80 degrees. */
export function stationFrame(position: LatLon): StationFrame {
  const { latDeg, lonDeg } = latLon(position.latDeg, position.lonDeg);
  if (Math.abs(latDeg) > FRAME_LIMIT_LAT_DEG)
    throw new RangeError(
      `a station frame serves latitudes from ${FRAME_LIMIT_LAT_DEG} S to ${FRAME_LIMIT_LAT_DEG} N, got ${latDeg} degrees`,
    );
  const sinLat = Math.sin(latDeg * RAD_PER_DEG);
  const cosLat = Math.cos(latDeg * RAD_PER_DEG);
  const radiusM = A_M / Math.sqrt(1 - E2 * sinLat * sinLat);
  return {
    position: { latDeg, lonDeg },
    sinLat,
    cosLat,
    sinLon: Math.sin(lonDeg * RAD_PER_DEG),
    cosLon: Math.cos(lonDeg * RAD_PER_DEG),
    axialM: radiusM * cosLat,
    polarM: radiusM * (1 - E2) * sinLat,
    perRadius: 1 / radiusM,
    eta2: SECOND_E2 * cosLat * cosLat,
    eta2Tan: SECOND_E2 * cosLat * sinLat,
  };
}

/**
 * Writes true azimuth and distance from the station to a place into `out`, without allocating. Returns false, with 0 in
 * both, when the place is within a millimetre of the station and no direction exists; nearer than a metre
 * the azimuth is rounding noise (4e-7 degree at a metre, 4e-4 at a millimetre). Any longitude; throws RangeError on a
 * latitude outside [-90, 90] or NaN.
 */
export function azimuthDistance(
  frame: StationFrame,
  latDeg: number,
  lonDeg: number,
  out: AzimuthDistance,
): boolean {
  if (!(latDeg >= -90 && latDeg <= 90 && Number.isFinite(lonDeg))) refuseBadPlace(latDeg, lonDeg);
  const sinLat = Math.sin(latDeg * RAD_PER_DEG);
  const radiusM = A_M / Math.sqrt(1 - E2 * sinLat * sinLat);
  const axialM = radiusM * Math.cos(latDeg * RAD_PER_DEG);
  const eastwardRad = (lonDeg - frame.position.lonDeg) * RAD_PER_DEG;
  const outwardM = axialM * Math.cos(eastwardRad) - frame.axialM;
  const eastM = axialM * Math.sin(eastwardRad);
  const polarM = radiusM * (1 - E2) * sinLat - frame.polarM;
  return fromChord(frame, outwardM, eastM, polarM, out);
}

/** As `azimuthDistance`, for one place: a direction and a distance, or the word that there is no direction. */
export function fromStation(
  frame: StationFrame,
  place: LatLon,
): { readonly kind: "line"; readonly azimuth: TrueDeg; readonly distanceNm: number } | SamePlace {
  const out: AzimuthDistance = { azimuthDeg: 0, distanceNm: 0 };
  if (!azimuthDistance(frame, place.latDeg, place.lonDeg, out))
    return { kind: "same-place", distanceNm: 0, distanceM: 0 };
  return { kind: "line", azimuth: trueDeg(out.azimuthDeg), distanceNm: out.distanceNm };
}

/** Many places in earth-centred metres (x, y, z for each in turn), ready for any station's frame. */
export interface PlaceTable {
  readonly count: number;
  readonly xyzM: Float64Array;
}

/**
 * Places made ready once, to be asked about from many stations: the trigonometry of each place is done here, so that
 * `azimuthDistances` needs none but one arc tangent. Throws RangeError on a bad place or lists of unequal length.
 */
export function placeTable(latDeg: ArrayLike<number>, lonDeg: ArrayLike<number>): PlaceTable {
  const count = latDeg.length;
  if (lonDeg.length !== count)
    throw new RangeError(`latitudes and longitudes must be equally many, got ${count} and ${lonDeg.length}`);
  const xyzM = new Float64Array(3 * count);
  for (let i = 0; i < count; i++) {
    const lat = latDeg[i] ?? Number.NaN;
    const lon = lonDeg[i] ?? Number.NaN;
    refuseBadPlace(lat, lon);
    const sinLat = Math.sin(lat * RAD_PER_DEG);
    const radiusM = A_M / Math.sqrt(1 - E2 * sinLat * sinLat);
    const axialM = radiusM * Math.cos(lat * RAD_PER_DEG);
    xyzM[3 * i] = axialM * Math.cos(lon * RAD_PER_DEG);
    xyzM[3 * i + 1] = axialM * Math.sin(lon * RAD_PER_DEG);
    xyzM[3 * i + 2] = radiusM * (1 - E2) * sinLat;
  }
  return { count, xyzM };
}

/**
 * `azimuthDistance` for every place of a table, into two arrays of at least its length. A place that is the station
 * itself gets 0 in both. Throws RangeError when an array is too short.
 */
export function azimuthDistances(
  frame: StationFrame,
  places: PlaceTable,
  azimuthDeg: Float64Array,
  distanceNm: Float64Array,
): void {
  const { count, xyzM } = places;
  if (azimuthDeg.length < count || distanceNm.length < count)
    throw new RangeError(
      `${count} places need as many results, got room for ${Math.min(azimuthDeg.length, distanceNm.length)}`,
    );
  const out: AzimuthDistance = { azimuthDeg: 0, distanceNm: 0 };
  for (let i = 0; i < count; i++) {
    const x = xyzM[3 * i] as number;
    const y = xyzM[3 * i + 1] as number;
    const outwardM = x * frame.cosLon + y * frame.sinLon - frame.axialM;
    const eastM = y * frame.cosLon - x * frame.sinLon;
    fromChord(frame, outwardM, eastM, (xyzM[3 * i + 2] as number) - frame.polarM, out);
    azimuthDeg[i] = out.azimuthDeg;
    distanceNm[i] = out.distanceNm;
  }
}

/** The chord to a place, outward from the axis, east and along the axis, turned into azimuth and distance. */
function fromChord(
  frame: StationFrame,
  outwardM: number,
  eastM: number,
  polarM: number,
  out: AzimuthDistance,
): boolean {
  const northM = polarM * frame.cosLat - outwardM * frame.sinLat;
  const chordM2 = outwardM * outwardM + eastM * eastM + polarM * polarM;
  if (chordM2 > SERIES_LIMIT_M2) return fromFullMethod(frame, outwardM, eastM, polarM, out);
  if (chordM2 < SAME_PLACE_M2) {
    out.azimuthDeg = 0;
    out.distanceNm = 0;
    return false;
  }
  const perLevelM = 1 / Math.sqrt(eastM * eastM + northM * northM);
  const sinAz = eastM * perLevelM;
  const cosAz = northM * perLevelM;

  // Arc from chord: on the circle of curvature in this azimuth (Euler), arcsin by its series, next term under 1e-11.
  const curvature = (1 + frame.eta2 * cosAz * cosAz) * frame.perRadius;
  const half2 = 0.25 * chordM2 * curvature * curvature;
  const arcM =
    Math.sqrt(chordM2) * (1 + half2 * (1 / 6 + half2 * (3 / 40 + half2 * (15 / 336 + half2 * (105 / 3456)))));
  // The curvature changes along the line: -(1/8) eta^2 tan(lat) cos(az) sigma^4 N.
  const sigma = arcM * frame.perRadius;
  const sigma2 = sigma * sigma;
  const changing = (frame.eta2Tan * cosAz * sigma2 * sigma2) / (8 * frame.perRadius);

  // Geodesic from normal section: -(1/6) eta^2 sigma^2 sin cos + (1/24) eta^2 tan(lat) sigma^3 sin, radians.
  const section = Math.atan2(eastM, northM);
  const bend = sigma2 * sinAz * ((frame.eta2 * cosAz) / 6 - (frame.eta2Tan * sigma) / 24);
  const degrees = (section - bend) / RAD_PER_DEG;
  const positive = degrees < 0 ? degrees + 360 : degrees + 0;
  out.azimuthDeg = positive >= 360 ? 0 : positive;
  out.distanceNm = (arcM - changing) / M_PER_NM;
  return true;
}

/** Beyond the series: the place is read back from its chord and the full geodesic method answers. */
function fromFullMethod(
  frame: StationFrame,
  outwardM: number,
  eastM: number,
  polarM: number,
  out: AzimuthDistance,
): boolean {
  const outward = outwardM + frame.axialM;
  const latDeg = Math.atan2(polarM + frame.polarM, (1 - E2) * Math.hypot(outward, eastM)) / RAD_PER_DEG;
  const lonDeg = frame.position.lonDeg + Math.atan2(eastM, outward) / RAD_PER_DEG;
  const line = inverse(frame.position, latLon(latDeg, lonDeg));
  out.azimuthDeg = line.kind === "line" ? line.azimuth : 0;
  out.distanceNm = line.distanceNm;
  return line.kind === "line";
}
