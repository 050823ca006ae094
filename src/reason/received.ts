/** Is it received here, and is it promised here? Two questions, and the pilot may have one without the other. */

import type { NoSignal, StationGeometry } from "../panel/index.ts";
import { coneRadiusNm, type FlagCause, leastHeightFt, type Station } from "../radio/index.ts";
import type { Rule, Step } from "./step.ts";
import { atLeastFeet, feet, feetAbove, miles, wholeMiles } from "./words.ts";

const LINE_OF_SIGHT = "line of sight over the 4/3 earth: ITU-R P.310; the pilot's rule is 1.23 (√h₁ + √h₂)";
const VOLUMES = "FAA Aeronautical Information Manual, para 1-1-8, TBL 1-1-1";

export const received: Rule = ({ situation, reading }) => {
  const { signal, geometry, station } = reading;
  if (station === null || geometry === null) return null;
  const { altitudeFt } = situation.scene.aircraft;
  const numbers = {
    distanceNm: geometry.distanceNm,
    lineOfSightNm: geometry.lineOfSightNm,
    altitudeFt,
    fieldMicrovoltPerM: geometry.fieldMicrovoltPerM,
  };
  const base = { rule: "received", numbers, source: LINE_OF_SIGHT } as const;
  switch (signal.kind) {
    case "two-at-once":
      return null;
    case "none":
      return notReceived(signal.why, geometry, altitudeFt, base);
    case "overhead":
      return {
        ...base,
        title: "In the cone overhead",
        sentence: `You are ${miles(geometry.distanceNm)} from ${station.ident} and ${feet(geometry.heightAboveFt)} above it, inside the cone of ${miles(coneRadiusNm(geometry.heightAboveFt))} where needle and flag wander: hold your heading and ask nothing of them.`,
        numbers: { ...numbers, coneRadiusNm: coneRadiusNm(geometry.heightAboveFt) },
        source: "ICAO Doc 8168 PANS-OPS Vol I, Part I, Section 2, 2.4.4",
        parts: ["station", "needle", "flag", "aircraft"],
      };
    case "weak":
      return {
        ...base,
        title: "Received, but weak",
        sentence: `${station.name} is in sight, ${miles(geometry.distanceNm)} away, but at ${geometry.fieldMicrovoltPerM.toFixed(0)} µV/m it is under the published least of 90: the flag may come and go.`,
        source: "ICAO Annex 10 Vol I, 3.3.4.2 (from memory)",
        parts: ["station", "flag", "service-volume"],
      };
    case "good":
      return {
        ...base,
        title: "Received",
        sentence: `${miles(geometry.distanceNm)} away at ${feet(altitudeFt)}: line of sight reaches ${wholeMiles(geometry.lineOfSightNm)}${inside(station, geometry)}.`,
        source: `${LINE_OF_SIGHT}; ${VOLUMES}`,
        parts: ["station", "aircraft", "service-volume"],
      };
  }
};

export const publishedVolume: Rule = ({ reading }) => {
  const { signal, geometry, station } = reading;
  if (station === null || geometry === null || geometry.serviceVolume !== "outside") return null;
  if (signal.kind === "none" || station.vorClass === null) return null;
  const radiusNm = geometry.serviceRadiusNm ?? 0;
  const promise =
    radiusNm === 0
      ? `${feetAbove(geometry.heightAboveFt)} the station nothing is promised`
      : `${feetAbove(geometry.heightAboveFt)} the station it is promised to ${wholeMiles(radiusNm)}`;
  return {
    rule: "service-volume",
    title: "Beyond what is promised",
    sentence: `${station.name} is a class ${station.vorClass} station, and ${promise}; you are at ${miles(geometry.distanceNm)}, so the needle may live, but no one has checked it there.`,
    numbers: {
      serviceRadiusNm: radiusNm,
      heightAboveFt: geometry.heightAboveFt,
      distanceNm: geometry.distanceNm,
    },
    source: VOLUMES,
    parts: ["service-volume", "station", "aircraft"],
  };
};

const inside = (station: Station, geometry: StationGeometry): string =>
  geometry.serviceVolume === "inside"
    ? `, and class ${station.vorClass} is promised to ${wholeMiles(geometry.serviceRadiusNm ?? 0)} at this height`
    : "";

/** Farther than this no altitude that an aircraft flies would see the station, NM. */
const HOPELESS_NM = 400;

const remedy = (distanceNm: number, stationElevationFt: number): string =>
  distanceNm > HOPELESS_NM
    ? "no altitude you can fly would see it"
    : `${atLeastFeet(leastHeightFt(distanceNm, stationElevationFt))} would see it`;

/** What the receiver's monitors found. */
export const MONITOR_WORDS: Readonly<Record<FlagCause, string>> = {
  "no-carrier": "there is no carrier to speak of",
  localizer: "what it sends is a localizer's 90 and 150 Hz",
  "tone-low": "its 30 Hz is too faint",
  "subcarrier-low": "its 9960 Hz is too faint",
  "swing-wrong": "its 9960 Hz does not swing as it should",
  noisy: "it is drowned in noise",
};

function notReceived(
  why: NoSignal,
  geometry: StationGeometry,
  altitudeFt: number,
  base: Pick<Step, "rule" | "numbers" | "source">,
): Step | null {
  switch (why.kind) {
    case "no-station":
    case "localizer-channel":
    case "distance-only":
      return null;
    case "silent":
      return {
        ...base,
        title: "Silent",
        sentence: `${why.station.name} is off the air: no ident, flag OFF, and a needle that rests in the middle says nothing.`,
        source: "FAA Aeronautical Information Manual, para 1-1-3 c",
        parts: ["station", "flag", "needle"],
      };
    case "below-horizon":
      return {
        ...base,
        title: "Below the horizon",
        sentence: `${why.station.name} is ${miles(geometry.distanceNm)} away, but from ${feet(altitudeFt)} line of sight reaches only ${miles(geometry.lineOfSightNm)}: ${remedy(geometry.distanceNm, why.station.elevationFt)}.`,
        parts: ["station", "aircraft", "flag"],
      };
    case "terrain":
      return {
        ...base,
        title: "Behind a hill",
        sentence: `${why.peakName} stands between you and ${why.station.name}: near ${atLeastFeet(why.leastAltitudeFt)} would clear it here.`,
        numbers: { ...base.numbers, leastAltitudeFt: why.leastAltitudeFt },
        parts: ["station", "aircraft", "flag"],
      };
    case "too-weak":
      return {
        ...base,
        title: "Too weak",
        sentence: `${why.station.name} is in sight, but at ${miles(geometry.distanceNm)} its ${why.station.eirpW.toFixed(0)} W leave too little signal for a bearing.`,
        source: "ITU-R P.525; ICAO Annex 10 Vol I, 3.3.4.2 (from memory)",
        parts: ["station", "flag"],
      };
    case "flagged":
      return {
        ...base,
        title: "The receiver does not trust it",
        sentence: `${why.station.name} arrives from ${miles(geometry.distanceNm)}, but ${MONITOR_WORDS[why.cause]}: the receiver pulls its flag rather than show a bearing that may be wrong.`,
        source:
          "ICAO Annex 10 Vol I, 3.3.5; that a receiver flags at half of the standard levels is common practice",
        parts: ["station", "flag", "needle"],
      };
  }
}
