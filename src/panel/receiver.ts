/**
 * One receiver's whole reading: what arrives on its channel, the radial measured, needle and flag, DME, ident.
 * The radial is counted from the station's own north; heading has no part in it. Where a face lays a magnetic heading and a
 * station's course on one card (HSI, RMI, reverse sensing) the two numbers are compared as the pilot reads them.
 */

import {
  type AzimuthDistance,
  azimuthDistance,
  directionBack,
  type LatLon,
  type MagneticDeg,
  reciprocal,
  type TrueDeg,
  trueDeg,
  turned,
  wrap180,
  wrap360,
} from "../earth/index.ts";
import {
  DME_MAX_RANGE_NM,
  elevationAngleDeg,
  fieldMicrovoltPerM,
  givesBearing,
  givesDistance,
  lineOfSightNm,
  radialToward,
  type Station,
  serviceRadiusNm,
  serviceVolume,
  slantRangeNm,
} from "../radio/index.ts";
import { type Airwaves, channelKhz, type OnAir, type Site } from "./airwaves.ts";
import { indicate, NO_DEVIATION } from "./deviation-indicator.ts";
import { readDme } from "./dme.ts";
import { identHeard } from "./ident-heard.ts";
import { type MeasuredSignal, measureFrom } from "./measured-signal.ts";
import type { DmeReading, ReceiverReading, ReceiverSettings, Signal, StationGeometry } from "./reading.ts";
import { type Candidate, receive, type SeenFrom, whyHidden } from "./reception.ts";
import type { SignalConditions } from "./signal-conditions.ts";

/** The aircraft as its receivers know it: where the antenna is, and how it moves over the ground. */
export interface Flight {
  readonly position: LatLon;
  /** Feet above mean sea level. */
  readonly altitudeFt: number;
  readonly heading: MagneticDeg;
  readonly track: TrueDeg;
  readonly groundspeedKt: number;
}

/** Where the scene has a signal of its own: what it says of it, and the moment on the stations' clock, seconds. */
export interface OverTheAir {
  readonly conditions: SignalConditions;
  readonly atS: number;
}

/** What one receiver shows. */
export function readReceiver(
  air: Airwaves,
  flight: Flight,
  settings: ReceiverSettings,
  overTheAir: OverTheAir | null = null,
): ReceiverReading {
  const onChannel = air.byChannelKhz.get(channelKhz(settings.frequencyMhz)) ?? [];
  const placed = onChannel.map((onAir) => place(onAir, flight));
  const arriving = receive(settings.frequencyMhz, placed, overTheAir !== null);
  const tuned = tunedStation(arriving, placed);
  const geometry = tuned === null ? null : geometryOf(tuned);
  const readable = tuned !== null && (arriving.kind === "good" || arriving.kind === "weak");
  const measured =
    overTheAir !== null && readable
      ? measureFrom({ ...tuned, position: flight.position }, overTheAir.conditions, overTheAir.atS)
      : null;
  const signal = measured === null ? arriving : judged(arriving, measured);
  const received = measured === null ? (geometry?.trueRadial ?? null) : measured.measurement.radial;
  const radial =
    received !== null && (signal.kind === "good" || signal.kind === "weak")
      ? turned(received, settings.bearingErrorDeg)
      : null;
  const deviation = radial === null ? NO_DEVIATION : indicate(radial, settings.course);
  const bearingTo = radial === null ? null : reciprocal(radial);
  const dme = tuned === null ? null : distanceReading(tuned, flight);
  const courseRelativeDeg = wrap180(settings.course - flight.heading);
  // Field by field: a spread here would cost half of the whole reading's time.
  return {
    deviationDeg: deviation.deviationDeg,
    needleDots: deviation.needleDots,
    needleSide: deviation.needleSide,
    fullScale: deviation.fullScale,
    flag: deviation.flag,
    settings,
    signal,
    ident: identHeard(signal, tuned?.station ?? null, dme !== null),
    station: tuned?.station ?? null,
    geometry,
    measured,
    radial,
    bearingTo,
    dme,
    reversed: deviation.flag !== "OFF" && Math.abs(courseRelativeDeg) > 90,
    rmiPointerRelativeDeg: bearingTo === null ? null : wrap360(bearingTo - flight.heading),
    courseRelativeDeg,
    heading: flight.heading,
  };
}

