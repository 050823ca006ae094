/** `needlework signal SCENE -o F.wav`: what one of a scene's receivers is given, as samples, with SigMF metadata beside them. */

import { basename } from "node:path";
import { stationDeg, threeDigits } from "../earth/index.ts";
import { type ReceiverReading, standardSignal } from "../panel/index.ts";
import {
  carrierToNoiseDbHz,
  frequencyText,
  LEAST_SAMPLE_RATE_HZ,
  type Station,
  sigmfText,
  signalFile,
  type VorSignal,
} from "../radio/index.ts";
import { resolveScene, type Scene } from "../scene/index.ts";
import type { Call } from "./command.ts";
import { didYouMean } from "./did-you-mean.ts";
import { CallFault, EXIT_DONE, type ExitCode, InputFault } from "./faults.ts";
import { type NumberRule, numberOption } from "./number-option.ts";
import { progress } from "./progress.ts";
import { readSceneOrThrow } from "./scene-operand.ts";
import { print, STREAM, tell } from "./streams.ts";
import { writeWhole } from "./write-whole.ts";

export const SECONDS_BY_DEFAULT = 12;
export const RATE_BY_DEFAULT_HZ = 48_000;
const SECONDS: NumberRule = { name: "seconds", least: 0.1, most: 600, unit: "s" };
const RATE: NumberRule = {
  name: "rate",
  least: LEAST_SAMPLE_RATE_HZ,
  most: 192_000,
  unit: "Hz",
  whole: true,
};
/** The standard lets a carrier be some hundred hertz off; the band holds ten times that. */
const OFFSET: NumberRule = { name: "offset", least: -10_000, most: 10_000, unit: "Hz" };
const NOISE: NumberRule = { name: "noise", least: 0, most: 120, unit: "dB over thermal noise" };
const RADIAL: NumberRule = { name: "radial", least: 0, most: 360, unit: "degrees" };

/** Writes the file. Throws InputFault where no signal arrives. */
export async function makeSignal(call: Call, path: string): Promise<ExitCode> {
  if (call.has("course")) throw new CallFault("--course has no meaning without --decode");
  const output = call.text("output");
  if (output === undefined) throw new CallFault("say where the samples go: -o FILE");
  if (output === STREAM && call.has("json")) throw new CallFault("--json and -o - would both go to stdout");
  const form = call.has("iq") ? "baseband" : "audio";
  const sampleRateHz = numberOption(call, RATE, RATE_BY_DEFAULT_HZ);
  const seconds = numberOption(call, SECONDS, SECONDS_BY_DEFAULT);
  const carrierOffsetHz = numberOption(call, OFFSET, 0);
  if (form === "audio" && carrierOffsetHz !== 0)
    throw new CallFault("--offset moves the carrier, which sound does not hold; add --iq");
  const { scene, files } = await readSceneOrThrow(path);
  const reading = readingOf(call, scene);
  const signal = changed(call, arriving(reading, scene.covers.length > 0), reading);
  const making = progress("making");
  const file = signalFile(signal, {
    form,
    sampleRateHz,
    durationS: seconds,
    carrierOffsetHz,
    made: making.show,
  });
  making.end();
  const about = {
    file: output,
    metadata: output === STREAM ? null : metadataPath(output),
    form,
    sampleRateHz,
    durationS: seconds,
    receiver: reading.settings.name,
    carrierLevel: file.carrierLevel,
    // A cover hides what the learner is to find, and each of these would help.
    ...(scene.covers.length > 0
      ? { station: null, frequencyMhz: null, radialDeg: null }
      : {
          station: reading.station?.ident ?? null,
          frequencyMhz: signal.frequencyMhz,
          radialDeg: Math.round(signal.radial * 1e6) / 1e6,
        }),
  };
  writeWhole(output, file.bytes, files);
  if (about.metadata !== null) {
    const { frequencyMhz } = about;
    const text = sigmfText({
      form,
      sampleRateHz,
      samples: file.samples,
      dataset: basename(output),
      description: inWords(about, signal),
      label: "VOR",
      frequencyHz: frequencyMhz === null ? null : Math.round(frequencyMhz * 1e6) - carrierOffsetHz,
    });
    writeWhole(about.metadata, Buffer.from(text), files);
  }
  if (call.has("json")) print(JSON.stringify(about));
  else if (output !== STREAM) tell(`${output} written: ${inWords(about, signal)}`);
  return EXIT_DONE;
}

