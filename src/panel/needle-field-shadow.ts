/**
 * The shadows that hills throw at one altitude, quick enough for every place of a chart. `terrainToward` decides; here its answer
 * is foreseen from what it says along a fan of azimuths over each peak: how steeply the peak stands against the sky, and from
 * where on its back it hides what stands on it. Between two azimuths of the fan both are taken with a margin, and wherever the
 * answer hangs on the margin `terrainToward` itself is asked.
 * Heights are feet above mean sea level, distances NM from the antenna.
 */

import { FT_PER_NM, trueDeg } from "../earth/index.ts";
import {
  EARTH_RADIUS_NM,
  EFFECTIVE_EARTH_RADIUS_NM,
  type TerrainAround,
  terrainToward,
} from "../radio/index.ts";

/** Whether hills hide an aircraft in a direction (degrees from true north) and at a distance from the antenna (NM). */
export type Shadow = (azimuthDeg: number, distanceNm: number) => boolean;

/** Azimuths of a peak's fan from its middle to its side; both sides are alike. */
const FAN = 1024;
/** Far behind any peak, where the sky line's slope is read off the altitude that clears it. */
const FAR_NM = 400;
/** Below any ground: such an aircraft is taken to stand on it. */
const UNDERGROUND_FT = -1e6;
/** What `terrainToward` calls rounding, with as much again, feet. */
const ROUNDING_FT = 0.02;
const CREST_WITHIN_NM = 0.001;
const SIDE_MARGIN_DEG = 1e-5;

interface PeakFan {
  readonly alone: TerrainAround;
  readonly azimuthDeg: number;
  /** Nearer than this nothing of the peak is in the way. */
  readonly frontNm: number;
  /** From here on the whole peak is between antenna and aircraft. */
  readonly backNm: number;
  readonly halfWidthDeg: number;
  readonly stepDeg: number;
  /** The slope down to the sea far away. A sky line as low as that is not told from a lower one. */
  readonly leastSlope: number;
  /** By azimuth of the fan; NaN until asked for. */
  readonly slopes: Float64Array;
  readonly crestsNm: Float64Array;
}

/** The shadows at an altitude, out to the horizon; places beyond it are hidden anyway and may be answered either way. */
export function shadowAt(terrain: TerrainAround, altitudeFt: number, horizonNm: number): Shadow {
  const fans = terrain.peaks
    .map((seen) => peakFan({ antennaFt: terrain.antennaFt, peaks: [seen] }, seen))
    .filter(({ frontNm }) => frontNm < horizonNm);
  if (fans.length === 0) return () => false;
  return (azimuthDeg, distanceNm) => {
    for (const fan of fans) if (hides(fan, altitudeFt, azimuthDeg, distanceNm)) return true;
    return false;
  };
}

function peakFan(
  alone: TerrainAround,
  { peak, azimuth, distanceNm }: TerrainAround["peaks"][number],
): PeakFan {
  const { baseRadiusNm } = peak;
  const sine = Math.sin(baseRadiusNm / EARTH_RADIUS_NM) / Math.sin(distanceNm / EARTH_RADIUS_NM);
  // From within its base a peak may stand in any direction.
  const inside = azimuth === null || distanceNm <= baseRadiusNm || sine >= 1;
  const halfWidthDeg = inside ? 180 : (Math.asin(sine) * 180) / Math.PI + SIDE_MARGIN_DEG;
  return {
    alone,
    azimuthDeg: azimuth ?? 0,
    frontNm: distanceNm - baseRadiusNm - CREST_WITHIN_NM,
    backNm: distanceNm + baseRadiusNm + CREST_WITHIN_NM,
    halfWidthDeg,
    stepDeg: halfWidthDeg / FAN,
    leastSlope: slopeTo(alone.antennaFt, 0, FAR_NM),
    slopes: new Float64Array(FAN + 1).fill(Number.NaN),
    crestsNm: new Float64Array(FAN + 1).fill(Number.NaN),
  };
}

