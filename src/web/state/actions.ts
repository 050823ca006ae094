/**
 * What a hand can do to a scene, named as the trade says it. Each action is plain data; `act` gives the scene after it.
 * Pure: the same scene and action always give the same scene, and the scene given is left as it was.
 */

import {
  type LatLon,
  type MagneticDeg,
  magneticDeg,
  type StationDeg,
  stationDeg,
  turned,
} from "../../earth/index.ts";
import type { ReceiverSettings } from "../../panel/index.ts";
import type { Aircraft, Scene } from "../../scene/index.ts";
import { actOnCovers, type CoverAction } from "../covers/cover-actions.ts";
import { actOnReceivers, type ReceiverAction } from "./receiver-actions.ts";
import { actOnSignal, type SignalAction } from "./signal-actions.ts";
import { actOnStations, type StationAction } from "./station-actions.ts";

export type SceneAction =
  | { readonly kind: "move-aircraft"; readonly to: LatLon }
  | { readonly kind: "set-heading"; readonly heading: MagneticDeg }
  | { readonly kind: "turn-heading"; readonly byDeg: number }
  | { readonly kind: "set-altitude"; readonly altitudeFt: number }
  | { readonly kind: "set-course"; readonly receiver: string; readonly course: StationDeg }
  | { readonly kind: "turn-course"; readonly receiver: string; readonly byDeg: number }
  | { readonly kind: "tune-receiver"; readonly receiver: string; readonly frequencyMhz: number }
  /** Puts the aircraft where its flight has taken it. */
  | { readonly kind: "fly"; readonly aircraft: Aircraft }
  /** Brings back what a moment of a flight was: the rest of the scene stays, and receivers that came since. */
  | ({ readonly kind: "replay" } & Pick<Scene, "aircraft" | "wind" | "receivers">)
  | ReceiverAction
  | CoverAction
  | SignalAction
  | StationAction;

/** The altitudes the bench offers, feet above mean sea level; a scene file may hold others. */
export const LOWEST_ALTITUDE_FT = 0;
export const HIGHEST_ALTITUDE_FT = 45_000;

/** The scene after one action. The very same object when the action changes nothing. */
export function act(scene: Scene, action: SceneAction): Scene {
  switch (action.kind) {
    case "move-aircraft":
      return withAircraft(scene, { position: action.to });
    case "set-heading":
      return withAircraft(scene, { heading: magneticDeg(Math.round(action.heading)) });
    case "turn-heading":
      return withAircraft(scene, {
        heading: turned(magneticDeg(Math.round(scene.aircraft.heading)), Math.round(action.byDeg)),
      });
    case "set-altitude":
      return withAircraft(scene, { altitudeFt: altitudeWithin(action.altitudeFt) });
    case "set-course":
      return withReceiver(scene, action.receiver, () => ({ course: stationDeg(Math.round(action.course)) }));
    case "turn-course":
      return withReceiver(scene, action.receiver, ({ course }) => ({
        course: turned(stationDeg(Math.round(course)), Math.round(action.byDeg)),
      }));
    case "tune-receiver":
      return withReceiver(scene, action.receiver, () => ({ frequencyMhz: action.frequencyMhz }));
    case "put-cover":
    case "lift-cover":
    case "lift-covers":
    case "set-ask":
      return actOnCovers(scene, action);
    case "fly":
      return action.aircraft === scene.aircraft ? scene : { ...scene, aircraft: action.aircraft };
    case "replay":
      return replayed(scene, action);
    case "set-face":
    case "set-bearing-error":
    case "add-receiver":
    case "remove-receiver":
      return actOnReceivers(scene, action);
    case "set-signal":
    case "set-signal-kind":
    case "set-noise":
    case "set-propeller":
    case "add-reflector":
    case "change-reflector":
    case "remove-reflector":
      return actOnSignal(scene, action);
    default:
      return actOnStations(scene, action);
  }
}

function replayed(
  scene: Scene,
  { aircraft, wind, receivers }: Pick<Scene, "aircraft" | "wind" | "receivers">,
): Scene {
  const then = scene.receivers.map((now) => receivers.find(({ name }) => name === now.name) ?? now);
  const same = then.every((settings, index) => settings === scene.receivers[index]);
  if (same && aircraft === scene.aircraft && wind === scene.wind) return scene;
  return { ...scene, aircraft, wind, receivers: same ? scene.receivers : then };
}

/** Whole feet inside what the bench offers. */
const altitudeWithin = (altitudeFt: number): number =>
  Math.min(HIGHEST_ALTITUDE_FT, Math.max(LOWEST_ALTITUDE_FT, Math.round(altitudeFt)));

function withAircraft(scene: Scene, change: Partial<Aircraft>): Scene {
  const aircraft = { ...scene.aircraft, ...change };
  const { position, heading, altitudeFt } = scene.aircraft;
  const same =
    aircraft.position.latDeg === position.latDeg &&
    aircraft.position.lonDeg === position.lonDeg &&
    aircraft.heading === heading &&
    aircraft.altitudeFt === altitudeFt;
  return same ? scene : { ...scene, aircraft };
}

/** Throws RangeError when no receiver has that name: the panel only offers those there are. */
function withReceiver(
  scene: Scene,
  name: string,
  change: (settings: ReceiverSettings) => Partial<ReceiverSettings>,
): Scene {
  const before = scene.receivers.find((receiver) => receiver.name === name);
  if (before === undefined) throw new RangeError(`no receiver is called ${name}`);
  const after = { ...before, ...change(before) };
  if (after.course === before.course && after.frequencyMhz === before.frequencyMhz) return scene;
  return { ...scene, receivers: scene.receivers.map((receiver) => (receiver === before ? after : receiver)) };
}
