/**
 * What the pilot sees: one receiver's readings, as plain data. Everything the faces draw and the reasons argue from.
 */

import type { MagneticDeg, StationDeg, TrueDeg } from "../earth/index.ts";
import type { FlagCause, Station } from "../radio/index.ts";
import type { MeasuredSignal } from "./measured-signal.ts";

export const FACES = ["cdi", "hsi", "rmi"] as const;
/** Fixed-card course indicator, horizontal situation indicator, radio magnetic indicator. */
export type Face = (typeof FACES)[number];

export interface ReceiverSettings {
  readonly name: string;
  /** Tuned VHF frequency, MHz. */
  readonly frequencyMhz: number;
  readonly course: StationDeg;
  readonly face: Face;
  /** What this receiver adds to every bearing it measures, degrees; for receiver-check lessons. */
  readonly bearingErrorDeg: number;
}

/** How the bearing signal on the tuned channel arrives. */
export type Signal =
  | { readonly kind: "none"; readonly why: NoSignal }
  | { readonly kind: "overhead"; readonly station: Station }
  | { readonly kind: "two-at-once"; readonly stations: readonly [Station, Station] }
  | { readonly kind: "weak"; readonly station: Station }
  | { readonly kind: "good"; readonly station: Station };

/** Why no bearing arrives. `station` is the one tuned, where there is one. */
export type NoSignal =
  | { readonly kind: "no-station" }
  | { readonly kind: "localizer-channel" }
  | { readonly kind: "distance-only"; readonly station: Station }
  | { readonly kind: "silent"; readonly station: Station }
  | { readonly kind: "below-horizon"; readonly station: Station }
  | {
      readonly kind: "terrain";
      readonly station: Station;
      readonly peakName: string;
      readonly leastAltitudeFt: number;
    }
  | { readonly kind: "too-weak"; readonly station: Station }
  /** It arrives, and the receiver's own monitors find fault with it. */
  | { readonly kind: "flagged"; readonly station: Station; readonly cause: FlagCause };

/** What the pilot hears when listening for the ident. */
export type IdentHeard =
  | { readonly kind: "ident"; readonly text: string }
  | { readonly kind: "test" }
  /** A VOT's own sound: a row of dots or a steady tone, without letters (AIM 1-1-4). */
  | { readonly kind: "test-signal" }
  | { readonly kind: "none" }
  /** VOR ident off, the DME's 1350 Hz ident alone heard about every 30 s (or the station gives distance only). */
  | { readonly kind: "dme-only"; readonly text: string }
  | { readonly kind: "mixed"; readonly texts: readonly [string, string] };

export type Flag = "TO" | "FROM" | "OFF";
export type NeedleSide = "left" | "right" | "centre";

/** The deviation indicator: needle and flag. */
export interface Deviation {
  /** Degrees, positive when the needle (and so the line) is to the right; in [-90, 90]. Null without a signal. */
  readonly deviationDeg: number | null;
  /** 0 to 5, five dots being full scale. Null without a signal. */
  readonly needleDots: number | null;
  readonly needleSide: NeedleSide | null;
  readonly fullScale: boolean;
  readonly flag: Flag;
}

export interface DmeReading {
  /** Slant range, NM. */
  readonly distanceNm: number;
  /** Rate of change of slant range, shown as a speed without sign, kt. */
  readonly groundspeedKt: number;
  /** Signed: positive while closing. */
  readonly closingKt: number;
  /** Minutes to the station at that rate; null when not closing or too slow to say. */
  readonly minutesToStation: number | null;
}

/** Where the receiver's station is in truth, as the engine knows it. */
export interface StationGeometry {
  readonly azimuthFromStation: TrueDeg;
  readonly distanceNm: number;
  /** Aircraft above the antenna, feet. */
  readonly heightAboveFt: number;
  readonly slantNm: number;
  /** Angle of the aircraft above the station's horizon, degrees. */
  readonly elevationAngleDeg: number;
  /** Great-circle line of sight at this height, NM. */
  readonly lineOfSightNm: number;
  readonly fieldMicrovoltPerM: number;
  readonly serviceVolume: "inside" | "outside" | "unknown";
  /** Radius of the published service volume at this height, NM; 0 below its floor or above its top; null when unknown. */
  readonly serviceRadiusNm: number | null;
  /** Radial without the receiver's own error. */
  readonly trueRadial: StationDeg;
}

export interface ReceiverReading extends Deviation {
  readonly settings: ReceiverSettings;
  readonly signal: Signal;
  readonly ident: IdentHeard;
  /** The station tuned, received or not; the nearest when two share the channel; null when there is none. */
  readonly station: Station | null;
  readonly geometry: StationGeometry | null;
  /** What the receiver made of the samples, where the scene has a signal of its own; null where the computed radial is used. */
  readonly measured: MeasuredSignal | null;
  /** As the receiver measures it, error included; null where no bearing is measured (none, overhead, two at once). */
  readonly radial: StationDeg | null;
  readonly bearingTo: StationDeg | null;
  /** Null where the station has no DME, it is not received or it is silent. */
  readonly dme: DmeReading | null;
  /** The heading lies more than 90 degrees from the selected course while a flag shows. */
  readonly reversed: boolean;
  /** RMI: the pointer's head on the card, relative to the nose, degrees clockwise in [0, 360); null without a bearing. */
  readonly rmiPointerRelativeDeg: number | null;
  /** Angle clockwise from the heading to the selected course, (-180, 180]; the HSI's pointer. */
  readonly courseRelativeDeg: number;
  readonly heading: MagneticDeg;
}
