/** A signal made and measured in one go, for the tests of the composite and the receiver. */

import { type StationDeg, stationDeg, turnBetween } from "../src/earth/index.ts";
import {
  composite,
  type SampleOptions,
  type SignalMeasurement,
  STANDARD_MODULATION,
  type VorDemodulator,
  type VorModulation,
  type VorSignal,
  vorDemodulator,
} from "../src/radio/index.ts";

export interface TestSignal extends Partial<Omit<VorSignal, "modulation" | "radial">> {
  readonly radialDeg?: number;
  readonly modulation?: Partial<VorModulation>;
}

export const signalOf = ({ radialDeg = 0, modulation, ...rest }: TestSignal): VorSignal => ({
  modulation: { ...STANDARD_MODULATION, ...modulation },
  radial: stationDeg(radialDeg),
  frequencyMhz: 113,
  echoes: [],
  propeller: null,
  carrierToNoiseDbHz: null,
  seed: 1,
  ...rest,
});

export interface Taken extends SampleOptions {
  readonly durationS: number;
  readonly form?: "audio" | "baseband";
}

/** The receiver after it has heard so many seconds of the signal. */
export function heard(signal: TestSignal, taken: Taken): VorDemodulator {
  const count = Math.round(taken.durationS * taken.sampleRateHz);
  const source = composite(signalOf(signal), taken);
  const receiver = vorDemodulator(taken);
  const inPhase = new Float64Array(count);
  if (taken.form === "audio") {
    source.audio(inPhase);
    receiver.pushAudio(inPhase);
  } else {
    const quadrature = new Float64Array(count);
    source.baseband(inPhase, quadrature);
    receiver.pushBaseband(inPhase, quadrature);
  }
  return receiver;
}

export const measured = (signal: TestSignal, taken: Taken): SignalMeasurement =>
  heard(signal, taken).measured();

/** How far the measured radial is off, degrees, clockwise positive; NaN where none was measured. */
export const errorDeg = (measurement: SignalMeasurement, radialDeg: number): number =>
  measurement.radial === null
    ? Number.NaN
    : turnBetween(stationDeg(radialDeg), measurement.radial as StationDeg);
