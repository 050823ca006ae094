/**
 * Listens for the ident: how loud the 1020 Hz tone is, a hundred times a second, over the last minute and a half, beside how loud it is
 * where no tone can be. What was keyed is read from that by `readKeying`.
 */

import { filterBank } from "./filter-bank.ts";
import { VOR_IDENT_HZ } from "./ident.ts";
import { hann, toneTaps } from "./low-pass.ts";

/** Loudness of the tone over time. */
export interface Loudness {
  /** Amplitudes in order of time, the oldest first. */
  readonly amplitudes: Float64Array;
  /** Root mean square of what the same filter hears beside the tone's range: noise. */
  readonly noiseAmplitude: number;
  readonly everyS: number;
}

export interface IdentListener {
  /** Takes `count` samples of the detector's level in. */
  push(level: Float64Array, count: number): void;
  /** Power a hertz of the detector's noise (two-sided density) where no line of the signal stands. */
  noiseDensity(): number;
  /** Of the filter that heard the most. */
  loudness(): Loudness;
}

/** Long enough to leave most of the noise out, short enough to tell the strokes of twelve words a minute apart (0.1 s). */
const WINDOW_S = 0.05;
const EVERY_S = 0.01;
/** A little over two blocks of four periods are remembered. */
const REMEMBERED_S = 90;
/** The tone may be 50 Hz off (Annex 10 Vol I, 3.3.6, from memory); a filter stands every 20 Hz. */
const TONES_HZ = [-60, -40, -20, 0, 20, 40, 60].map((offHz) => VOR_IDENT_HZ + offHz);
/** No line of the composite stands here, nor within the filter's 40 Hz of it. */
const NOISE_HZ = [825, 1225];

/**
 * A listener over a stream of level samples at this rate. Its noise is an average in which what was heard fades to 1/e in
 * `averagingS` (infinite: all counts alike); without `tones` it hears noise alone.
 */
export function identListener(sampleRateHz: number, averagingS: number, tones: boolean): IdentListener {
  const tonesHz = tones ? TONES_HZ : [];
  const window = hann(Math.round(WINDOW_S * sampleRateHz));
  const bandwidthHz = window.reduce((sum, tap) => sum + tap * tap, 0) * sampleRateHz;
  const taps = [...tonesHz, ...NOISE_HZ].flatMap((hz) => {
    const { cos, sin } = toneTaps(window, hz, sampleRateHz);
    return [cos, sin];
  });
  const every = Math.round(EVERY_S * sampleRateHz);
  const bank = filterBank([taps], every);
  const remembered = Math.ceil((REMEMBERED_S * sampleRateHz) / every);
  const rings = tonesHz.map(() => new Float64Array(remembered));
  const streams: ArrayLike<number>[] = [bank.outputs];
  const keep = Math.exp(-every / (averagingS * sampleRateHz));
  let heard = 0;
  let noiseSquares = 0;
  let noiseWeight = 0;
  const square = (filter: number): number => {
    const cos = bank.outputs[2 * filter] as number;
    const sin = bank.outputs[2 * filter + 1] as number;
    return 4 * (cos * cos + sin * sin);
  };
  const each = (): void => {
    for (let filter = 0; filter < rings.length; filter++)
      (rings[filter] as Float64Array)[heard % remembered] = Math.sqrt(square(filter));
    noiseSquares = noiseSquares * keep + (square(rings.length) + square(rings.length + 1)) / NOISE_HZ.length;
    noiseWeight = noiseWeight * keep + 1;
    heard++;
  };
  return {
    push(level, count) {
      streams[0] = level;
      bank.push(streams, 0, count, each);
    },
    noiseDensity: () => (heard === 0 ? 0 : noiseSquares / noiseWeight / 4 / bandwidthHz),
    loudness() {
      const count = Math.min(heard, remembered);
      const power = (ring: Float64Array): number => ring.reduce((sum, value) => sum + value * value, 0);
      const [loudest] = rings
        .map((ring) => ({ ring, power: power(ring) }))
        .sort((one, other) => other.power - one.power);
      const amplitudes = Float64Array.from(
        { length: count },
        (_, index) => loudest?.ring[(heard - count + index) % remembered] ?? 0,
      );
      return {
        amplitudes,
        noiseAmplitude: heard === 0 ? 0 : Math.sqrt(noiseSquares / noiseWeight),
        everyS: every / sampleRateHz,
      };
    },
  };
}
