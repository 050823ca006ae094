/**
 * How a VOR's carrier is modulated: the published figures and their tolerances.
 * Source: ICAO Annex 10 Vol I, 3.3.5 (tones, sub-carrier, deviation ratio); the depths 0.28 to 0.32 and the ident's are from memory of it.
 */

/** Both the reference and the variable signal, hertz; the beam of a conventional station turns as often in a second. */
export const TONE_HZ = 30;
/** The sub-carrier, hertz. */
export const SUBCARRIER_HZ = 9960;
/** Either may be off by one part in a hundred. */
export const TONE_TOLERANCE = 0.01;
/** Swing of the sub-carrier's frequency over the tone's. */
export const DEVIATION_RATIO = 16;
export const DEVIATION_RATIO_TOLERANCE = 1;
/** Depth of the carrier's modulation by the 30 Hz, and by the sub-carrier. */
export const MODULATION_DEPTH = 0.3;
export const MODULATION_DEPTH_TOLERANCE = 0.02;
/** Depth of the ident where voice may share the carrier: at most a tenth. */
export const IDENT_DEPTH = 0.1;

/** How far the sub-carrier swings to either side, hertz: ratio times tone. 480 Hz nominal. */
export const frequencyDeviationHz = (deviationRatio: number, toneHz: number): number =>
  deviationRatio * toneHz;

/** What a station radiates and how. All plain numbers, ready to be computed with. */
export interface VorModulation {
  readonly kind: SignalKind;
  readonly toneHz: number;
  readonly subcarrierHz: number;
  readonly deviationRatio: number;
  readonly toneDepth: number;
  readonly subcarrierDepth: number;
  readonly identDepth: number;
  readonly identHz: number;
  readonly ident: IdentModulation;
}

/**
 * Conventional: the 30 Hz variable is the AM of a turning pattern, the reference the FM of the sub-carrier. Doppler: the AM is the
 * reference and the FM, made by a ring of antennas switched round the other way, the variable.
 */
export const SIGNAL_KINDS = ["conventional", "doppler"] as const;
export type SignalKind = (typeof SIGNAL_KINDS)[number];

/** What is keyed on the ident tone. A VOT sends a row of dots or a steady tone (FAA AIM 1-1-4). */
export type IdentModulation =
  /** `shared`: the DME beside it takes every fourth turn, in which the VOR is silent. */
  | { readonly kind: "code"; readonly text: string; readonly shared: boolean }
  | { readonly kind: "dots" }
  | { readonly kind: "steady" }
  | { readonly kind: "none" };

/** A station as the standard describes it, with no ident. */
export const STANDARD_MODULATION: VorModulation = {
  kind: "conventional",
  toneHz: TONE_HZ,
  subcarrierHz: SUBCARRIER_HZ,
  deviationRatio: DEVIATION_RATIO,
  toneDepth: MODULATION_DEPTH,
  subcarrierDepth: MODULATION_DEPTH,
  identDepth: IDENT_DEPTH,
  identHz: 1020,
  ident: { kind: "none" },
};
