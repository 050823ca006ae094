/**
 * What `read --json` prints of one scene, a contract with other programs: names and meanings here change only with the
 * schema's version. Directions in degrees [0, 360), deviation right positive, null where there is none.
 */

import type { IdentHeard, MeasuredSignal, ReceiverReading, Signal } from "../panel/index.ts";
import type { Situation } from "../scene/index.ts";
import type { Reason } from "./reason.ts";

/** `good`: at or above the published minimum; `weak`: below it; `none`: nothing that can be used arrives. */
export type Reception = "good" | "weak" | "none";

export interface ReceiverJson {
  readonly name: string;
  readonly frequencyMhz: number;
  /** Ident of the station tuned, received or not. */
  readonly station: string | null;
  readonly reception: Reception;
  /** Finer: good, weak, overhead, two-at-once, or why nothing arrives (no-station, localizer-channel, ...). */
  readonly signal: string;
  /** What is heard: ident, test, none, dme-only, mixed. */
  readonly ident: IdentHeard["kind"];
  readonly serviceVolume: "inside" | "outside" | "unknown";
  /** As the receiver measures it. */
  readonly radialDeg: number | null;
  readonly bearingToDeg: number | null;
  /** Along the ground, as the engine knows it; null without a station. */
  readonly distanceNm: number | null;
  /** Slant range as the DME shows it. */
  readonly dmeNm: number | null;
  readonly dmeGroundspeedKt: number | null;
  readonly minutesToStation: number | null;
  readonly courseDeg: number;
  readonly deviationDeg: number | null;
  readonly needleDots: number | null;
  readonly needleSide: "left" | "right" | "centre" | null;
  readonly fullScale: boolean;
  readonly flag: "TO" | "FROM" | "OFF";
  readonly reversed: boolean;
  /** The RMI pointer's head, clockwise from the nose. */
  readonly rmiPointerDeg: number | null;
  /** Null where the scene has no signal of its own, or none arrives. */
  readonly measured: MeasuredJson | null;
}

/** What a receiver measured of the signal's samples. */
export interface MeasuredJson {
  /** Before the receiver's own error is added; null where it found none. */
  readonly radialDeg: number | null;
  /** Depth of the carrier's modulation by the 30 Hz, and by the sub-carrier: 0.3 nominal. */
  readonly toneDepth: number;
  readonly subcarrierDepth: number;
  /** Swing of the sub-carrier over its 30 Hz: 16 nominal. */
  readonly deviationRatio: number;
  /** Carrier power over noise density, dB-Hz; null where no noise is heard. */
  readonly carrierToNoiseDbHz: number | null;
  /** Standard deviation of the radial as its own scatter tells it; null where it is unknown. */
  readonly deviationDeg: number | null;
  /** Why the receiver pulls its flag: no-carrier, localizer, tone-low, subcarrier-low, swing-wrong, noisy; null while it shows a bearing. */
  readonly flagCause: string | null;
}

export interface SituationJson {
  readonly date: string;
  readonly variationDeg: number;
  readonly magneticModel: string;
  readonly dateInsideModel: boolean;
  readonly latDeg: number;
  readonly lonDeg: number;
  readonly altitudeFt: number;
  readonly headingDeg: number;
  readonly headingTrueDeg: number;
  readonly tasKt: number;
  readonly windFromTrueDeg: number;
  readonly windKt: number;
  readonly trackDeg: number;
  readonly trackTrueDeg: number;
  /** Right positive. */
  readonly driftDeg: number;
  readonly groundspeedKt: number;
}

export interface ReadingJson {
  readonly title: string;
  readonly situation: SituationJson;
  readonly receivers: readonly ReceiverJson[];
  readonly reasons: readonly Reason[];
  readonly cautions: readonly string[];
}

