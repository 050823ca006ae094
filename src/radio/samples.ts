/** What every maker and every reader of a VOR's samples asks of them. */

/** The least rate that holds the sub-carrier with its swing: the 9960 Hz part reaches to about 10.7 kHz. */
export const LEAST_SAMPLE_RATE_HZ = 24_000;

/** Throws RangeError on a rate that is below 24 kHz or no number; `what` begins its sentence. */
export function refuseRate(sampleRateHz: number, what: string): void {
  if (!(sampleRateHz >= LEAST_SAMPLE_RATE_HZ && Number.isFinite(sampleRateHz)))
    throw new RangeError(
      `${what} needs ${LEAST_SAMPLE_RATE_HZ} samples a second or more, got ${sampleRateHz}`,
    );
}

/** Throws RangeError unless both parts of a baseband are equally long. */
export function refuseUnequal(inPhase: ArrayLike<number>, quadrature: ArrayLike<number>): void {
  if (inPhase.length !== quadrature.length)
    throw new RangeError(
      `both parts of a baseband are equally long, got ${inPhase.length} and ${quadrature.length}`,
    );
}

/** Far above any sample form, and its squares are still numbers. */
const GREATEST_SAMPLE = 1e30;

/** Throws RangeError on a sample that is no number: one would stay in every sum for ever. */
export function refuseStrange(samples: ArrayLike<number>): void {
  for (let index = 0; index < samples.length; index++)
    if (!(Math.abs(samples[index] as number) < GREATEST_SAMPLE))
      throw new RangeError(
        `samples are numbers below 1e30 in size, got ${samples[index]} at place ${index} of a block`,
      );
}
