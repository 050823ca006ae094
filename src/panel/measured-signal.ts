/**
 * What a receiver makes of the samples that arrive: the composite toward this aircraft with its echoes, blades and noise, demodulated over
 * the last half second. So roughness, scalloping and wander come from the signal. The same place, clock and scene give the same
 * samples; noise belongs to the clock, so that a flown scene hears it go on.
 */

import {
  type AzimuthDistance,
  azimuthDistance,
  inverse,
  type LatLon,
  M_PER_NM,
  type StationDeg,
  trueDeg,
} from "../earth/index.ts";
import {
  carrierToNoiseDbHz,
  composite,
  type Echo,
  type FlagCause,
  flagCause,
  type IdentModulation,
  LEAST_SAMPLE_RATE_HZ,
  radialToward,
  type SignalMeasurement,
  STANDARD_MODULATION,
  type Station,
  slantRangeNm,
  TEST_IDENT,
  type VorSignal,
  vorDemodulator,
} from "../radio/index.ts";
import type { Site } from "./airwaves.ts";
import type { SeenFrom } from "./reception.ts";
import type { Reflector, SignalConditions } from "./signal-conditions.ts";

/** A station's signal as it arrives, and what the receiver has measured of it. */
export interface MeasuredSignal {
  /** What arrives, ready to be made into samples. */
  readonly arriving: VorSignal;
  readonly measurement: SignalMeasurement;
  /** Why the receiver has pulled its flag; null while it shows a bearing. */
  readonly flagCause: FlagCause | null;
}

/** One station as it is heard from one place. */
export interface HeardFrom extends SeenFrom {
  readonly station: Station;
  readonly site: Site;
  readonly position: LatLon;
}

/** The receiver listens to pieces of this length, and believes the last few together. */
const PIECE_S = 0.1;
const PIECES = 5;
/** A blade chops the signal this deep: half of it in radians is the 6 degrees of AIM 1-1-3. */
const BLADE_DEPTH = 0.21;

/** A station's signal toward a radial as the standard describes it: conventional, straight from the station, without noise. */
export const standardSignal = (station: Station, radial: StationDeg): VorSignal => ({
  modulation: { ...STANDARD_MODULATION, ident: identOf(station) },
  radial,
  frequencyMhz: station.frequencyMhz,
  echoes: [],
  propeller: null,
  carrierToNoiseDbHz: null,
  seed: 0,
});

/** What arrives from one station under these conditions. */
export function arrivingSignal(heard: HeardFrom, conditions: SignalConditions): VorSignal {
  const { station, slantNm, azimuth } = heard;
  const { kind, noiseDb, reflectors, propeller } = conditions;
  const plain = standardSignal(station, radialToward(station, azimuth));
  return {
    ...plain,
    modulation: { ...plain.modulation, kind },
    echoes: reflectors
      .filter(({ ident }) => ident === station.ident)
      .map((reflector) => echoOf(reflector, heard)),
    propeller:
      propeller === null
        ? null
        : { bladePassHz: (propeller.speedRpm * propeller.blades) / 60, depth: BLADE_DEPTH },
    carrierToNoiseDbHz:
      noiseDb === null ? null : carrierToNoiseDbHz(station.eirpW, station.frequencyMhz, slantNm, noiseDb),
  };
}

interface Remembered {
  readonly latDeg: number;
  readonly lonDeg: number;
  readonly altitudeFt: number;
  readonly piece: number;
  readonly measured: MeasuredSignal;
}

/** A scene as it was opened, one as it is and one flown on: of each station no more than these are looked at side by side. */
const MOST_REMEMBERED = 4;
const remembered = new WeakMap<SignalConditions, WeakMap<Station, Remembered[]>>();

/**
 * What a receiver measures of one station from one place at one moment. Asked again with nothing changed that it depends on (a course
 * was turned, another receiver has the same station) it is not worked out again.
 */
export function measureFrom(heard: HeardFrom, conditions: SignalConditions, atS: number): MeasuredSignal {
  const { station, position, altitudeFt } = heard;
  const ofScene = keptIn(remembered, conditions, () => new WeakMap<Station, Remembered[]>());
  const ofStation = keptIn(ofScene, station, () => []);
  const piece = lastPiece(atS);
  const known = ofStation.find(
    (one) =>
      one.piece === piece &&
      one.latDeg === position.latDeg &&
      one.lonDeg === position.lonDeg &&
      one.altitudeFt === altitudeFt,
  );
  if (known !== undefined) return known.measured;
  const measured = measureSignal(arrivingSignal(heard, conditions), atS);
  ofStation.unshift({ latDeg: position.latDeg, lonDeg: position.lonDeg, altitudeFt, piece, measured });
  ofStation.length = Math.min(ofStation.length, MOST_REMEMBERED);
  return measured;
}

function keptIn<K extends WeakKey, V>(map: WeakMap<K, V>, key: K, make: () => V): V {
  const before = map.get(key);
  if (before !== undefined) return before;
  const made = make();
  map.set(key, made);
  return made;
}

const lastPiece = (atS: number): number => Math.floor(atS / PIECE_S + 1e-9);

/** What a receiver has made of the last half second before this moment of the station's clock. */
export function measureSignal(arriving: VorSignal, atS: number): MeasuredSignal {
  const sampleRateHz = LEAST_SAMPLE_RATE_HZ;
  const receiver = vorDemodulator({ sampleRateHz, withIdent: false });
  const inPhase = new Float64Array(PIECE_S * sampleRateHz);
  const quadrature = new Float64Array(PIECE_S * sampleRateHz);
  const last = lastPiece(atS);
  for (let piece = last - PIECES + 1; piece <= last; piece++) {
    // The channel is in the seed, so that two stations have each a noise of their own.
    const seed = Math.imul(piece + 1, 0x9e3779b1) ^ Math.round(arriving.frequencyMhz * 1000);
    composite({ ...arriving, seed }, { sampleRateHz, startS: piece * PIECE_S }).baseband(inPhase, quadrature);
    receiver.pushBaseband(inPhase, quadrature);
  }
  const measurement = receiver.measured();
  return { arriving, measurement, flagCause: flagCause(measurement) };
}

/** The way by the reflector: to it along the ground, and on to the aircraft through the air. */
function echoOf(reflector: Reflector, heard: HeardFrom): Echo {
  const { station, site, position, slantNm, heightAboveFt } = heard;
  const out: AzimuthDistance = { azimuthDeg: 0, distanceNm: 0 };
  azimuthDistance(site.frame, reflector.position.latDeg, reflector.position.lonDeg, out);
  const onward = inverse(reflector.position, position).distanceM / M_PER_NM;
  const onwardNm = slantRangeNm(onward, heightAboveFt);
  return {
    // A test station sends the same all around, so its echo too carries nothing of where it came from.
    azimuth: radialToward(station, trueDeg(out.azimuthDeg)),
    extraPathM: Math.max(0, out.distanceNm + onwardNm - slantNm) * M_PER_NM,
    amplitude: reflector.amplitude,
  };
}

function identOf(station: Station): IdentModulation {
  if (station.status === "no-ident") return { kind: "none" };
  if (station.kind === "VOT") return { kind: "dots" };
  const text = station.status === "test" ? TEST_IDENT : station.ident;
  return { kind: "code", text, shared: station.kind !== "VOR" };
}
