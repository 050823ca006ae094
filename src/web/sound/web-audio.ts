/** What every sound of the bench is made with in Web Audio: buffers that go round, a volume, levels that change without a click. */

/** Eight times the DME's tone and more: what lies between two samples is drawn by the browser, far above hearing. */
export const SAMPLE_RATE_HZ = 22_050;
/** Time for a level to change without a click. */
export const FADE_S = 0.015;
/** After so many of them 0.2 % is left. */
const FADED_AFTER = 6;

/** The ear counts in ratios: a square makes equal steps of the slider sound more equal than a line does. */
const gainOf = (percent: number): number => (percent / 100) ** 2;

export interface Volume {
  readonly node: GainNode;
  /** 0 to 100. */
  readonly set: (percent: number) => void;
}

/** A volume between what plays and the ear. */
export function volumeOf(context: AudioContext, percent: number): Volume {
  const node = context.createGain();
  node.gain.value = gainOf(percent);
  node.connect(context.destination);
  return {
    node,
    set: (to) => node.gain.setTargetAtTime(gainOf(to), context.currentTime, FADE_S),
  };
}

/** Samples in [-1, 1] of one ear or both, equally long. */
export function bufferOf(context: BaseAudioContext, ...tracks: readonly Float32Array[]): AudioBuffer {
  const buffer = context.createBuffer(tracks.length, tracks[0]?.length ?? 1, SAMPLE_RATE_HZ);
  tracks.forEach((track, index) => {
    buffer.getChannelData(index).set(track);
  });
  return buffer;
}

/** A buffer that goes round and round from a moment of the context's clock; at once when none is given. */
export function loop(
  context: AudioContext,
  buffer: AudioBuffer,
  into: AudioNode,
  atS?: number,
): AudioBufferSourceNode {
  const source = context.createBufferSource();
  source.buffer = buffer;
  source.loop = true;
  source.connect(into);
  source.start(atS);
  return source;
}

/** Lets a level go down, and what plays under it end once it is. */
export function fadeOut(
  context: AudioContext,
  level: GainNode,
  sources: readonly AudioBufferSourceNode[],
): void {
  level.gain.setTargetAtTime(0, context.currentTime, FADE_S);
  for (const source of sources) source.stop(context.currentTime + FADED_AFTER * FADE_S);
}
