/** Which radial, and by whose north. */

import { magneticFromTrue, type StationDeg, trueFromStation, wrap180 } from "../earth/index.ts";
import type { ReceiverReading } from "../panel/index.ts";
import { ledAstray } from "./astray.ts";
import type { Rule } from "./step.ts";
import { apart, course3, degrees, eastWest } from "./words.ts";

/** Below this the station's north and the compass agree well enough to say nothing, degrees. Design, section 3. */
const NORTHS_DIFFER_FROM_DEG = 1;

export const radial: Rule = ({ reading }) => {
  const { radial: measured, station, geometry } = reading;
  if (measured === null || station === null || geometry === null) return null;
  if (station.kind === "VOT") return testSignal(measured, reading.settings.bearingErrorDeg);
  const errorDeg = reading.settings.bearingErrorDeg;
  const north = station.declinationDeg === 0 ? "true north" : eastWest(station.declinationDeg);
  const pointer = reading.settings.face === "rmi";
  const { who, but } = saidOf(reading, measured, geometry.trueRadial);
  // What a misled receiver reads is told by its needle alone.
  const readsNeedle = pointer || ledAstray(reading) !== null;
  return {
    rule: "radial",
    title: "Your radial",
    sentence: `${who} radial of ${station.ident}, counted from the station's own north (${north}), whichever way you point${but}.`,
    numbers: {
      radialDeg: measured,
      trueRadialDeg: geometry.trueRadial,
      bearingToDeg: reading.bearingTo ?? 0,
      declinationDeg: station.declinationDeg,
      azimuthTrueDeg: geometry.azimuthFromStation,
      bearingErrorDeg: errorDeg,
    },
    source: "FAA Instrument Flying Handbook, FAA-H-8083-15B, ch. 9; ICAO Annex 10 Vol I, 3.3.1",
    parts: readsNeedle ? ["station", "rose", "radial", "needle"] : ["station", "rose", "radial"],
  };
};

/** Where the aircraft is, and what the receiver makes of it where that is another radial. */
function saidOf(
  reading: ReceiverReading,
  measured: StationDeg,
  trueRadial: StationDeg,
): { readonly who: string; readonly but: string } {
  const { face, bearingErrorDeg } = reading.settings;
  const reads =
    bearingErrorDeg === 0 ? "" : `reads ${degrees(bearingErrorDeg)} ${bearingErrorDeg > 0 ? "high" : "low"}`;
  if (ledAstray(reading) === null) {
    const who =
      face === "rmi"
        ? "The pointer's tail says where you are: on the"
        : reading.measured === null
          ? "You are on the"
          : "The receiver puts you on the";
    return { who: `${who} ${course3(measured)}`, but: reads === "" ? "" : `; this receiver ${reads}` };
  }
  const [real, read] = apart(trueRadial, measured);
  const by = face === "rmi" ? "pointer's tail" : "receiver";
  return {
    who: `You are on the ${real}`,
    but: reads === "" ? `; the ${by} says ${read}` : `; the ${by} says ${read}, for this receiver ${reads}`,
  };
}

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
  const where = ledAstray(reading)?.radial ?? measured;
  const apartDeg = situation.variationDeg - station.declinationDeg;
  if (Math.abs(apartDeg) < NORTHS_DIFFER_FROM_DEG) return null;
  const byCompass = magneticFromTrue(trueFromStation(where, station.declinationDeg), situation.variationDeg);
  const estimated = station.declinationEstimated ? " (estimated)" : "";
  return {
    rule: "norths",
    title: "Two norths",
    sentence: `${station.name} counts from ${eastWest(station.declinationDeg)}${estimated}, the compass here from ${eastWest(situation.variationDeg)}: radial ${course3(where)} lies ${course3(byCompass)} by the compass.`,
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
