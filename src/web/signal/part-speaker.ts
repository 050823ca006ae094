/** Makes a part of the signal sound, looped by Web Audio. The context is opened in the press, as browsers wish. */

import type { StationDeg } from "../../earth/index.ts";
import { loweredSubcarrier, raisedTones } from "../../radio/index.ts";
import { bufferOf, fadeOut, loop, SAMPLE_RATE_HZ, volumeOf } from "../sound/web-audio.ts";

export type HeardPart = "tones" | "subcarrier";

export interface PartSpeaker {
  readonly play: (part: HeardPart, radial: StationDeg) => void;
  readonly hush: () => void;
  /** 0 to 100. */
  readonly setVolume: (percent: number) => void;
  readonly close: () => void;
}

/** Null where the browser has no Web Audio. */
export function createPartSpeaker(percent: number): PartSpeaker | null {
  if (typeof AudioContext === "undefined") return null;
  const context = new AudioContext();
  const volume = volumeOf(context, percent);
  let playing: { readonly source: AudioBufferSourceNode; readonly level: GainNode } | null = null;
  const hush = () => {
    if (playing === null) return;
    const { source, level } = playing;
    playing = null;
    fadeOut(context, level, [source]);
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
      const level = context.createGain();
      level.connect(volume.node);
      const source = loop(context, bufferOf(context, ...tracks), level);
      playing = { source, level };
    },
    setVolume: volume.set,
    close: () => {
      hush();
      void context.close();
    },
  };
}
