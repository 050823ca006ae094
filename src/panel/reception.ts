/**
 * What arrives on the tuned channel: nothing, a good bearing, a weak one, the muddle overhead, two stations at once.
 * Line of sight over the 4/3 earth, hills in the way, then field strength against the published minimum.
 */

import type { TrueDeg } from "../earth/index.ts";
import {
  fieldMicrovoltPerM,
  fieldVerdict,
  givesBearing,
  isInCone,
  lineOfSightNm,
  type Station,
  serviceOf,
  terrainToward,
} from "../radio/index.ts";
import type { Site } from "./airwaves.ts";
import type { NoSignal, Signal } from "./reading.ts";

/** The aircraft as seen from one antenna. */
export interface SeenFrom {
  readonly azimuth: TrueDeg;
  readonly distanceNm: number;
  readonly slantNm: number;
  readonly heightAboveFt: number;
  /** Feet above mean sea level. */
  readonly altitudeFt: number;
}

/** One station on the channel, and the aircraft as seen from it. */
export interface Candidate extends SeenFrom {
  readonly station: Station;
  readonly site: Site;
}

/**
 * A wanted signal this many decibels above another on its channel is undisturbed by it: the protection ratio of ICAO Annex 10
 * Vol I, Attachment C, 3.4 (20 dB, from memory).
 */
export const PROTECTION_RATIO_DB = 20;

/**
 * The signal on a channel, from every station that uses it. `candidates` in any order. `byMonitors`: the receiver's own monitors judge
 * whether the signal is strong enough, so field strength alone ends nothing.
 */
export function receive(frequencyMhz: number, candidates: readonly Candidate[], byMonitors = false): Signal {
  if (candidates.length === 0) {
    const service = serviceOf(frequencyMhz);
    return { kind: "none", why: { kind: service === "localizer" ? "localizer-channel" : "no-station" } };
  }
  const judged = candidates.map((candidate) => ({
    candidate,
    why: whyNotHeard(candidate, byMonitors),
  }));
  const heard = judged
    .filter(({ why }) => why === null)
    .map(({ candidate }) => ({
      candidate,
      fieldMicrovolt: fieldMicrovoltPerM(candidate.station.eirpW, candidate.slantNm),
    }))
    .sort((one, other) => other.fieldMicrovolt - one.fieldMicrovolt);
  const [strongest, second] = heard;
  if (strongest === undefined) {
    // Nothing is heard: the nearest station on the channel is the one the pilot meant.
    const nearest = judged.reduce((best, next) =>
      next.candidate.distanceNm < best.candidate.distanceNm ? next : best,
    );
    return { kind: "none", why: nearest.why ?? { kind: "no-station" } };
  }
  if (second !== undefined && !isUndisturbed(strongest.fieldMicrovolt, second.fieldMicrovolt))
    return { kind: "two-at-once", stations: [strongest.candidate.station, second.candidate.station] };
  const { station, heightAboveFt, distanceNm } = strongest.candidate;
  if (station.kind !== "VOT" && isInCone(heightAboveFt, distanceNm)) return { kind: "overhead", station };
  return { kind: fieldVerdict(strongest.fieldMicrovolt) === "good" ? "good" : "weak", station };
}

/** Why this station's bearing is not heard at the aircraft; null when it is. */
function whyNotHeard(candidate: Candidate, byMonitors: boolean): NoSignal | null {
  const { station } = candidate;
  if (!givesBearing(station)) return { kind: "distance-only", station };
  if (station.status === "silent") return { kind: "silent", station };
  const hidden = whyHidden(station, candidate.site, candidate);
  if (hidden !== null) return hidden;
  if (byMonitors) return null;
  const field = fieldMicrovoltPerM(station.eirpW, candidate.slantNm);
  return fieldVerdict(field) === "too-weak" ? { kind: "too-weak", station } : null;
}

/** Horizon and hills between a site and the aircraft; null when each sees the other. */
export function whyHidden(station: Station, site: Site, seen: SeenFrom): NoSignal | null {
  if (seen.distanceNm > lineOfSightNm(site.elevationFt, seen.altitudeFt))
    return { kind: "below-horizon", station };
  const { blockedBy, leastAltitudeFt } = terrainToward(site.terrain, seen);
  return blockedBy === null
    ? null
    : {
        kind: "terrain",
        station,
        peakName: blockedBy.name,
        leastAltitudeFt: leastAltitudeFt ?? blockedBy.elevationFt,
      };
}

/** Whether a signal is strong enough beside another on its channel, both in microvolts per metre, for its bearing to be read. */
export const isUndisturbed = (wantedMicrovolt: number, otherMicrovolt: number): boolean =>
  20 * Math.log10(wantedMicrovolt / otherMicrovolt) >= PROTECTION_RATIO_DB;
