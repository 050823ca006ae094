/** Which radial, and by whose north. */

import { magneticFromTrue, trueFromStation, wrap180 } from "../earth/index.ts";
import type { Rule } from "./step.ts";
import { course3, degrees, eastWest } from "./words.ts";

/** Below this the station's north and the compass agree well enough to say nothing, degrees. Design, section 3. */
const NORTHS_DIFFER_FROM_DEG = 1;

export const radial: Rule = ({ reading }) => {
  const { radial: measured, station, geometry } = reading;
  if (measured === null || station === null || geometry === null) return null;
  if (station.kind === "VOT") return testSignal(measured, reading.settings.bearingErrorDeg);
  const errorDeg = reading.settings.bearingErrorDeg;
  const north = station.declinationDeg === 0 ? "true north" : eastWest(station.declinationDeg);
  const error =
    errorDeg === 0
      ? ""
      : `; this receiver reads ${degrees(errorDeg)} ${errorDeg > 0 ? "high" : "low"}, you are really on ${course3(geometry.trueRadial)}`;
  const pointer = reading.settings.face === "rmi";
  const who = pointer
    ? "The pointer's tail says where you are: on the"
    : reading.measured === null
      ? "You are on the"
      : "The receiver puts you on the";
  return {
    rule: "radial",
    title: "Your radial",
    sentence: `${who} ${course3(measured)} radial of ${station.ident}, counted from the station's own north (${north}), whichever way you point${error}.`,
    numbers: {
      radialDeg: measured,
      bearingToDeg: reading.bearingTo ?? 0,
      declinationDeg: station.declinationDeg,
      azimuthTrueDeg: geometry.azimuthFromStation,
      bearingErrorDeg: errorDeg,
    },
    source: "FAA Instrument Flying Handbook, FAA-H-8083-15B, ch. 9; ICAO Annex 10 Vol I, 3.3.1",
    parts: pointer ? ["station", "rose", "radial", "needle"] : ["station", "rose", "radial"],
  };
};

function testSignal(measured: number, errorDeg: number) {
  const size = Math.abs(wrap180(measured));
  const verdict = size <= 4 ? "inside the 4° allowed" : `${degrees(size)} out, more than the 4° allowed`;
  return {
    rule: "radial",
    title: "The same everywhere",
    sentence: `A test signal has no radials: wherever you stand a receiver must read 360 FROM or 180 TO, and this one is ${verdict}.`,
    numbers: { radialDeg: measured, bearingErrorDeg: errorDeg, limitDeg: 4 },
    source: "14 CFR 91.171; FAA Aeronautical Information Manual, para 1-1-4",
    parts: ["station", "needle", "flag"],
  } as const;
}

export const norths: Rule = ({ situation, reading }) => {
  const { radial: measured, station } = reading;
  if (measured === null || station === null || station.kind === "VOT") return null;
  const apartDeg = situation.variationDeg - station.declinationDeg;
  if (Math.abs(apartDeg) < NORTHS_DIFFER_FROM_DEG) return null;
  const byCompass = magneticFromTrue(
    trueFromStation(measured, station.declinationDeg),
    situation.variationDeg,
  );
  const estimated = station.declinationEstimated ? " (estimated)" : "";
  return {
    rule: "norths",
    title: "Two norths",
    sentence: `${station.name} counts from ${eastWest(station.declinationDeg)}${estimated}, the compass here from ${eastWest(situation.variationDeg)}: radial ${course3(measured)} lies ${course3(byCompass)} by the compass.`,
    numbers: {
      declinationDeg: station.declinationDeg,
      variationDeg: situation.variationDeg,
      apartDeg,
      radialByCompassDeg: byCompass,
    },
    source: "common practice",
    parts: reading.settings.face === "rmi" ? ["rose", "north", "needle"] : ["rose", "north"],
  };
};
