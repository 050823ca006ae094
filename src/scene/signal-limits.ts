/** How far the numbers of a scene's signal go, and what a person is told who goes farther: in a file, and wherever else they are typed. */

export interface NumberLimits {
  readonly min: number;
  readonly max: number;
  /** What would be right: lower-case start, no full stop. */
  readonly right: string;
}

/** Turns a minute. */
export const PROPELLER_SPEED_RPM: NumberLimits = {
  min: 300,
  max: 3000,
  right: "a propeller's speed is 300 to 3000 turns a minute, such as 1810",
};

/** Whole. */
export const PROPELLER_BLADES: NumberLimits = {
  min: 2,
  max: 6,
  right: "a propeller has 2 to 6 blades, such as 2",
};

/** Of what arrives by way of a reflector, beside what arrives directly. */
export const REFLECTOR_AMPLITUDE: NumberLimits = {
  min: 0,
  max: 0.9,
  right: "an amplitude is 0 to 0.9 of the direct signal, such as 0.1",
};

/** Over thermal noise. */
export const NOISE_DB: NumberLimits = {
  min: 0,
  max: 80,
  right: "noise is 0 to 80 dB over thermal noise, such as 25",
};

export const MOST_REFLECTORS = 8;
