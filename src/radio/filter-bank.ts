/**
 * Filters of one length over streams that run side by side, each worked out only at every so-manyth sample. State is kept between
 * blocks, and a block allocates nothing.
 */

/** Samples taken in at a time; longer blocks are cut. */
const CHUNK = 2048;

export interface FilterBank {
  /** Takes the samples [from, to) of every stream in; `each` is called once for every moment of output, with the values in `outputs`. */
  push(streams: readonly ArrayLike<number>[], from: number, to: number, each: () => void): void;
  /** One value for each set of taps, in the order in which the streams and their taps were given. */
  readonly outputs: Float64Array;
}

/** For each stream the taps laid on it, all equally long, the first of them on the oldest sample; an output comes at every `every` samples, the first once the taps are covered. */
export function filterBank(tapsOfStreams: readonly (readonly Float64Array[])[], every: number): FilterBank {
  const length = tapsOfStreams[0]?.[0]?.length ?? 0;
  const held = tapsOfStreams.map(() => new Float64Array(length + CHUNK));
  const outputs = new Float64Array(tapsOfStreams.flat().length);
  let filled = 0;
  let next = length;
  return {
    outputs,
    push(streams, from, to, each) {
      for (let at = from; at < to; ) {
        const taken = Math.min(to - at, length + CHUNK - filled);
        for (let stream = 0; stream < held.length; stream++)
          copy(streams[stream] as ArrayLike<number>, at, taken, held[stream] as Float64Array, filled);
        filled += taken;
        at += taken;
        for (; next <= filled; next += every) {
          let output = 0;
          for (let stream = 0; stream < tapsOfStreams.length; stream++) {
            const taps = tapsOfStreams[stream] as readonly Float64Array[];
            const samples = held[stream] as Float64Array;
            let at = 0;
            for (; at < taps.length - 2; at += 3, output += 3)
              weightedByThree(taps, at, samples, next - length, outputs, output);
            for (; at < taps.length; at++, output++)
              outputs[output] = weighted(taps[at] as Float64Array, samples, next - length);
          }
          each();
        }
        const keepFrom = Math.min(filled, next - length);
        for (const samples of held) samples.copyWithin(0, keepFrom, filled);
        filled -= keepFrom;
        next -= keepFrom;
      }
    },
  };
}

function copy(from: ArrayLike<number>, at: number, count: number, to: Float64Array, into: number): void {
  for (let index = 0; index < count; index++) to[into + index] = from[at + index] as number;
}

/** Four sums side by side, so that the processor need not wait for one before it begins the next. */
function weighted(taps: Float64Array, samples: Float64Array, start: number): number {
  let one = 0;
  let two = 0;
  let three = 0;
  let four = 0;
  let index = 0;
  for (const whole = taps.length - 3; index < whole; index += 4) {
    const at = start + index;
    one += (taps[index] as number) * (samples[at] as number);
    two += (taps[index + 1] as number) * (samples[at + 1] as number);
    three += (taps[index + 2] as number) * (samples[at + 2] as number);
    four += (taps[index + 3] as number) * (samples[at + 3] as number);
  }
  for (; index < taps.length; index++) one += (taps[index] as number) * (samples[start + index] as number);
  return one + two + three + four;
}

/** Three filters at once, so that a sample is fetched once for the three. */
function weightedByThree(
  taps: readonly Float64Array[],
  at: number,
  samples: Float64Array,
  start: number,
  outputs: Float64Array,
  output: number,
): void {
  const first = taps[at] as Float64Array;
  const second = taps[at + 1] as Float64Array;
  const third = taps[at + 2] as Float64Array;
  let one = 0;
  let two = 0;
  let three = 0;
  let oneNext = 0;
  let twoNext = 0;
  let threeNext = 0;
  let index = 0;
  for (const whole = first.length - 1; index < whole; index += 2) {
    const sample = samples[start + index] as number;
    const next = samples[start + index + 1] as number;
    one += (first[index] as number) * sample;
    two += (second[index] as number) * sample;
    three += (third[index] as number) * sample;
    oneNext += (first[index + 1] as number) * next;
    twoNext += (second[index + 1] as number) * next;
    threeNext += (third[index + 1] as number) * next;
  }
  if (index < first.length) {
    const sample = samples[start + index] as number;
    one += (first[index] as number) * sample;
    two += (second[index] as number) * sample;
    three += (third[index] as number) * sample;
  }
  outputs[output] = one + oneNext;
  outputs[output + 1] = two + twoNext;
  outputs[output + 2] = three + threeNext;
}
