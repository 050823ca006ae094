/** A recording from disk or stdin: a WAV file, or SigMF metadata with the dataset they name. */

import { readFileSync, statSync } from "node:fs";
import { basename, dirname, join } from "node:path";
import { type RecordedForm, type Recording, readSigmf, sigmfChannels } from "../radio/index.ts";
import { InputFault } from "./faults.ts";
import { readStdin, STREAM } from "./streams.ts";
import { systemReason } from "./system-reason.ts";
import { readWav } from "./wav-file.ts";

/** An hour and a half of 16-bit sound at 48 kHz takes more than the machine may have, as numbers. */
const MOST_BYTES = 192 * 1024 * 1024;
const META = ".sigmf-meta";
const DATA = ".sigmf-data";

export interface AskedOf {
  /** Whether the call says that the file holds complex baseband. */
  readonly iq: boolean;
  /** Instead of what the file says, hertz; null for the file's own word. */
  readonly rateHz: number | null;
}

/** Reads the recording. Throws InputFault with one sentence where the file is at fault. */
export async function readRecordingFile(path: string, asked: AskedOf): Promise<Recording> {
  if (path.endsWith(DATA)) return fromSigmf(`${path.slice(0, -DATA.length)}${META}`, asked);
  if (path.endsWith(META)) return fromSigmf(path, asked);
  const { sampleRateHz, channels, fullScale } = readWav(await bytesOf(path), path);
  const form: RecordedForm = asked.iq ? "baseband" : "audio";
  if (asked.iq && channels.length !== 2)
    throw new InputFault(
      `${path} has ${channels.length === 1 ? "one channel" : `${channels.length} channels`}, and --iq needs two, in phase and quadrature; leave --iq out for sound`,
    );
  return { form, sampleRateHz: asked.rateHz ?? sampleRateHz, channels, fullScale };
}

async function fromSigmf(path: string, { iq, rateHz }: AskedOf): Promise<Recording> {
  const read = readSigmf(Buffer.from(await bytesOf(path)).toString("utf8"));
  if (!read.ok) throw new InputFault(`${path} ${read.fault}`);
  const { metadata } = read;
  if (iq && metadata.form === "audio")
    throw new InputFault(`${path} describes real samples (${metadata.datatype.name}); leave --iq out`);
  const sampleRateHz = rateHz ?? metadata.sampleRateHz;
  if (sampleRateHz === null) throw new InputFault(`${path} has no core:sample_rate; say it with --rate HZ`);
  const dataset = metadata.dataset ?? `${basename(path, META)}${DATA}`;
  const channels = sigmfChannels(await bytesOf(join(dirname(path), dataset)), metadata);
  return {
    form: metadata.form,
    sampleRateHz,
    channels,
    fullScale: metadata.datatype.number === "f" ? null : 1,
  };
}

async function bytesOf(path: string): Promise<Uint8Array> {
  const tooBig = new InputFault(
    `${path} is larger than ${MOST_BYTES / 1024 / 1024} MB; cut a minute out of it, which is more than enough`,
  );
  if (path === STREAM) {
    const bytes = await readStdin(MOST_BYTES);
    if (bytes.length > MOST_BYTES) throw tooBig;
    return bytes;
  }
  try {
    if (statSync(path).size > MOST_BYTES) throw tooBig;
    return readFileSync(path);
  } catch (error) {
    throw error instanceof InputFault ? error : new InputFault(`${path}: ${systemReason(error)}`);
  }
}
