/** Makes a part of the signal sound, looped by Web Audio. The context is opened in the press, as browsers wish. */

import type { StationDeg } from "../../earth/index.ts";
import { loweredSubcarrier, raisedTones } from "../../radio/index.ts";

export type HeardPart = "tones" | "subcarrier";

export interface PartSpeaker {
  readonly play: (part: HeardPart, radial: StationDeg) => void;
  readonly hush: () => void;
  /** 0 to 100. */
  readonly setVolume: (percent: number) => void;
  readonly close: () => void;
}

const SAMPLE_RATE_HZ = 22_050;
/** Time for a level to change without a click. */
const FADE_S = 0.015;
const FADED_AFTER = 6;
/** As the ident's: the ear counts in ratios. */
const gainOf = (percent: number): number => (percent / 100) ** 2;

/** Null where the browser has no Web Audio. */
export function createPartSpeaker(percent: number): PartSpeaker | null {
  if (typeof AudioContext === "undefined") return null;
  const context = new AudioContext();
  const volume = context.createGain();
  volume.gain.value = gainOf(percent);
  volume.connect(context.destination);
  let playing: { readonly source: AudioBufferSourceNode; readonly level: GainNode } | null = null;
  const hush = () => {
    if (playing === null) return;
    const { source, level } = playing;
    playing = null;
    level.gain.setTargetAtTime(0, context.currentTime, FADE_S);
    source.stop(context.currentTime + FADED_AFTER * FADE_S);
  };
  return {
    hush,
    play: (part, radial) => {
      hush();
      void context.resume();
      const tracks =
        part === "tones"
          ? Object.values(raisedTones(radial, SAMPLE_RATE_HZ))
          : [loweredSubcarrier(SAMPLE_RATE_HZ)];
      const buffer = context.createBuffer(tracks.length, tracks[0]?.length ?? 1, SAMPLE_RATE_HZ);
      tracks.forEach((track, index) => {
        buffer.getChannelData(index).set(track);
      });
      const level = context.createGain();
      level.connect(volume);
      const source = context.createBufferSource();
      source.buffer = buffer;
      source.loop = true;
      source.connect(level);
      source.start();
      playing = { source, level };
    },
    setVolume: (to) => volume.gain.setTargetAtTime(gainOf(to), context.currentTime, FADE_S),
    close: () => {
      hush();
      void context.close();
    },
  };
}
