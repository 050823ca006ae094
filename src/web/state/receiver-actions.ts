/**
 * What a hand can do to the receivers of a scene, of which there are one to four: another face, another error, one more, one less. An
 * action that would leave fewer or more, or that names a receiver that is not there, leaves the scene as it was.
 */

import { stationDeg } from "../../earth/index.ts";
import type { Face, ReceiverSettings } from "../../panel/index.ts";
import { explainFrequency, givesBearing, sameChannel, VOR_CHANNELS_MHZ } from "../../radio/index.ts";
import type { Scene } from "../../scene/index.ts";

export type ReceiverAction =
  | { readonly kind: "set-face"; readonly receiver: string; readonly face: Face }
  /** Degrees added to every bearing this receiver measures. */
  | { readonly kind: "set-bearing-error"; readonly receiver: string; readonly errorDeg: number }
  | { readonly kind: "add-receiver" }
  /** Its covers go with it. */
  | { readonly kind: "remove-receiver"; readonly receiver: string };

/** A panel holds no more. */
export const MOST_RECEIVERS = 4;
/** A receiver's own error is kept within this either way, degrees, as in a scene file. */
export const LARGEST_ERROR_DEG = 30;

/** The scene after one action. The very same object when the action changes nothing or may not be done. */
export function actOnReceivers(scene: Scene, action: ReceiverAction): Scene {
  switch (action.kind) {
    case "set-face":
      return changed(scene, action.receiver, { face: action.face });
    case "set-bearing-error":
      return changed(scene, action.receiver, { bearingErrorDeg: errorWithin(action.errorDeg) });
    case "add-receiver":
      return scene.receivers.length >= MOST_RECEIVERS ? scene : withOneMore(scene);
    case "remove-receiver":
      return without(scene, action.receiver);
  }
}

/** Tenths of a degree inside what a scene file holds. */
function errorWithin(errorDeg: number): number {
  const tenths = Math.round(errorDeg * 10) / 10;
  return Math.min(LARGEST_ERROR_DEG, Math.max(-LARGEST_ERROR_DEG, tenths)) + 0;
}

function changed(scene: Scene, name: string, change: Partial<ReceiverSettings>): Scene {
  const before = scene.receivers.find((receiver) => receiver.name === name);
  if (before === undefined) return scene;
  const after = { ...before, ...change };
  if (after.face === before.face && after.bearingErrorDeg === before.bearingErrorDeg) return scene;
  return { ...scene, receivers: scene.receivers.map((receiver) => (receiver === before ? after : receiver)) };
}

/** The number in a name such as NAV2; null for any other name. */
function navNumber(name: string): number | null {
  const digits = /^NAV([1-9]\d*)$/.exec(name)?.[1];
  return digits === undefined ? null : Number(digits);
}

/** A fixed card with course 360, named with the first free number and put in its place among the numbers. */
function withOneMore(scene: Scene): Scene {
  const { receivers } = scene;
  let number = 1;
  while (receivers.some(({ name }) => name === `NAV${number}`)) number++;
  const added: ReceiverSettings = {
    name: `NAV${number}`,
    frequencyMhz: freshFrequencyMhz(scene),
    course: stationDeg(0),
    face: "cdi",
    bearingErrorDeg: 0,
  };
  const place = receivers.findIndex(({ name }) => (navNumber(name) ?? 0) > number);
  const at = place < 0 ? receivers.length : place;
  return { ...scene, receivers: [...receivers.slice(0, at), added, ...receivers.slice(at)] };
}

/** The first station with a bearing that nobody listens to yet; else what the last receiver is tuned to, MHz. */
function freshFrequencyMhz({ stations, receivers }: Scene): number {
  const free = stations.find(
    (station) =>
      givesBearing(station) &&
      explainFrequency(station.frequencyMhz).service === "vor" &&
      !receivers.some(({ frequencyMhz }) => sameChannel(frequencyMhz, station.frequencyMhz)),
  );
  const lastMhz = receivers.at(-1)?.frequencyMhz;
  const [lowestMhz] = VOR_CHANNELS_MHZ;
  return free?.frequencyMhz ?? lastMhz ?? lowestMhz ?? 108;
}

function without(scene: Scene, name: string): Scene {
  const receivers = scene.receivers.filter((receiver) => receiver.name !== name);
  if (receivers.length === 0 || receivers.length === scene.receivers.length) return scene;
  const covers = scene.covers.filter((cover) => cover !== name && !cover.startsWith(`${name}.`));
  return { ...scene, receivers, covers: covers.length === scene.covers.length ? scene.covers : covers };
}
