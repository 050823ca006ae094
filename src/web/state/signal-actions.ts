/**
 * What a hand can do to the signal of a scene: measured or not, how the stations send, and what spoils it on the way. Numbers are kept in
 * what a scene file holds; an action that the scene has no place for (a reflector of a station without radials, a ninth one, anything of
 * a signal that is not measured) leaves it as it was.
 */

import type { Propeller, Reflector, SignalConditions } from "../../panel/index.ts";
import { givesBearing, type SignalKind, type Station, TYPICAL_NOISE_DB } from "../../radio/index.ts";
import {
  MOST_REFLECTORS,
  NOISE_DB,
  type NumberLimits,
  PROPELLER_BLADES,
  PROPELLER_SPEED_RPM,
  REFLECTOR_AMPLITUDE,
  type Scene,
  sameSignal,
} from "../../scene/index.ts";

export type SignalAction =
  /** Null: nothing is measured, and panel and needle go by the radial as it is computed. */
  | { readonly kind: "set-signal"; readonly signal: SignalConditions | null }
  | { readonly kind: "set-signal-kind"; readonly signalKind: SignalKind }
  /** Over thermal noise, dB; null for none. */
  | { readonly kind: "set-noise"; readonly noiseDb: number | null }
  | { readonly kind: "set-propeller"; readonly propeller: Propeller | null }
  | { readonly kind: "add-reflector"; readonly reflector: Reflector }
  /** The one at that place of the list, counted from 0. */
  | { readonly kind: "change-reflector"; readonly index: number; readonly reflector: Reflector }
  | { readonly kind: "remove-reflector"; readonly index: number };

/** What a scene file means that says no more than that there is a signal. */
export const PLAIN_SIGNAL: SignalConditions = {
  kind: "conventional",
  noiseDb: TYPICAL_NOISE_DB,
  reflectors: [],
  propeller: null,
};

/** Two blades that beat with the signal: what one looks for who turns a propeller on. */
export const FIRST_PROPELLER: Propeller = { speedRpm: 1810, blades: 2 };

/** The scene after one action. The very same object when the action changes nothing or may not be done. */
export function actOnSignal(scene: Scene, action: SignalAction): Scene {
  if (action.kind === "set-signal") return withSignal(scene, action.signal);
  return scene.signal === null ? scene : withSignal(scene, changed(scene.signal, action));
}

function changed(
  signal: SignalConditions,
  action: Exclude<SignalAction, { kind: "set-signal" }>,
): SignalConditions {
  const { reflectors } = signal;
  switch (action.kind) {
    case "set-signal-kind":
      return { ...signal, kind: action.signalKind };
    case "set-noise":
      return { ...signal, noiseDb: action.noiseDb === null ? null : within(action.noiseDb, 1, NOISE_DB) };
    case "set-propeller":
      return { ...signal, propeller: action.propeller && propellerWithin(action.propeller) };
    case "add-reflector":
      return { ...signal, reflectors: [...reflectors, reflectorWithin(action.reflector)] };
    case "change-reflector": {
      const reflector = reflectorWithin(action.reflector);
      return {
        ...signal,
        reflectors: reflectors.map((one, index) => (index === action.index ? reflector : one)),
      };
    }
    case "remove-reflector":
      return { ...signal, reflectors: reflectors.filter((_, index) => index !== action.index) };
  }
}

function withSignal(scene: Scene, signal: SignalConditions | null): Scene {
  if (sameSignal(signal, scene.signal)) return scene;
  if (signal === null) return { ...scene, signal };
  const throwBack = new Set(stationsThatEcho(scene).map(({ ident }) => ident));
  const fits =
    signal.reflectors.length <= MOST_REFLECTORS &&
    signal.reflectors.every(({ ident }) => throwBack.has(ident));
  return fits ? { ...scene, signal } : scene;
}

/** Those with radials that an echo could bend: a test station sends the same all around. */
export const stationsThatEcho = ({ stations }: Scene): readonly Station[] =>
  stations.filter((station) => givesBearing(station) && station.kind !== "VOT");

const reflectorWithin = (reflector: Reflector): Reflector => ({
  ...reflector,
  amplitude: within(reflector.amplitude, 4, REFLECTOR_AMPLITUDE),
});

const propellerWithin = ({ speedRpm, blades }: Propeller): Propeller => ({
  speedRpm: within(speedRpm, 1, PROPELLER_SPEED_RPM),
  blades: within(blades, 0, PROPELLER_BLADES),
});

/** To as many decimals as a scene file is written with. */
const within = (value: number, decimals: number, { min, max }: NumberLimits): number =>
  Math.min(max, Math.max(min, Number(value.toFixed(decimals)))) + 0;