/** What arrives, as the receiver's monitors leave it. */
const judged = (arriving: Signal, { flagCause }: MeasuredSignal): Signal =>
  flagCause === null || !("station" in arriving)
    ? arriving
    : { kind: "none", why: { kind: "flagged", station: arriving.station, cause: flagCause } };

interface Placed extends Candidate {
  readonly dmeSite: Site;
}

function place({ station, site, dmeSite }: OnAir, flight: Flight): Placed {
  return { station, site, dmeSite, ...seenFrom(site, flight) };
}

/** At the station itself there is no azimuth; north stands in, and the cone hides it. */
function seenFrom(site: Site, { position, altitudeFt }: Flight): SeenFrom {
  const out: AzimuthDistance = { azimuthDeg: 0, distanceNm: 0 };
  azimuthDistance(site.frame, position.latDeg, position.lonDeg, out);
  const { azimuthDeg, distanceNm } = out;
  const heightAboveFt = altitudeFt - site.elevationFt;
  return {
    azimuth: trueDeg(azimuthDeg),
    distanceNm,
    slantNm: slantRangeNm(distanceNm, heightAboveFt),
    heightAboveFt,
    altitudeFt,
  };
}

/** The station the pilot has tuned: the one received, else the nearest on the channel. */
function tunedStation(signal: Signal, placed: readonly Placed[]): Placed | null {
  const [first] = placed;
  if (first === undefined) return null;
  const station = stationOf(signal);
  return placed.find((candidate) => candidate.station === station) ?? first;
}

function stationOf(signal: Signal): Station | null {
  switch (signal.kind) {
    case "good":
    case "weak":
    case "overhead":
      return signal.station;
    case "two-at-once":
      return signal.stations[0];
    case "none":
      return "station" in signal.why ? signal.why.station : null;
  }
}

function geometryOf({
  station,
  azimuth,
  distanceNm,
  slantNm,
  heightAboveFt,
  altitudeFt,
}: Placed): StationGeometry {
  const { vorClass } = station;
  return {
    azimuthFromStation: azimuth,
    distanceNm,
    heightAboveFt,
    slantNm,
    elevationAngleDeg: elevationAngleDeg(heightAboveFt, distanceNm),
    lineOfSightNm: lineOfSightNm(station.elevationFt, altitudeFt),
    fieldMicrovoltPerM: fieldMicrovoltPerM(station.eirpW, slantNm),
    serviceVolume: givesBearing(station) ? serviceVolume(vorClass, heightAboveFt, distanceNm) : "unknown",
    serviceRadiusNm: vorClass === null ? null : serviceRadiusNm(vorClass, heightAboveFt),
    trueRadial: radialToward(station, azimuth),
  };
}

/** The distance, where the station has one, it works, it is in sight and within DME range. */
function distanceReading(placed: Placed, flight: Flight): DmeReading | null {
  const { station, dmeSite } = placed;
  if (!givesDistance(station) || station.status === "silent") return null;
  const seen = dmeSite === placed.site ? placed : seenFrom(dmeSite, flight);
  if (seen.slantNm > DME_MAX_RANGE_NM || whyHidden(station, dmeSite, seen) !== null) return null;
  const bearingToStation = directionBack(dmeSite.frame.position, flight.position, seen.azimuth);
  return readDme(
    { groundDistanceNm: seen.distanceNm, slantNm: seen.slantNm, bearingToStation },
    flight.track,
    flight.groundspeedKt,
  );
}
