/** Simple facts of recorded samples: which channel is the louder, how far they reach, how much of them lies at the end of the scale. */

/** The channel that varies most; of equals the first. Empty without channels. */
export function loudestOf(channels: readonly Float64Array[]): Float64Array {
  let loudest: { channel: Float64Array; variance: number } = {
    channel: new Float64Array(0),
    variance: Number.NEGATIVE_INFINITY,
  };
  for (const channel of channels) {
    const { variance } = meanAndVariance(channel);
    // A few parts in a million more come from rounding.
    if (variance > loudest.variance * (1 + 1e-6) || loudest.channel.length === 0)
      loudest = { channel, variance };
  }
  return loudest.channel;
}

export function meanAndVariance(samples: Float64Array): {
  readonly mean: number;
  readonly variance: number;
} {
  if (samples.length === 0) return { mean: 0, variance: 0 };
  let sum = 0;
  for (const value of samples) sum += value;
  const mean = sum / samples.length;
  let squares = 0;
  for (const value of samples) squares += (value - mean) ** 2;
  return { mean, variance: squares / samples.length };
}

/** The largest size of any sample; NaN where one is no number or endless. */
export function peakOf(channels: readonly Float64Array[]): number {
  let peak = 0;
  for (const channel of channels)
    for (const value of channel) {
      if (!Number.isFinite(value)) return Number.NaN;
      peak = Math.max(peak, Math.abs(value));
    }
  return peak;
}

/** Within this of full scale is at its end: the coarsest form, A-law, ends 1.6 % below it. */
const AT_THE_END = 0.98;

/**
 * Of the channel that has most of them, the share of samples that lie at its greatest or least value, where that is the end of the scale.
 * `fullScale` null: floats have no end, and any value that so many share is one.
 */
export function clippedShare(channels: readonly Float64Array[], fullScale: number | null): number {
  const peak = peakOf(channels);
  const end = fullScale === null ? AT_THE_END * peak : AT_THE_END * fullScale;
  return Math.max(0, ...channels.map((channel) => shareAtEnd(channel, end)));
}

function shareAtEnd(channel: Float64Array, end: number): number {
  let [most, least] = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
  for (const value of channel) {
    most = Math.max(most, value);
    least = Math.min(least, value);
  }
  // A level that never changes is no clipped sound.
  if (!(most - least > 0.01 * end)) return 0;
  let count = 0;
  for (const value of channel)
    if ((value === most && most >= end) || (value === least && least <= -end)) count++;
  return count / channel.length;
}

/** The size of every sample: of two channels taken as one complex number. One channel is left as it is. */
export function envelopeOf(channels: readonly Float64Array[]): Float64Array {
  const [first = new Float64Array(0), second] = channels;
  return second === undefined ? first : first.map((value, at) => Math.hypot(value, second[at] ?? 0));
}
