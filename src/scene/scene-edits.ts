/** What can be changed in a scene file, one thing at a time, and the changes that lead from one scene to another. */

import type { LatLon, MagneticDeg, Wind } from "../earth/index.ts";
import type { ReceiverSettings, SignalConditions } from "../panel/index.ts";
import { sameSignal } from "./same-signal.ts";
import type { Scene } from "./scene.ts";

export type SceneEdit =
  | { readonly kind: "text"; readonly key: "title" | "about" | "ask"; readonly text: string }
  | { readonly kind: "date"; readonly date: string }
  /** A text such as `TXJ 246/18` is written as it is. */
  | { readonly kind: "position"; readonly at: LatLon | string }
  | { readonly kind: "heading"; readonly heading: MagneticDeg }
  | { readonly kind: "altitude"; readonly altitudeFt: number }
  | { readonly kind: "tas"; readonly tasKt: number }
  | { readonly kind: "wind"; readonly wind: Wind }
  /** `before` is what the text says now: what stays as it was is left as it is written. Null takes the key out. */
  | {
      readonly kind: "signal";
      readonly before: SignalConditions | null;
      readonly signal: SignalConditions | null;
    }
  | { readonly kind: "covers"; readonly covers: readonly string[] }
  /** Changes the receiver that bears the name. */
  | {
      readonly kind: "receiver";
      readonly name: string;
      readonly change: Partial<ReceiverSettings>;
    }
  | { readonly kind: "add-receiver"; readonly receiver: ReceiverSettings }
  | { readonly kind: "remove-receiver"; readonly name: string };

/**
 * The edits that lead from one scene to another. Stations and land are not compared: they stand in
 * files of their own. A new receiver comes last.
 */
export function editsBetween(before: Scene, after: Scene): SceneEdit[] {
  const edits: SceneEdit[] = [];
  for (const key of ["title", "about", "ask"] as const)
    if (before[key] !== after[key]) edits.push({ kind: "text", key, text: after[key] });
  if (before.date !== after.date) edits.push({ kind: "date", date: after.date });
  const { position, heading, altitudeFt, tasKt } = after.aircraft;
  const from = before.aircraft;
  if (position.latDeg !== from.position.latDeg || position.lonDeg !== from.position.lonDeg)
    edits.push({ kind: "position", at: position });
  if (heading !== from.heading) edits.push({ kind: "heading", heading });
  if (altitudeFt !== from.altitudeFt) edits.push({ kind: "altitude", altitudeFt });
  if (tasKt !== from.tasKt) edits.push({ kind: "tas", tasKt });
  if (after.wind.from !== before.wind.from || after.wind.speedKt !== before.wind.speedKt)
    edits.push({ kind: "wind", wind: after.wind });
  edits.push(...receiverEdits(before.receivers, after.receivers));
  if (!sameSignal(before.signal, after.signal))
    edits.push({ kind: "signal", before: before.signal, signal: after.signal });
  if (before.covers.join() !== after.covers.join()) edits.push({ kind: "covers", covers: after.covers });
  return edits;
}

function receiverEdits(before: readonly ReceiverSettings[], after: readonly ReceiverSettings[]): SceneEdit[] {
  const named = (among: readonly ReceiverSettings[], name: string) => among.find((one) => one.name === name);
  const changed = after.flatMap((receiver): SceneEdit[] => {
    const old = named(before, receiver.name);
    if (!old) return [{ kind: "add-receiver", receiver }];
    const change = changeBetween(old, receiver);
    return Object.keys(change).length > 0 ? [{ kind: "receiver", name: receiver.name, change }] : [];
  });
  const removed = before
    .filter(({ name }) => !named(after, name))
    .map(({ name }): SceneEdit => ({ kind: "remove-receiver", name }));
  // One is changed first and removed last, so that the file never stands without a receiver.
  return [...changed, ...removed];
}

const changeBetween = (old: ReceiverSettings, now: ReceiverSettings): Partial<ReceiverSettings> => ({
  ...(old.frequencyMhz !== now.frequencyMhz && { frequencyMhz: now.frequencyMhz }),
  ...(old.course !== now.course && { course: now.course }),
  ...(old.face !== now.face && { face: now.face }),
  ...(old.bearingErrorDeg !== now.bearingErrorDeg && { bearingErrorDeg: now.bearingErrorDeg }),
});