/** The object for one situation and its argument. Numbers are kept to a millionth, below anything an instrument shows. */
export function readingJson(situation: Situation, reasons: readonly Reason[]): ReadingJson {
  return {
    title: situation.scene.title,
    situation: situationJson(situation),
    receivers: situation.receivers.map(receiverJson),
    reasons,
    cautions: situation.cautions,
  };
}

function situationJson(situation: Situation): SituationJson {
  const { aircraft, wind, date } = situation.scene;
  return {
    date,
    variationDeg: rounded(situation.variationDeg),
    magneticModel: situation.magneticModel.name,
    dateInsideModel: situation.magneticModel.dateInside,
    latDeg: rounded(aircraft.position.latDeg),
    lonDeg: rounded(aircraft.position.lonDeg),
    altitudeFt: aircraft.altitudeFt,
    headingDeg: direction(aircraft.heading),
    headingTrueDeg: direction(situation.headingTrue),
    tasKt: aircraft.tasKt,
    windFromTrueDeg: direction(wind.from),
    windKt: wind.speedKt,
    trackDeg: direction(situation.track),
    trackTrueDeg: direction(situation.trackTrue),
    driftDeg: rounded(situation.driftDeg),
    groundspeedKt: rounded(situation.groundspeedKt),
  };
}

function receiverJson(reading: ReceiverReading): ReceiverJson {
  const { settings, signal, geometry, dme } = reading;
  return {
    name: settings.name,
    frequencyMhz: settings.frequencyMhz,
    station: reading.station?.ident ?? null,
    reception: receptionOf(signal),
    signal: signal.kind === "none" ? signal.why.kind : signal.kind,
    ident: reading.ident.kind,
    serviceVolume: geometry?.serviceVolume ?? "unknown",
    radialDeg: orNull(reading.radial, direction),
    bearingToDeg: orNull(reading.bearingTo, direction),
    distanceNm: orNull(geometry?.distanceNm, rounded),
    dmeNm: orNull(dme?.distanceNm, rounded),
    dmeGroundspeedKt: orNull(dme?.groundspeedKt, rounded),
    minutesToStation: orNull(dme?.minutesToStation, rounded),
    courseDeg: direction(settings.course),
    deviationDeg: orNull(reading.deviationDeg, rounded),
    needleDots: orNull(reading.needleDots, rounded),
    needleSide: reading.needleSide,
    fullScale: reading.fullScale,
    flag: reading.flag,
    reversed: reading.reversed,
    rmiPointerDeg: orNull(reading.rmiPointerRelativeDeg, direction),
    measured: reading.measured === null ? null : measuredJson(reading.measured),
  };
}

function measuredJson({ measurement, flagCause }: MeasuredSignal): MeasuredJson {
  const { carrier, toneAmplitude, subcarrierAmplitude } = measurement;
  return {
    radialDeg: orNull(measurement.radial, direction),
    toneDepth: rounded(toneAmplitude / carrier),
    subcarrierDepth: rounded(subcarrierAmplitude / carrier),
    deviationRatio: rounded(measurement.deviationRatio),
    carrierToNoiseDbHz: ifFinite(measurement.carrierToNoiseDbHz),
    deviationDeg: ifFinite(measurement.radialDeviationDeg),
    flagCause,
  };
}

/** JSON knows no endless numbers. */
const ifFinite = (value: number): number | null => (Number.isFinite(value) ? rounded(value) : null);

/** In the cone overhead the signal is strong and only its bearing is undefined; of two at once neither can be used. */
function receptionOf(signal: Signal): Reception {
  switch (signal.kind) {
    case "good":
    case "overhead":
      return "good";
    case "weak":
      return "weak";
    case "two-at-once":
    case "none":
      return "none";
  }
}

const orNull = (value: number | null | undefined, shown: (value: number) => number): number | null =>
  value === null || value === undefined ? null : shown(value);

/** To a millionth, never minus zero. */
const rounded = (value: number): number => Math.round(value * 1e6) / 1e6 + 0;

/** A direction that rounds up to 360 is north, and north is 0. */
const direction = (deg: number): number => rounded(deg) % 360;
