/**
 * An ear for the page: notes what it hands to Web Audio, plays the same again through an OfflineAudioContext, and listens
 * in on what leaves for the loudspeaker. Nothing of the page is replaced; every call goes through.
 */

import type { Page } from "playwright-core";

/** Put into the page before its own scripts. */
function notePlaying(): void {
  interface Noted {
    readonly node: AudioBufferSourceNode;
    atS: number | null;
    stopped: boolean;
  }
  const into = new Map<AudioNode, AudioNode>();
  const noted: Noted[] = [];
  const taps: AnalyserNode[] = [];
  const { createBufferSource } = BaseAudioContext.prototype;
  const { connect } = AudioNode.prototype as { connect: (this: AudioNode, to: AudioNode) => AudioNode };
  const { start } = AudioBufferSourceNode.prototype;
  const { stop } = AudioScheduledSourceNode.prototype;
  const find = (node: AudioNode) => noted.find((each) => each.node === node);
  BaseAudioContext.prototype.createBufferSource = function () {
    const node = createBufferSource.call(this);
    if (this instanceof AudioContext) noted.push({ node, atS: null, stopped: false });
    return node;
  };
  AudioBufferSourceNode.prototype.start = function (atS = 0) {
    start.call(this, atS);
    const each = find(this);
    if (each !== undefined) each.atS = atS;
  };
  AudioScheduledSourceNode.prototype.stop = function (atS = 0) {
    stop.call(this, atS);
    const each = find(this);
    if (each !== undefined) each.stopped = true;
  };
  Object.assign(AudioNode.prototype, {
    connect(this: AudioNode, to: AudioNode): AudioNode {
      into.set(this, to);
      if (to instanceof AudioDestinationNode && to.context instanceof AudioContext) {
        const tap = to.context.createAnalyser();
        tap.fftSize = 4096;
        connect.call(this, tap);
        taps.push(tap);
      }
      return connect.call(this, to);
    },
  });
  const sounding = () => noted.filter(({ atS, stopped }) => atS !== null && !stopped);
  Object.assign(globalThis, {
    ear: {
      contexts: () => taps.length,
      sounding: () => sounding().length,
      /** The page's present sound from its beginning on, at its volume. */
      async render(durationS: number, rateHz: number): Promise<number[]> {
        const offline = new OfflineAudioContext(1, Math.round(durationS * rateHz), rateHz);
        const beganS = Math.min(...sounding().map(({ atS }) => atS ?? 0));
        for (const { node, atS } of sounding()) {
          let gain = 1;
          for (let at = into.get(node); at !== undefined; at = into.get(at))
            if (at instanceof GainNode) gain *= at.gain.value;
          const again = new AudioBufferSourceNode(offline, { buffer: node.buffer, loop: node.loop });
          again.connect(new GainNode(offline, { gain })).connect(offline.destination);
          again.start((atS ?? 0) - beganS);
        }
        const rendered = await offline.startRendering();
        return [...rendered.getChannelData(0)];
      },
      /** The last 4096 samples that left for the loudspeaker, and their rate. */
      live(): { samples: number[]; rateHz: number } {
        const tap = taps.at(-1);
        if (tap === undefined) return { samples: [], rateHz: 0 };
        const samples = new Float32Array(tap.fftSize);
        tap.getFloatTimeDomainData(samples);
        return { samples: [...samples], rateHz: tap.context.sampleRate };
      },
    },
  });
}

interface Ear {
  readonly contexts: () => number;
  readonly sounding: () => number;
  readonly render: (durationS: number, rateHz: number) => Promise<number[]>;
  readonly live: () => { samples: number[]; rateHz: number };
}
declare const ear: Ear;

export const giveEar = (page: Page): Promise<unknown> => page.addInitScript(notePlaying);

