/** What a person types into a receiver's frequency: a channel to tune, or one sentence that says why it is none. */

import {
  explainFrequency,
  nearestVorChannels,
  readFrequency,
  type Station,
  sameChannel,
  VOR_CHANNELS_MHZ,
} from "../../radio/index.ts";

export type TuningRead =
  | { readonly kind: "tune"; readonly frequencyMhz: number }
  | { readonly kind: "refused"; readonly sentence: string };

/**
 * A frequency ("115.6", "115.60 MHz") or the ident of a station of the scene ("txj"). Only VOR channels are tuned: anything else would
 * make a scene that no file may hold.
 */
export function readTuning(text: string, stations: readonly Station[]): TuningRead {
  const typed = text.trim();
  const named = stations.find((station) => station.ident === typed.toUpperCase());
  if (named !== undefined) return tuneTo(named.frequencyMhz);
  if (/^[a-z][a-z0-9]*$/i.test(typed)) {
    const idents = stations.map((station) => station.ident).join(", ");
    return {
      kind: "refused",
      sentence: `no station here sends ${typed.toUpperCase()}; this scene has ${idents}`,
    };
  }
  const read = readFrequency(typed);
  return read.kind === "unreadable" ? { kind: "refused", sentence: read.reason } : tuneTo(read.frequencyMhz);
}

function tuneTo(frequencyMhz: number): TuningRead {
  const verdict = explainFrequency(frequencyMhz);
  return verdict.service === "vor"
    ? { kind: "tune", frequencyMhz }
    : { kind: "refused", sentence: verdict.explanation };
}

/** The VOR channel so many channels up (negative: down) from a frequency, ending at the ends of the band, MHz. */
export function channelStepped(frequencyMhz: number, by: number): number {
  const from = nearestVorChannels(frequencyMhz)[0] ?? frequencyMhz;
  const index = VOR_CHANNELS_MHZ.findIndex((channel) => sameChannel(channel, from));
  const last = VOR_CHANNELS_MHZ.length - 1;
  return VOR_CHANNELS_MHZ[Math.min(last, Math.max(0, index + by))] ?? frequencyMhz;
}

/** The stations of the scene on a channel. */
export const stationsOn = (frequencyMhz: number, stations: readonly Station[]): readonly Station[] =>
  stations.filter((station) => sameChannel(station.frequencyMhz, frequencyMhz));
