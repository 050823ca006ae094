/** What a scene says of the signal itself: kind of station, noise, reflectors, propeller. Without it the computed radial is used. */

import type { LatLon } from "../earth/index.ts";
import type { SignalKind } from "../radio/index.ts";

/** Something that throws a station's signal back: a hangar, a ridge, a wind turbine. */
export interface Reflector {
  /** Whose signal it throws back. */
  readonly ident: string;
  readonly position: LatLon;
  /** Strength of what arrives by way of it beside what arrives directly, 0 to 0.9. */
  readonly amplitude: number;
}

export interface Propeller {
  readonly speedRpm: number;
  readonly blades: number;
}

export interface SignalConditions {
  /** Of every station in the scene. */
  readonly kind: SignalKind;
  /** Noise at the receiver over thermal noise, dB; null for none. */
  readonly noiseDb: number | null;
  readonly reflectors: readonly Reflector[];
  readonly propeller: Propeller | null;
}
