/** Low-pass taps of even symmetry (so every frequency is delayed alike), windowed by Kaiser or by Blackman and Harris. */

/** Modified Bessel function of the first kind, order 0, by its power series. */
function besselI0(x: number): number {
  const quarterSquare = (x * x) / 4;
  let term = 1;
  let sum = 1;
  for (let order = 1; term > 1e-17 * sum; order++) {
    term *= quarterSquare / (order * order);
    sum += term;
  }
  return sum;
}

/**
 * Taps of a low-pass that passes up to `passHz` and is `attenuationDb` (over 50) down from `stopHz`, an odd number of them, sum 1.
 * Source: J. F. Kaiser's design formulas (1974) for length and shape.
 */
export function kaiserLowPass(options: {
  readonly sampleRateHz: number;
  readonly passHz: number;
  readonly stopHz: number;
  readonly attenuationDb: number;
}): Float64Array {
  const { sampleRateHz, passHz, stopHz, attenuationDb } = options;
  const beta = 0.1102 * (attenuationDb - 8.7);
  const widthRad = (2 * Math.PI * (stopHz - passHz)) / sampleRateHz;
  const order = Math.ceil((attenuationDb - 8) / (2.285 * widthRad));
  const half = Math.ceil(order / 2);
  const cutoff = (stopHz + passHz) / sampleRateHz;
  const taps = Float64Array.from({ length: 2 * half + 1 }, (_, index) => {
    const at = index - half;
    const ideal = at === 0 ? cutoff : Math.sin(Math.PI * cutoff * at) / (Math.PI * at);
    return ideal * besselI0(beta * Math.sqrt(1 - (at / half) ** 2));
  });
  return scaledToSum(taps);
}

/** The four-term window of least side lobes (92 dB), sum 1. Source: F. J. Harris, Proc. IEEE 66 (1978), table 1. */
export function blackmanHarris(length: number): Float64Array {
  const turn = (2 * Math.PI) / length;
  const window = Float64Array.from(
    { length },
    (_, index) =>
      0.35875 -
      0.48829 * Math.cos(turn * (index + 0.5)) +
      0.14128 * Math.cos(2 * turn * (index + 0.5)) -
      0.01168 * Math.cos(3 * turn * (index + 0.5)),
  );
  return scaledToSum(window);
}

/** The raised-cosine window, sum 1. */
export function hann(length: number): Float64Array {
  const turn = (2 * Math.PI) / length;
  return scaledToSum(Float64Array.from({ length }, (_, index) => 1 - Math.cos(turn * (index + 0.5))));
}

/** Taps that look for a tone: the window times a turning phasor, phase counted from the window's middle. */
export function toneTaps(
  window: Float64Array,
  frequencyHz: number,
  sampleRateHz: number,
): { readonly cos: Float64Array; readonly sin: Float64Array } {
  const middle = (window.length - 1) / 2;
  const turn = (2 * Math.PI * frequencyHz) / sampleRateHz;
  return {
    cos: window.map((tap, index) => tap * Math.cos(turn * (index - middle))),
    sin: window.map((tap, index) => -tap * Math.sin(turn * (index - middle))),
  };
}

/** What the window leaves of a tone that stands so many hertz beside the one looked for: 1 at 0. */
export function toneGain(window: Float64Array, offsetHz: number, sampleRateHz: number): number {
  const middle = (window.length - 1) / 2;
  const turn = (2 * Math.PI * offsetHz) / sampleRateHz;
  return window.reduce((sum, tap, index) => sum + tap * Math.cos(turn * (index - middle)), 0);
}

function scaledToSum(taps: Float64Array): Float64Array {
  const sum = taps.reduce((total, tap) => total + tap, 0);
  return taps.map((tap) => tap / sum);
}