/** How many contexts the page has opened to the loudspeaker. */
export const contextsOpened = (page: Page): Promise<number> => page.evaluate(() => ear.contexts());
/** How many sources play and have not been told to stop. */
export const sourcesSounding = (page: Page): Promise<number> => page.evaluate(() => ear.sounding());
export const heardLive = (page: Page): Promise<{ samples: number[]; rateHz: number }> =>
  page.evaluate(() => ear.live());

/** Eight samples to a turn of the higher tone: enough to measure it, and little to carry out of the page. */
export const RENDER_HZ = 11_025;
/** What the page plays now, from its first moment on. */
export async function heardFor(page: Page, durationS: number): Promise<Float32Array> {
  return Float32Array.from(
    await page.evaluate(([s, hz]) => ear.render(s, hz), [durationS, RENDER_HZ] as const),
  );
}

export const rms = (samples: ArrayLike<number>): number =>
  Math.sqrt(Array.from(samples).reduce((sum, sample) => sum + sample * sample, 0) / samples.length);

/** The tone's frequency by the time between its first and last upward crossing of zero. */
export function toneHz(samples: ArrayLike<number>, rateHz: number): number {
  const crossings: number[] = [];
  for (let index = 1; index < samples.length; index++) {
    const [before, after] = [samples[index - 1]!, samples[index]!];
    if (before < 0 && after >= 0) crossings.push(index - after / (after - before));
  }
  const [first, last] = [crossings[0]!, crossings.at(-1)!];
  return ((crossings.length - 1) * rateHz) / (last - first);
}

/** A stretch of tone as heard. */
export interface HeardStroke {
  readonly startS: number;
  readonly durationS: number;
  readonly toneHz: number;
}

/** Tells tone from hiss by this share of the loudest millisecond, and a gap from a stroke's own quiet by its length. */
const ON_ABOVE = 0.3;
const WINDOW_S = 0.005;

/** Every stretch of tone, by the level in windows of 5 ms. */
export function strokesHeard(samples: Float32Array, rateHz = RENDER_HZ): HeardStroke[] {
  const size = Math.round(WINDOW_S * rateHz);
  const windowS = size / rateHz;
  const levels = Array.from({ length: Math.floor(samples.length / size) }, (_, index) =>
    rms(samples.subarray(index * size, (index + 1) * size)),
  );
  const threshold = ON_ABOVE * Math.max(...levels);
  const strokes: HeardStroke[] = [];
  let from: number | null = null;
  for (let index = 0; index <= levels.length; index++) {
    const on = (levels[index] ?? 0) > threshold;
    if (on && from === null) from = index;
    if (!on && from !== null) {
      const inside = samples.subarray((from + 1) * size, (index - 1) * size);
      strokes.push({
        startS: from * windowS,
        durationS: (index - from) * windowS,
        toneHz: toneHz(inside, rateHz),
      });
      from = null;
    }
  }
  return strokes;
}

/** The few letters of these tests, from ITU-R M.1677-1 by hand, not from the program. */
const LETTERS: Readonly<Record<string, string>> = {
  "-": "T",
  "-..-": "X",
  ".---": "J",
  "....": "H",
  ".-..": "L",
  ".": "E",
  "...": "S",
  "-...": "B",
  "--.-": "Q",
  ".-.": "R",
};

/** Reads strokes by their lengths as a person does, words apart by a space: gaps of 2 dots part letters, of 5 words. */
export function readMorse(strokes: readonly HeardStroke[], dotS: number): string {
  let text = "";
  let sign = "";
  strokes.forEach((stroke, index) => {
    sign += stroke.durationS > 2 * dotS ? "-" : ".";
    const next = strokes[index + 1];
    const gapS = next === undefined ? Infinity : next.startS - stroke.startS - stroke.durationS;
    if (gapS < 2 * dotS) return;
    text += LETTERS[sign] ?? "?";
    sign = "";
    if (gapS > 5 * dotS && next !== undefined) text += " ";
  });
  return text;
}
