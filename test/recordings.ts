/** Recordings for the tests: of a station, of a localizer, of what is no radio at all. */

import { composite, type RecordedForm, type Recording, type SampleOptions } from "../src/radio/index.ts";
import { signalOf, type TestSignal } from "./signal.ts";

export interface Recorded extends Partial<SampleOptions> {
  readonly durationS?: number;
  readonly form?: RecordedForm;
}

/** What a station's signal comes to at half of full scale. */
export function recordingOf(signal: TestSignal, recorded: Recorded = {}): Recording {
  const { form = "audio", durationS = 3, sampleRateHz = 48_000, startS = -2, ...rest } = recorded;
  const source = composite(signalOf(signal), { sampleRateHz, startS, ...rest });
  const first = new Float64Array(Math.round(durationS * sampleRateHz));
  const second = new Float64Array(first.length);
  if (form === "audio") source.audio(first);
  else source.baseband(first, second);
  const channels = (form === "audio" ? [first] : [first, second]).map((channel) => channel.map((x) => x / 2));
  return { form, sampleRateHz, channels, fullScale: 1 };
}

/** Sound made from a formula over seconds. */
export function soundOf(
  at: (seconds: number, index: number) => number,
  { durationS = 3, sampleRateHz = 48_000 } = {},
): Recording {
  const channel = Float64Array.from({ length: durationS * sampleRateHz }, (_, index) =>
    at(index / sampleRateHz, index),
  );
  return { form: "audio", sampleRateHz, channels: [channel], fullScale: 1 };
}

/** With every sample of every channel changed. */
export const withSamples = (
  recording: Recording,
  change: (sample: number, index: number) => number,
): Recording => ({ ...recording, channels: recording.channels.map((channel) => channel.map(change)) });

/** With the mean taken out, as a capacitor in the input does. */
export const withoutDirectPart = (recording: Recording): Recording => ({
  ...recording,
  channels: recording.channels.map((channel) => {
    const mean = channel.reduce((sum, sample) => sum + sample, 0) / channel.length;
    return channel.map((sample) => sample - mean);
  }),
});

const sine = (hz: number, seconds: number): number => Math.sin(2 * Math.PI * hz * seconds);

/** A localizer a little off its course: 90 and 150 Hz, each a fifth of the carrier deep (ICAO Annex 10 Vol I, 3.1.3.5, from memory). */
export const localizer = (): Recording =>
  soundOf((t) => 0.5 * (1 + 0.22 * sine(90, t) + 0.18 * sine(150, t)));

/** Noise that is the same every time. */
const hiss = (index: number): number => {
  const x = Math.sin(index * 12.9898) * 43_758.5453;
  return 2 * (x - Math.floor(x)) - 1;
};

/** Vowels on a falling pitch, with hisses between: the makings of speech. */
export const voice = (): Recording =>
  soundOf((t, index) => {
    const syllable = Math.max(0, sine(2.2, t));
    const pitchHz = 130 - 10 * t;
    let vowel = 0;
    for (let harmonic = 1; harmonic < 25; harmonic++)
      vowel += sine(pitchHz * harmonic, t) / (1 + ((pitchHz * harmonic - 600) / 300) ** 2);
    return 0.15 * syllable * vowel + 0.05 * Math.max(0, -sine(2.2, t)) * hiss(index);
  });

/** Chords over a bass with a cymbal. */
export const music = (): Recording =>
  soundOf((t, index) => {
    const beat = 1 - ((2 * t) % 1);
    const chord = [220, 277.2, 329.6, 440].reduce((sum, hz) => sum + sine(hz, t) + 0.3 * sine(3 * hz, t), 0);
    return beat * (0.3 * sine(41.2, t) + 0.05 * chord + 0.1 * hiss(index));
  });

/** A bass at 90 Hz and little more. */
export const bass = (): Recording => soundOf((t) => 0.4 * sine(90, t) + 0.1 * sine(180, t));

export const hissOnly = (): Recording => soundOf((_, index) => 0.3 * hiss(index));
