/** The samples of a WAV file of any usual form: PCM of 8 to 32 bits, floats, A-law, mu-law; RIFF, RIFX or RF64. */

import wavefile from "wavefile";
import { InputFault } from "./faults.ts";

export interface WavSamples {
  readonly sampleRateHz: number;
  readonly channels: readonly Float64Array[];
  /** 1 for whole numbers, null for floats. */
  readonly fullScale: number | null;
}

/** Other files that a sound may come in, by their first bytes. */
const OTHERS: readonly (readonly [string, string])[] = [
  ["fLaC", "FLAC"],
  ["OggS", "Ogg"],
  ["ID3", "MP3"],
  ["\xff\xfb", "MP3"],
  ["FORM", "AIFF"],
];
const CONTAINERS = ["RIFF", "RIFX", "RF64"];
const [PCM, FLOAT, A_LAW, MU_LAW, EXTENSIBLE] = [1, 3, 6, 7, 0xfffe];
/** A writer that could not know the length beforehand leaves one of these. */
const UNKNOWN_LENGTHS = [0, 0xffff_ffff];

/** Reads the bytes of a WAV file. Throws InputFault, with a sentence that begins with `path`, on anything else. */
export function readWav(bytes: Uint8Array, path: string): WavSamples {
  const {
    bytes: plain,
    format: { tag, bits },
  } = layoutOf(bytes, path);
  const file = new wavefile.WaveFile();
  try {
    file.fromBuffer(plain);
    if (tag === A_LAW) file.fromALaw();
    if (tag === MU_LAW) file.fromMuLaw();
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error);
    throw new InputFault(`${path} is a broken WAV file (${reason}); record or convert it again`);
  }
  const { numChannels, sampleRate } = file.fmt as { numChannels: number; sampleRate: number };
  const interleaved = file.getSamples(true, Float64Array);
  // Both laws come out as 16 bits; eight bits are the only ones without a sign.
  const half = 2 ** ((tag === PCM ? bits : 16) - 1);
  const [middle, unit] = tag === FLOAT ? [0, 1] : [tag === PCM && bits === 8 ? half : 0, half];
  const count = Math.floor(interleaved.length / numChannels);
  const channels = Array.from({ length: numChannels }, (_, channel) =>
    Float64Array.from(
      { length: count },
      (_none, at) => ((interleaved[at * numChannels + channel] ?? 0) - middle) / unit,
    ),
  );
  return { sampleRateHz: sampleRate, channels, fullScale: tag === FLOAT ? null : 1 };
}

interface Format {
  readonly tag: number;
  readonly channels: number;
  readonly bits: number;
}

interface Layout {
  /** The file with nothing but its format and its samples, all lengths right, and the samples' own tag. */
  readonly bytes: Uint8Array;
  readonly format: Format;
}

/** Walks the chunks before the library does, so that what is wrong can be said in words and what is odd can be put right. */
function layoutOf(bytes: Uint8Array, path: string): Layout {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.length);
  const name = (at: number): string => Buffer.from(bytes.subarray(at, at + 4)).toString("latin1");
  const container = name(0);
  if (!CONTAINERS.includes(container) || name(8) !== "WAVE") throw notWav(bytes, path);
  const little = container !== "RIFX";
  let found: { format: Format; at: number } | null = null;
  let longLength: number | null = null;
  for (let at = 12; at + 8 <= bytes.length; ) {
    const length = view.getUint32(at + 4, little);
    const from = at + 8;
    // An RF64 file has its true length in a chunk before the samples.
    if (name(at) === "ds64" && from + 16 <= bytes.length)
      longLength = Number(view.getBigUint64(from + 8, little));
    if (name(at) === "fmt " && from + 16 <= bytes.length) {
      const tag = view.getUint16(from, little);
      const format = {
        // The extensible form carries the real tag further on.
        tag: tag === EXTENSIBLE && from + 26 <= bytes.length ? view.getUint16(from + 24, little) : tag,
        channels: view.getUint16(from + 2, little),
        bits: view.getUint16(from + 14, little),
      };
      found = { format, at: from };
    }
    if (name(at) === "data") {
      if (found === null)
        throw new InputFault(`${path} has no format before its samples, so it is no WAV file`);
      checkForm(found.format, path);
      const promised = longLength ?? length;
      const there = bytes.length - from;
      const isUnknown = UNKNOWN_LENGTHS.includes(promised);
      if (promised > there && !isUnknown) throw truncated(promised, there, path);
      const samples = bytes.subarray(from, from + (isUnknown ? there : promised));
      const formatBytes = bytes.subarray(found.at, found.at + 16);
      return { bytes: plainWav(formatBytes, found.format.tag, samples, little), format: found.format };
    }
    at = from + length + (length % 2);
  }
  throw new InputFault(`${path} ends before any sample; it was cut off, so copy or record it again`);
}

function plainWav(format: Uint8Array, tag: number, samples: Uint8Array, little: boolean): Uint8Array {
  const header = 44;
  const bytes = new Uint8Array(header + samples.length);
  const view = new DataView(bytes.buffer);
  bytes.set(Buffer.from(`${little ? "RIFF" : "RIFX"}    WAVEfmt `, "latin1"));
  view.setUint32(4, bytes.length - 8, little);
  view.setUint32(16, format.length, little);
  bytes.set(format, 20);
  view.setUint16(20, tag, little);
  bytes.set(Buffer.from("data", "latin1"), 36);
  view.setUint32(40, samples.length, little);
  bytes.set(samples, header);
  return bytes;
}

function checkForm({ tag, bits, channels }: Format, path: string): void {
  const known =
    (tag === PCM && bits >= 8 && bits <= 32) ||
    (tag === FLOAT && (bits === 32 || bits === 64)) ||
    ((tag === A_LAW || tag === MU_LAW) && bits === 8);
  if (!known || channels < 1)
    throw new InputFault(
      `${path} holds a form of sound that is not read (tag ${tag}, ${bits} bits); convert it: ${convert(path)}`,
    );
}

function notWav(bytes: Uint8Array, path: string): InputFault {
  const start = Buffer.from(bytes.subarray(0, 4)).toString("latin1");
  const other = OTHERS.find(([magic]) => start.startsWith(magic))?.[1];
  if (bytes.length === 0) return new InputFault(`${path} is empty; give a WAV file or a .sigmf-meta`);
  return new InputFault(
    other === undefined
      ? `${path} is no WAV file and no SigMF metadata; give one of these`
      : `${path} is ${other}, not WAV; convert it: ${convert(path)}`,
  );
}

const convert = (path: string): string => {
  const stem = path.replace(/\.[^./\\]*$/, "");
  return `ffmpeg -i ${path} -c:a pcm_s16le ${stem}-pcm.wav`;
};

const truncated = (length: number, there: number, path: string): InputFault =>
  new InputFault(
    `${path} is cut off: it promises ${length} bytes of samples and holds ${Math.max(0, there)}; copy or record it again`,
  );
