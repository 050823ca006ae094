/** A measured recording, and what may be wrong with one, in words. */

import { type StationDeg, threeDigits } from "../earth/index.ts";
import { type Deviation, indicate, NO_DEVIATION } from "../panel/index.ts";
import {
  type FlagCause,
  type KeyingRead,
  LEAST_CARRIER_TO_NOISE_DB_HZ,
  LEAST_RECORDING_S,
  LEAST_SAMPLE_RATE_HZ,
  type RecordedForm,
  type RecordedSignal,
  type RecordingFault,
} from "../radio/index.ts";

/** One sentence without a full stop: what is wrong with the recording, and the remedy. */
export function recordingFaultText(fault: RecordingFault): string {
  switch (fault.kind) {
    case "too-short":
      return `is ${seconds(fault.durationS)} long, and the receiver needs ${LEAST_RECORDING_S} s; record 12 s, so that the ident is in it`;
    case "rate-too-low":
      return `was sampled at ${fault.sampleRateHz} Hz, too slowly for the 9960 Hz sub-carrier; record at ${LEAST_SAMPLE_RATE_HZ} Hz or more, such as 48000`;
    case "silent":
      return "is silent; check the cable and the level, and record it again";
    case "not-numbers":
      return "holds samples that are no numbers; write or convert it again";
    case "clipped":
      return `is clipped: ${(100 * fault.share).toFixed(1)} % of its samples lie at the end of the scale; turn the level down and record it again`;
    case "wrong-rate":
      return `is read at ${fault.saidHz} samples a second, where its sub-carrier does not stand at 9960 Hz; it was probably sampled at ${fault.probablyHz}, so try --rate ${fault.probablyHz}`;
    case "other-form":
      return fault.holds === "baseband"
        ? "holds complex baseband on its two channels, not sound; add --iq"
        : "holds sound, not complex baseband; leave --iq out";
    case "localizer":
      return "holds a localizer, with 90 and 150 Hz in the place of 30; tune a VOR and record that";
    case "no-subcarrier":
      return "holds a 30 Hz tone but no 9960 Hz sub-carrier; record the detector's output before any filter for speech, in a form that keeps the treble";
    case "no-vor":
      return "holds no VOR: neither its 30 Hz nor its 9960 Hz stands out; record the detector's output before any filter for speech, with the station tuned";
  }
}

/** What a decoded recording comes to, as a contract; null where a thing is not known. Directions in degrees, deviation right positive. */
export interface DecodedJson {
  readonly file: string;
  readonly form: RecordedForm;
  readonly sampleRateHz: number;
  readonly durationS: number;
  readonly radialDeg: number | null;
  readonly radialDeviationDeg: number | null;
  readonly ident: KeyingRead;
  readonly toneDepth: number | null;
  readonly subcarrierDepth: number | null;
  readonly depthRatio: number;
  readonly deviationRatio: number;
  readonly toneHz: number;
  readonly subcarrierHz: number;
  readonly carrierToNoiseDbHz: number | null;
  readonly inverted: boolean;
  readonly quality: Quality;
  readonly flagCause: FlagCause | null;
  readonly courseDeg: number | null;
  readonly deviationDeg: number | null;
  readonly needleDots: number | null;
  readonly needleSide: Deviation["needleSide"];
  readonly fullScale: boolean;
  readonly flag: Deviation["flag"] | null;
}

const QUALITIES = ["clean", "good", "rough", "not usable"] as const;
export type Quality = (typeof QUALITIES)[number];
/** A needle's width is half a degree: a radial that stays within a fifth of it does not move the needle. Our choice. */
const CLEAN_WITHIN_DEG = 0.1;
const GOOD_WITHIN_DEG = 0.5;

export interface Decoded {
  readonly file: string;
  readonly form: RecordedForm;
  readonly sampleRateHz: number;
  readonly durationS: number;
  readonly signal: RecordedSignal;
  readonly course: StationDeg | null;
}

export function decodedJson({ file, form, sampleRateHz, durationS, signal, course }: Decoded): DecodedJson {
  const { measurement, carrierKnown, inverted, ident, flagCause } = signal;
  const { carrier, toneAmplitude, subcarrierAmplitude, radial } = measurement;
  const needle =
    course === null || radial === null || flagCause !== null ? NO_DEVIATION : indicate(radial, course);
  return {
    file,
    form,
    sampleRateHz,
    durationS: rounded(durationS),
    radialDeg: radial === null ? null : rounded(radial) % 360,
    radialDeviationDeg: finite(measurement.radialDeviationDeg),
    ident,
    toneDepth: carrierKnown ? rounded(toneAmplitude / carrier) : null,
    subcarrierDepth: carrierKnown ? rounded(subcarrierAmplitude / carrier) : null,
    depthRatio: rounded(toneAmplitude / subcarrierAmplitude),
    deviationRatio: rounded(measurement.deviationRatio),
    toneHz: rounded(measurement.toneHz),
    subcarrierHz: rounded(measurement.subcarrierHz),
    carrierToNoiseDbHz: carrierKnown ? finite(measurement.carrierToNoiseDbHz) : null,
    inverted,
    quality: qualityOf(signal),
    flagCause,
    courseDeg: course,
    deviationDeg: needle.deviationDeg === null ? null : rounded(needle.deviationDeg),
    needleDots: needle.needleDots === null ? null : rounded(needle.needleDots),
    needleSide: needle.needleSide,
    fullScale: needle.fullScale,
    flag: course === null ? null : needle.flag,
  };
}

