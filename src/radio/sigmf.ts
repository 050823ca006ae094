/**
 * SigMF: metadata in JSON beside a file of raw samples. What is written calls the WAV file beside it the dataset and says how many bytes
 * of header to pass over; what is read may be of any sample form of one channel.
 * Source: the SigMF specification 1.x (sigmf.org): `core:dataset` and `core:header_bytes` for a dataset that is not raw from its first byte,
 * `core:trailing_bytes`, the dataset format names such as `ci16_le`.
 */

import type { RecordedForm } from "./signal-file.ts";
import { WAV_HEADER_BYTES } from "./wav.ts";

const SIGMF_VERSION = "1.2.0";

export interface MetadataToWrite {
  readonly form: RecordedForm;
  readonly sampleRateHz: number;
  readonly samples: number;
  /** Name of the WAV file beside the metadata, without a folder. */
  readonly dataset: string;
  readonly description: string;
  /** Short: at most twenty letters. */
  readonly label: string;
  /** The middle of the recorded band, hertz; null where it is not told. */
  readonly frequencyHz: number | null;
}

/** The text of a .sigmf-meta for a WAV file as `signalFile` makes it. */
export function sigmfText(about: MetadataToWrite): string {
  const { form, sampleRateHz, samples, dataset, description, label, frequencyHz } = about;
  const metadata = {
    global: {
      "core:datatype": form === "audio" ? "ri16_le" : "ci16_le",
      "core:sample_rate": sampleRateHz,
      "core:version": SIGMF_VERSION,
      "core:dataset": dataset,
      "core:description": description,
      "core:recorder": "Needlework",
    },
    captures: [
      {
        "core:sample_start": 0,
        "core:header_bytes": WAV_HEADER_BYTES,
        ...(frequencyHz === null ? {} : { "core:frequency": frequencyHz }),
      },
    ],
    annotations: [
      {
        "core:sample_start": 0,
        "core:sample_count": samples,
        "core:label": label,
        "core:comment": description,
      },
    ],
  };
  return `${JSON.stringify(metadata, null, 2)}\n`;
}

/** What the metadata say of a dataset. */
export interface SigmfMetadata {
  readonly form: RecordedForm;
  readonly datatype: Datatype;
  /** Null where they do not say it. */
  readonly sampleRateHz: number | null;
  /** Name of a dataset that is not called like the metadata; null for the one that is. */
  readonly dataset: string | null;
  readonly headerBytes: number;
  readonly trailingBytes: number;
}

interface Datatype {
  readonly name: string;
  readonly complex: boolean;
  readonly number: "f" | "i" | "u";
  readonly bits: 8 | 16 | 32 | 64;
  readonly littleEndian: boolean;
}

/** `fault`: what is wrong and what would be right, as the end of a sentence. */
export type SigmfRead =
  | { readonly ok: true; readonly metadata: SigmfMetadata }
  | { readonly ok: false; readonly fault: string };

