/**
 * Makes what is on the channel sound: samples computed by the engine, looped by Web Audio, behind them the receiver's hiss.
 * Loaded at the first press of Identify.
 */

import { callSamples } from "../../radio/index.ts";
import type { OnChannel, Round } from "./on-channel.ts";
import { bufferOf, FADE_S, fadeOut, loop, SAMPLE_RATE_HZ, volumeOf } from "./web-audio.ts";

const HISS_S = 2.5;
/** From the press to the first dot: enough for the browser to begin on time. */
const LEAD_S = 0.06;
/** From the last sound to a context at rest. */
const REST_AFTER_MS = 500;

export interface Speaker {
  /** Begins what is on the channel, from its first call; what sounded before ends. */
  readonly play: (channel: OnChannel, hiss: number) => void;
  readonly setHiss: (hiss: number) => void;
  /** 0 to 100. */
  readonly setVolume: (percent: number) => void;
  readonly hush: () => void;
  /** Seconds of the channel that have reached the ear; null while the browser holds the sound back. */
  readonly heardS: () => number | null;
}

interface Playing {
  readonly sources: readonly AudioBufferSourceNode[];
  readonly level: GainNode;
  readonly hiss: GainNode;
  readonly beganS: number;
}

/** A speaker on a context that the caller opened and lets run. */
export function createSpeaker(context: AudioContext, volumePercent: number): Speaker {
  const volume = volumeOf(context, volumePercent);
  const hissBuffer = bufferOf(context, hissSamples());
  let playing: Playing | null = null;
  let resting = 0;

  const hush = () => {
    if (playing === null) return;
    const { level, sources } = playing;
    playing = null;
    fadeOut(context, level, sources);
    // An idle context would go on working the sound card.
    resting = window.setTimeout(() => {
      if (context.state === "running") void context.suspend();
    }, REST_AFTER_MS);
  };

  const play = (channel: OnChannel, hissLevel: number) => {
    hush();
    clearTimeout(resting);
    void context.resume();
    const level = context.createGain();
    level.connect(volume.node);
    const hiss = context.createGain();
    hiss.gain.value = hissLevel;
    hiss.connect(level);
    const beganS = context.currentTime + LEAD_S;
    const keyed = channel.rounds.map((round) =>
      loop(context, bufferOf(context, roundSamples(round)), level, beganS + round.firstAtS),
    );
    playing = { sources: [loop(context, hissBuffer, hiss, beganS), ...keyed], level, hiss, beganS };
  };

  return {
    play,
    hush,
    setHiss: (hissLevel) => playing?.hiss.gain.setTargetAtTime(hissLevel, context.currentTime, FADE_S),
    setVolume: volume.set,
    heardS: () =>
      playing === null || context.state !== "running"
        ? null
        : Math.max(0, context.currentTime - playing.beganS - (context.outputLatency || 0)),
  };
}

/** One round of one sender, in [-1, 1]. */
const roundSamples = ({ calls, roundS }: Round): Float32Array =>
  callSamples(calls, roundS, { sampleRateHz: SAMPLE_RATE_HZ });

/** Noise with a root mean square of 1, every time the same: a linear congruential generator (Numerical Recipes, 7.1). */
function hissSamples(): Float32Array {
  const samples = new Float32Array(Math.round(HISS_S * SAMPLE_RATE_HZ));
  let state = 1;
  for (let index = 0; index < samples.length; index++) {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    // Even over (-√3, √3), whose mean square is 1.
    samples[index] = Math.sqrt(3) * (state / 2 ** 31 - 1);
  }
  return samples;
}