function readingOf(call: Call, scene: Scene): ReceiverReading {
  const { receivers } = resolveScene(scene);
  const asked = call.text("receiver");
  const reading =
    asked === undefined ? receivers[0] : receivers.find(({ settings }) => settings.name === asked);
  if (reading !== undefined) return reading;
  if (asked === undefined) throw new InputFault("the scene has no receiver; give it one under receivers:");
  const names = receivers.map(({ settings }) => settings.name);
  throw new CallFault(
    `unknown receiver "${asked}"${didYouMean(asked, names)}; it is one of ${names.join(", ")}`,
  );
}

/** What arrives at the receiver: by the scene's own word on signals, else a standard station's. */
function arriving({ signal, geometry, measured, settings }: ReceiverReading, isCovered: boolean): VorSignal {
  if (measured !== null) return measured.arriving;
  if (signal.kind === "good" || signal.kind === "weak") {
    if (geometry === null) throw new Error("a station that is received stands somewhere");
    return standardSignal(signal.station, geometry.trueRadial);
  }
  const why = isCovered ? "" : `: ${WHY_NONE[signal.kind === "none" ? signal.why.kind : signal.kind]}`;
  throw new InputFault(
    `no VOR's signal arrives at ${settings.name}${why}; move the aircraft or tune another station`,
  );
}

const WHY_NONE = {
  "no-station": "no station is on its channel",
  "localizer-channel": "its channel is a localizer's",
  "distance-only": "the station gives distance only",
  silent: "the station is silent",
  "below-horizon": "the station is below the horizon",
  terrain: "a hill is in the way",
  "too-weak": "the station is too far away",
  flagged: "its flag is down",
  overhead: "it is in the cone over the station",
  "two-at-once": "two stations share the channel",
} as const;

/** With the noise and the radial that the call asks for. */
function changed(call: Call, signal: VorSignal, { station, geometry }: ReceiverReading): VorSignal {
  const radial = call.has("radial") ? stationDeg(numberOption(call, RADIAL, 0)) : signal.radial;
  return { ...signal, radial, carrierToNoiseDbHz: noiseOf(call, signal, station, geometry?.slantNm ?? 0) };
}

function noiseOf(call: Call, signal: VorSignal, station: Station | null, slantNm: number): number | null {
  const text = call.text("noise");
  if (text === undefined || station === null) return signal.carrierToNoiseDbHz;
  if (text === "none") return null;
  return carrierToNoiseDbHz(station.eirpW, station.frequencyMhz, slantNm, numberOption(call, NOISE, 0));
}

/** Beside the samples, with the ending that SigMF asks for. */
const metadataPath = (output: string): string => `${output.replace(/\.wav$/i, "")}.sigmf-meta`;

interface About {
  readonly form: string;
  readonly sampleRateHz: number;
  readonly durationS: number;
  readonly receiver: string;
  readonly station: string | null;
  readonly frequencyMhz: number | null;
  readonly radialDeg: number | null;
}

function inWords(about: About, { modulation }: VorSignal): string {
  const { form, sampleRateHz, durationS, receiver, station, frequencyMhz, radialDeg } = about;
  const kind = form === "audio" ? "the AM detector's output" : "complex baseband, in phase and quadrature,";
  const what = `${durationS} s of ${kind} at ${sampleRateHz} Hz, what ${receiver} is given`;
  if (station === null || frequencyMhz === null || radialDeg === null) return what;
  return `${what}: ${station} ${frequencyText(frequencyMhz)}, ${modulation.kind}, radial ${threeDigits(radialDeg)}`;
}
