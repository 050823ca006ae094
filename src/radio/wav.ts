/** Sound as a file: samples in [-1, 1] as 16-bit PCM in a RIFF/WAVE container, little-endian, of one channel or more. */

export const WAV_HEADER_BYTES = 44;
const BYTES_PER_SAMPLE = 2;
const FULL_SCALE = 32_767;

/** A file being filled: its bytes, and where samples go. */
export interface WavWriter {
  readonly bytes: Uint8Array;
  /** Writes the next sample; those of several channels take turns. Beyond [-1, 1] it is clipped. Throws RangeError on no number. */
  write(sample: number): void;
}

/**
 * A file for so many samples of each channel. Throws RangeError on a rate that is not a whole number of hertz above 0.
 */
export function wavWriter(samplesEach: number, sampleRateHz: number, channels = 1): WavWriter {
  if (!Number.isInteger(sampleRateHz) || sampleRateHz <= 0)
    throw new RangeError(`a sample rate is a whole number of hertz above 0, got ${sampleRateHz}`);
  const frameBytes = BYTES_PER_SAMPLE * channels;
  const dataBytes = samplesEach * frameBytes;
  const bytes = new Uint8Array(WAV_HEADER_BYTES + dataBytes);
  const view = new DataView(bytes.buffer);
  const name = (offset: number, text: string): void => {
    for (let index = 0; index < text.length; index++) view.setUint8(offset + index, text.charCodeAt(index));
  };
  name(0, "RIFF");
  view.setUint32(4, WAV_HEADER_BYTES - 8 + dataBytes, true);
  name(8, "WAVE");
  name(12, "fmt ");
  view.setUint32(16, 16, true);
  view.setUint16(20, 1, true); // PCM
  view.setUint16(22, channels, true);
  view.setUint32(24, sampleRateHz, true);
  view.setUint32(28, sampleRateHz * frameBytes, true);
  view.setUint16(32, frameBytes, true);
  view.setUint16(34, 8 * BYTES_PER_SAMPLE, true);
  name(36, "data");
  view.setUint32(40, dataBytes, true);
  let index = 0;
  return {
    bytes,
    write(sample) {
      if (Number.isNaN(sample)) throw new RangeError(`sample ${index} is not a number`);
      const clipped = Math.max(-1, Math.min(1, sample));
      view.setInt16(WAV_HEADER_BYTES + index * BYTES_PER_SAMPLE, Math.round(clipped * FULL_SCALE), true);
      index++;
    },
  };
}

/**
 * The bytes of a .wav file of one channel. Samples beyond [-1, 1] are clipped. Throws RangeError on a sample that is no number or a
 * rate that is not a whole number of hertz above 0.
 */
export function wavBytes(samples: Float32Array, sampleRateHz: number): Uint8Array {
  const { bytes, write } = wavWriter(samples.length, sampleRateHz);
  for (const sample of samples) write(sample);
  return bytes;
}