/** Reads the text of a .sigmf-meta. */
export function readSigmf(text: string): SigmfRead {
  let json: unknown;
  try {
    json = JSON.parse(text);
  } catch {
    return wrong("is no JSON, which SigMF metadata are; is it the data file? Give the .sigmf-meta");
  }
  const global = fieldsOf(fieldsOf(json)?.global);
  if (global === null) return wrong('has no "global" object, so it is no SigMF metadata');
  const name = global["core:datatype"];
  const datatype = typeof name === "string" ? readDatatype(name) : null;
  if (datatype === null)
    return wrong(
      `core:datatype is ${JSON.stringify(name ?? null)}; it must be a form such as ri16_le, cf32_le or cu8`,
    );
  const channels = global["core:num_channels"] ?? 1;
  if (channels !== 1) return wrong(`core:num_channels is ${JSON.stringify(channels)}; one channel is read`);
  const rate = global["core:sample_rate"] ?? null;
  if (rate !== null && !(typeof rate === "number" && rate > 0 && Number.isFinite(rate)))
    return wrong(`core:sample_rate is ${JSON.stringify(rate)}; it must be samples a second above 0`);
  const dataset = global["core:dataset"] ?? null;
  // A name with a folder in it could point anywhere on the disk.
  if (dataset !== null && !(typeof dataset === "string" && /^[^/\\]+$/.test(dataset)))
    return wrong(
      `core:dataset is ${JSON.stringify(dataset)}; it must be the name of a file in the same folder`,
    );
  const captures = fieldsOf(json)?.captures;
  const capture = fieldsOf(Array.isArray(captures) ? captures[0] : undefined);
  const headerBytes = capture?.["core:header_bytes"] ?? 0;
  const trailingBytes = global["core:trailing_bytes"] ?? 0;
  if (!isCount(headerBytes) || !isCount(trailingBytes))
    return wrong("core:header_bytes and core:trailing_bytes must be whole numbers of bytes from 0");
  return {
    ok: true,
    metadata: {
      form: datatype.complex ? "baseband" : "audio",
      datatype,
      sampleRateHz: rate,
      dataset,
      headerBytes,
      trailingBytes,
    },
  };
}

/** The channels of a dataset: one, or in phase and quadrature; whole numbers as parts of full scale 1. An unfinished last sample is left out. */
export function sigmfChannels(bytes: Uint8Array, metadata: SigmfMetadata): Float64Array[] {
  const { datatype, headerBytes, trailingBytes } = metadata;
  const from = Math.min(headerBytes, bytes.length);
  const length = Math.max(0, bytes.length - from - trailingBytes);
  const view = new DataView(bytes.buffer, bytes.byteOffset + from, length);
  const sampleBytes = datatype.bits / 8;
  const parts = datatype.complex ? 2 : 1;
  const count = Math.floor(length / sampleBytes / parts);
  const read = numberReader(view, datatype);
  return Array.from({ length: parts }, (_, part) =>
    Float64Array.from({ length: count }, (_, index) => read((index * parts + part) * sampleBytes)),
  );
}

function numberReader(view: DataView, { number, bits, littleEndian }: Datatype): (at: number) => number {
  if (number === "f")
    return bits === 32
      ? (at) => view.getFloat32(at, littleEndian)
      : (at) => view.getFloat64(at, littleEndian);
  const half = 2 ** (bits - 1);
  if (number === "i") {
    if (bits === 8) return (at) => view.getInt8(at) / half;
    if (bits === 16) return (at) => view.getInt16(at, littleEndian) / half;
    return (at) => view.getInt32(at, littleEndian) / half;
  }
  if (bits === 8) return (at) => (view.getUint8(at) - half) / half;
  if (bits === 16) return (at) => (view.getUint16(at, littleEndian) - half) / half;
  return (at) => (view.getUint32(at, littleEndian) - half) / half;
}

function readDatatype(name: string): Datatype | null {
  const [, kind, number, bits, order] = /^([rc])(f|i|u)(8|16|32|64)(_le|_be)?$/.exec(name) ?? [];
  if (kind === undefined || bits === undefined) return null;
  const oneByte = bits === "8";
  const float = number === "f";
  // Floats have 32 or 64 bits, whole numbers 8 to 32; an order of bytes where there is more than one.
  if (float ? bits !== "32" && bits !== "64" : bits === "64") return null;
  if (oneByte !== (order === undefined)) return null;
  return {
    name,
    complex: kind === "c",
    number: number as Datatype["number"],
    bits: Number(bits) as Datatype["bits"],
    littleEndian: order !== "_be",
  };
}

const wrong = (fault: string): SigmfRead => ({ ok: false, fault });

const fieldsOf = (value: unknown): Readonly<Record<string, unknown>> | null =>
  typeof value === "object" && value !== null && !Array.isArray(value)
    ? (value as Readonly<Record<string, unknown>>)
    : null;

const isCount = (value: unknown): value is number => Number.isSafeInteger(value) && (value as number) >= 0;
