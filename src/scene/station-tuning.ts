/** What a station is tuned by: its frequency and its DME channel, either of which gives the other. */

import {
  explainFrequency,
  pairedDmeChannel,
  readDmeChannel,
  readFrequency,
  type StationKind,
} from "../radio/index.ts";
import { addFault, cited, type Reading } from "./reading.ts";
import { type FileRecord, readField, type Written } from "./record.ts";
import { stationLeaves } from "./station-shape.ts";

/** Whether a station of that kind sends a bearing that a VOR receiver can use. */
export const hasBearing = (kind: StationKind): boolean => kind !== "DME" && kind !== "TACAN";
/** Whether it answers a distance interrogation. */
export const hasDistance = (kind: StationKind): boolean => kind !== "VOR" && kind !== "VOT";

export interface Tuning {
  readonly frequencyMhz: number;
  readonly dmeChannel: string | null;
}

/** Reads frequency and channel; null with a fault when they are missing, wrong or contradict each other. */
export function readTuning(reading: Reading, record: FileRecord, kind: StationKind | null): Tuning | null {
  const frequency = readField(reading, record, "frequency", stationLeaves.frequency);
  const channel = readField(reading, record, "channel", stationLeaves.channel);
  const frequencyMhz = frequency && frequencyOf(reading, record, frequency, kind);
  const paired = channel && channelOf(reading, record, channel, kind);
  if (!record.fields.has("frequency") && !record.fields.has("channel")) {
    const subject = record.label.trim() || "a station";
    addFault(
      reading,
      "missing-key",
      record.offset,
      `${subject} has no frequency; write it in MHz, such as frequency: 113.90`,
    );
    return null;
  }
  if ((frequency && frequencyMhz === null) || (channel && paired === null)) return null;
  const ownMhz = frequencyMhz ?? paired?.vhfMhz ?? null;
  if (ownMhz === null) return null;
  const expected = pairedDmeChannel(ownMhz)?.text ?? null;
  if (channel && paired && frequency && paired.text !== expected) {
    addFault(
      reading,
      "channel-mismatch",
      channel.offset,
      `${record.label}channel ${cited(channel.text)} is not paired with ${cited(frequency.text)} MHz; its channel is ${expected}`,
    );
    return null;
  }
  return { frequencyMhz: ownMhz, dmeChannel: kind && hasDistance(kind) ? expected : null };
}

function frequencyOf(
  reading: Reading,
  record: FileRecord,
  { text, offset }: Written<string>,
  kind: StationKind | null,
): number | null {
  const read = readFrequency(text);
  if (read.kind === "unreadable") {
    addFault(reading, "bad-frequency", offset, `${record.label}frequency ${read.reason}`);
    return null;
  }
  const { service, explanation } = explainFrequency(read.frequencyMhz);
  // A DME beside an instrument landing system is paired with its localizer.
  if (service === "vor" || (service === "localizer" && kind && !hasBearing(kind))) return read.frequencyMhz;
  const code = service === "localizer" ? "localizer-channel" : "not-a-channel";
  addFault(reading, code, offset, `${record.label}frequency ${explanation}`);
  return null;
}

function channelOf(
  reading: Reading,
  record: FileRecord,
  { text, offset }: Written<string>,
  kind: StationKind | null,
): { readonly text: string; readonly vhfMhz: number } | null {
  const name = `${record.label}channel`;
  const read = readDmeChannel(text);
  if (read.kind === "unreadable") {
    addFault(reading, "bad-channel", offset, `${name} ${read.reason}`);
    return null;
  }
  const { vhfMhz, service } = read.channel;
  if (kind && !hasDistance(kind)) {
    const withDistance = kind === "VOT" ? "" : ", or write kind: VOR-DME";
    addFault(
      reading,
      "no-distance-part",
      offset,
      `${name} ${cited(text)} is given, but a ${kind} has no DME; leave channel out${withDistance}`,
    );
    return null;
  }
  if (vhfMhz === null) {
    const remedy = "use 17 to 59 or 70 to 126";
    addFault(
      reading,
      "bad-channel",
      offset,
      `${name} ${cited(text)} is paired with no frequency that a navigation receiver tunes; ${remedy}`,
    );
    return null;
  }
  if (service === "localizer" && kind && hasBearing(kind)) {
    addFault(
      reading,
      "localizer-channel",
      offset,
      `${name} ${cited(text)} is paired with ${explainFrequency(vhfMhz).explanation}`,
    );
    return null;
  }
  return { text: read.channel.text, vhfMhz };
}
