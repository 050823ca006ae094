/** What a choice of field asks of a scene: a plate, and how it is to look. */

import type { StationDeg } from "../../earth/index.ts";
import type { ReceiverSettings } from "../../panel/index.ts";
import type { Peak } from "../../radio/index.ts";
import type { Scene } from "../../scene/index.ts";
import type { FieldKind, FieldShown } from "./field-choice.ts";
import { type PlateSubject, stationsOnChannels } from "./plate.ts";

/** The receivers a choice is about, as the scene has them set; null when it has them not. */
export function receiversOf(
  scene: Scene,
  { receiver, other }: FieldShown,
): { readonly first: ReceiverSettings; readonly second: ReceiverSettings } | null {
  const first = scene.receivers.find(({ name }) => name === receiver);
  const second = scene.receivers.find(({ name }) => name === other) ?? first;
  return first === undefined || second === undefined ? null : { first, second };
}

/** The very same list each time, so that nothing seems to have changed. */
const NO_PEAKS: readonly Peak[] = [];

/** What a plate for the choice depends on. */
export function subjectOf(scene: Scene, choice: FieldShown): PlateSubject | null {
  const receivers = receiversOf(scene, choice);
  if (receivers === null) return null;
  const { first, second } = receivers;
  const isFix = choice.kind === "fix";
  const channels = isFix ? [first.frequencyMhz, second.frequencyMhz] : [first.frequencyMhz];
  return {
    stations: stationsOnChannels(scene.stations, channels),
    peaks: scene.land?.peaks ?? NO_PEAKS,
    altitudeFt: scene.aircraft.altitudeFt,
    frequencyMhz: first.frequencyMhz,
    bearingErrorDeg: first.bearingErrorDeg,
    fix: isFix ? { frequencyMhz: second.frequencyMhz, allowedErrorDeg: choice.allowedErrorDeg } : null,
  };
}

/** Whether a plate made for one serves for the other: lists and stations must be the very same. */
export function sameSubject(one: PlateSubject | null, other: PlateSubject | null): boolean {
  if (one === null || other === null) return one === other;
  return (
    one.altitudeFt === other.altitudeFt &&
    one.frequencyMhz === other.frequencyMhz &&
    one.bearingErrorDeg === other.bearingErrorDeg &&
    one.peaks === other.peaks &&
    one.fix?.frequencyMhz === other.fix?.frequencyMhz &&
    one.fix?.allowedErrorDeg === other.fix?.allowedErrorDeg &&
    one.stations.length === other.stations.length &&
    one.stations.every((station, index) => station === other.stations[index])
  );
}

/** What turns a plate into colours, beside the theme: the kind and, where the kind asks, the course. */
export interface FieldLook {
  readonly kind: FieldKind;
  readonly course: StationDeg;
  readonly bearingErrorDeg: number;
}