function qualityOf({ flagCause, measurement }: RecordedSignal): Quality {
  if (flagCause !== null) return "not usable";
  if (measurement.radialDeviationDeg <= CLEAN_WITHIN_DEG) return "clean";
  return measurement.radialDeviationDeg <= GOOD_WITHIN_DEG ? "good" : "rough";
}

/** The same for a person, a line for each thing. */
export function decodedText(decoded: DecodedJson): string {
  const { form, radialDeg, radialDeviationDeg } = decoded;
  const rows: [string, string][] = [
    ["radial", radialDeg === null ? "none" : `${degrees(radialDeg)}${uncertainty(radialDeviationDeg)}`],
    ["ident", identText(decoded.ident)],
    ...depthRows(decoded),
    ["deviation ratio", `${decoded.deviationRatio.toFixed(2)} (standard 16)`],
    ["tone", `${decoded.toneHz.toFixed(3)} Hz`],
    ["sub-carrier", `${decoded.subcarrierHz.toFixed(1)} Hz`],
    [
      "carrier to noise",
      decoded.carrierToNoiseDbHz === null ? "unknown" : `${decoded.carrierToNoiseDbHz.toFixed(1)} dB-Hz`,
    ],
    ["quality", qualityText(decoded)],
  ];
  if (decoded.courseDeg !== null) rows.push(["needle", needleText(decoded)]);
  const width = Math.max(...rows.map(([left]) => left.length));
  const kind = form === "audio" ? "sound" : "complex baseband";
  return [
    `${decoded.file}: ${seconds(decoded.durationS)} of ${kind} at ${decoded.sampleRateHz} Hz`,
    ...rows.map(([left, right]) => `  ${left.padEnd(width)}  ${right}`),
    ...notes(decoded),
  ].join("\n");
}

function depthRows({ toneDepth, subcarrierDepth, depthRatio }: DecodedJson): [string, string][] {
  if (toneDepth === null || subcarrierDepth === null)
    return [["depths", `unknown; 30 Hz over 9960 Hz is ${depthRatio.toFixed(2)} (standard 1)`]];
  return [
    ["depth of 30 Hz", `${percent(toneDepth)} (standard 30 %)`],
    ["depth of 9960 Hz", `${percent(subcarrierDepth)} (standard 30 %)`],
  ];
}

function notes({ toneDepth, inverted }: DecodedJson): string[] {
  if (inverted) return ["  ! It was recorded upside down, which has been put right."];
  return toneDepth === null
    ? [
        "  ! The carrier's level was taken out when this was recorded, so depths cannot be known. The filter that did it may have turned",
        "    the 30 Hz too: one that begins at 3 Hz takes 6 degrees off the radial; one that turns the sound upside down, 180.",
      ]
    : [];
}

const FLAG_CAUSES: Readonly<Record<FlagCause, string>> = {
  "no-carrier": "no carrier",
  localizer: "a localizer's 90 and 150 Hz",
  "tone-low": "the 30 Hz is less than half of what it should be",
  "subcarrier-low": "the 9960 Hz is less than half of what it should be",
  "swing-wrong": "the sub-carrier's swing is far from 16 times 30 Hz",
  noisy: `too much noise: the carrier stands less than ${LEAST_CARRIER_TO_NOISE_DB_HZ} dB-Hz above it`,
};

const qualityText = ({ quality, flagCause }: DecodedJson): string =>
  flagCause === null ? quality : `${quality}, flag OFF: ${FLAG_CAUSES[flagCause]}`;

function needleText({ courseDeg, needleDots, needleSide, fullScale, flag }: DecodedJson): string {
  const course = `course ${threeDigits(courseDeg ?? 0)}`;
  if (needleDots === null) return `${course}: parked, flag OFF`;
  if (needleSide === "centre") return `${course}: centred, ${flag}`;
  const dots = fullScale ? "full scale" : `${needleDots.toFixed(1)} dots`;
  return `${course}: ${dots} ${needleSide}, ${flag}`;
}

function identText(ident: KeyingRead): string {
  switch (ident.kind) {
    case "ident":
      return `${ident.text}, heard ${times(ident.times)}`;
    case "test":
      return `TEST, heard ${times(ident.times)}: the station is on test, not to be used`;
    case "test-signal":
      return "a test signal's dots or steady tone, without letters";
    case "cut-off":
      return "keyed, but not once heard whole; record 25 s";
    case "none":
      return "none";
  }
}

const times = (count: number): string => (count === 1 ? "once" : count === 2 ? "twice" : `${count} times`);

const uncertainty = (deviationDeg: number | null): string =>
  deviationDeg === null || deviationDeg < 0.005 ? "" : ` ± ${deviationDeg.toFixed(2)}`;

/** Three digits before the point, two behind it, 000.00 as 360.00. */
function degrees(deg: number): string {
  const text = deg.toFixed(2).padStart(6, "0");
  return `${text === "000.00" ? "360.00" : text}°`;
}

const percent = (share: number): string => `${(100 * share).toFixed(1)} %`;
const seconds = (valueS: number): string => `${Number(valueS.toFixed(2))} s`;
const finite = (value: number): number | null => (Number.isFinite(value) ? rounded(value) : null);
/** To a millionth, never minus zero. */
const rounded = (value: number): number => Math.round(value * 1e6) / 1e6 + 0;