function hides(fan: PeakFan, altitudeFt: number, azimuthDeg: number, distanceNm: number): boolean {
  if (distanceNm <= fan.frontNm) return false;
  const turnDeg = Math.abs(azimuthDeg - fan.azimuthDeg);
  const offDeg = turnDeg > 180 ? 360 - turnDeg : turnDeg;
  if (offDeg >= fan.halfWidthDeg) return false;
  const index = Math.floor(offDeg / fan.stepDeg);
  const here = slopeAt(fan, index);
  const next = slopeAt(fan, index + 1);
  // Between its neighbours a smooth line strays by an eighth of its bend at most. The summit is sharp, and the fan begins there.
  const bendHere = index === 0 ? 0 : Math.abs(slopeAt(fan, index - 1) - 2 * here + next);
  const bendNext = Math.abs(here - 2 * next + slopeAt(fan, index + 2));
  const slope = here + (next - here) * (offDeg / fan.stepDeg - index);
  const margin = Math.max(bendHere, bendNext) + ROUNDING_FT / FT_PER_NM / distanceNm;
  const aircraftSlope = slopeTo(fan.alone.antennaFt, altitudeFt, distanceNm);
  if (aircraftSlope > slope + margin) return false;
  const isBelow = aircraftSlope < slope - margin && Math.min(here, next) > fan.leastSlope;
  if (distanceNm >= fan.backNm) return isBelow || isHidden(fan, azimuthDeg, distanceNm, altitudeFt);
  // An infinite crest makes every comparison fail, and the engine answers.
  const nearNm = crestNm(fan, index);
  const farNm = crestNm(fan, index + 1);
  const marginNm = Math.abs(nearNm - farNm) + 2 * CREST_WITHIN_NM;
  if (distanceNm < Math.min(nearNm, farNm) - marginNm) return false;
  if (isBelow && distanceNm > Math.max(nearNm, farNm) + marginNm) return true;
  return isHidden(fan, azimuthDeg, distanceNm, altitudeFt);
}

const isHidden = (fan: PeakFan, azimuthDeg: number, distanceNm: number, altitudeFt: number): boolean =>
  terrainToward(fan.alone, { azimuth: trueDeg(azimuthDeg), distanceNm, altitudeFt }).blockedBy !== null;

/** Tangent of the angle of the peak's sky line above the antenna's horizontal; at least `leastSlope`. */
function slopeAt(fan: PeakFan, index: number): number {
  const known = fan.slopes[index];
  if (known === undefined) return fan.leastSlope;
  if (!Number.isNaN(known)) return known;
  const { leastAltitudeFt } = terrainToward(fan.alone, {
    azimuth: trueDeg(fan.azimuthDeg + index * fan.stepDeg),
    distanceNm: FAR_NM,
    altitudeFt: 0,
  });
  const slope = slopeTo(fan.alone.antennaFt, leastAltitudeFt ?? 0, FAR_NM);
  fan.slopes[index] = slope;
  return slope;
}

/** From which distance on the peak hides what stands on its back; infinite where it hides none of it, or not all. */
function crestNm(fan: PeakFan, index: number): number {
  const known = fan.crestsNm[index] ?? Number.NaN;
  if (!Number.isNaN(known)) return known;
  const azimuthDeg = fan.azimuthDeg + index * fan.stepDeg;
  const hiddenAt = (nm: number): boolean => isHidden(fan, azimuthDeg, nm, UNDERGROUND_FT);
  let seen = Math.max(fan.frontNm, CREST_WITHIN_NM);
  let hidden = fan.backNm;
  if (hiddenAt(seen) || !hiddenAt(hidden)) hidden = Number.POSITIVE_INFINITY;
  else
    while (hidden - seen > CREST_WITHIN_NM) {
      const middle = (seen + hidden) / 2;
      if (hiddenAt(middle)) hidden = middle;
      else seen = middle;
    }
  fan.crestsNm[index] = hidden;
  return hidden;
}

/** Tangent of the angle above the antenna's horizontal at which a height appears over the 4/3 earth. */
function slopeTo(antennaFt: number, heightFt: number, distanceNm: number): number {
  const angle = distanceNm / EFFECTIVE_EARTH_RADIUS_NM;
  const radius = EFFECTIVE_EARTH_RADIUS_NM + heightFt / FT_PER_NM;
  const antenna = EFFECTIVE_EARTH_RADIUS_NM + antennaFt / FT_PER_NM;
  return (radius * Math.cos(angle) - antenna) / (radius * Math.sin(angle));
}
