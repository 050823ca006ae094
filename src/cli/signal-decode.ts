/** `needlework signal --decode F`: what a receiver makes of a recording. */

import { stationDeg } from "../earth/index.ts";
import { readRecording } from "../radio/index.ts";
import type { Call } from "./command.ts";
import { CallFault, EXIT_DONE, type ExitCode, InputFault } from "./faults.ts";
import { type NumberRule, numberOption } from "./number-option.ts";
import { progress } from "./progress.ts";
import { readRecordingFile } from "./recording-file.ts";
import { decodedJson, decodedText, recordingFaultText } from "./recording-words.ts";
import { print } from "./streams.ts";

/** From what no VOR fits into, which is then said, to the fastest radios. */
const RATE: NumberRule = { name: "rate", least: 1000, most: 20_000_000, unit: "Hz" };
const COURSE: NumberRule = { name: "course", least: 0, most: 360, unit: "degrees" };
const ONLY_FOR_MAKING = ["output", "receiver", "seconds", "offset", "noise", "radial"];

/** Prints what is measured. Throws InputFault where the recording is at fault. */
export async function decodeSignal(call: Call, path: string): Promise<ExitCode> {
  const stray = ONLY_FOR_MAKING.find((name) => call.has(name));
  if (stray !== undefined) throw new CallFault(`--${stray} has no meaning with --decode`);
  const rateHz = call.has("rate") ? numberOption(call, RATE, 0) : null;
  const course = call.has("course") ? stationDeg(numberOption(call, COURSE, 0)) : null;
  const recording = await readRecordingFile(path, { iq: call.has("iq"), rateHz });
  const { form, sampleRateHz } = recording;
  const listening = progress("listening");
  const read = readRecording(recording, listening.show);
  listening.end();
  if (!read.ok) throw new InputFault(`${path} ${recordingFaultText(read.fault)}`);
  const durationS = (recording.channels[0]?.length ?? 0) / sampleRateHz;
  const decoded = decodedJson({ file: path, form, sampleRateHz, durationS, signal: read.signal, course });
  print(call.has("json") ? JSON.stringify(decoded) : decodedText(decoded));
  return EXIT_DONE;
}
