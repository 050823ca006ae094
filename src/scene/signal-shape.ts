/** The shape of a scene's `signal:`: how its stations send, and what spoils it on the way. */

import * as z from "zod/mini";
import { SIGNAL_KINDS, TYPICAL_NOISE_DB } from "../radio/index.ts";
import { positionShape } from "./position-shape.ts";
import { NO_NOISE } from "./same-signal.ts";
import { choiceLeaf, noted, numberLeaf, type RecordShape, textLeaf } from "./shape.ts";
import {
  MOST_REFLECTORS,
  NOISE_DB,
  PROPELLER_BLADES,
  PROPELLER_SPEED_RPM,
  REFLECTOR_AMPLITUDE,
} from "./signal-limits.ts";

export const propellerLeaves = {
  speed: numberLeaf({
    ...PROPELLER_SPEED_RPM,
    description: "Turns a minute.",
    examples: [1810],
  }),
  blades: numberLeaf({
    ...PROPELLER_BLADES,
    whole: true,
    description: "How many blades.",
    examples: [2],
  }),
};

export const reflectorLeaves = {
  station: z.optional(
    textLeaf({
      max: 4,
      looksLike: ["number", "boolean"],
      right: "write the ident of a station of the scene, such as TXJ",
      description:
        "Ident of the station whose signal is thrown back. The nearest station with radials when absent.",
      examples: ["TXJ"],
    }),
  ),
  at: positionShape({
    right: "write where the reflector stands, such as at: TXJ 300/2",
    description:
      "Where the reflector stands: ident, radial and NM from a station of the scene (TXJ 300/2), or latitude and longitude.",
    examples: ["TXJ 300/2"],
  }),
  amplitude: numberLeaf({
    ...REFLECTOR_AMPLITUDE,
    description: "Strength of what arrives by way of it beside what arrives directly, 0 to 0.9.",
    examples: [0.1],
  }),
};

const NOISE_RIGHT = `${NOISE_DB.right}, or ${NO_NOISE}`;

export const noiseLeaf = numberLeaf({
  ...NOISE_DB,
  right: NOISE_RIGHT,
  description: "",
  examples: [TYPICAL_NOISE_DB],
});

const reflectorShape = noted(z.strictObject(reflectorLeaves), "", {
  id: "reflector",
  description: "Something that throws a station's signal back: a hangar, a ridge, a wind turbine.",
});

export const signalLeaves = {
  kind: z.optional(
    choiceLeaf(SIGNAL_KINDS, {
      right: "a station's kind of signal is conventional or doppler",
      description: "How the stations send: conventional or doppler. conventional when absent.",
    }),
  ),
  noise: z.optional(
    noted(z.union([noiseLeaf, z.literal(NO_NOISE)]), NOISE_RIGHT, {
      description: `Noise at the receiver, dB over thermal noise, 0 to 80; or none. ${TYPICAL_NOISE_DB} when absent.`,
      examples: [TYPICAL_NOISE_DB, NO_NOISE],
    }),
  ),
  reflectors: z.optional(
    noted(z.array(reflectorShape).check(z.maxLength(MOST_REFLECTORS)), "", {
      description: "What throws the signals back, at most eight.",
    }),
  ),
  propeller: z.optional(
    noted(z.strictObject(propellerLeaves), "", {
      description: "The aircraft's propeller, whose blades chop the signal.",
    }),
  ),
};

export const signalShape = noted(
  z.strictObject(signalLeaves),
  "write a key of it such as kind: conventional under signal:, or take the key out",
  {
    description:
      "The signal itself: panel and needle then show what a receiver measures of it. Without it they show the computed radial.",
  },
);

const IN_PROPELLER = "under propeller:";
const IN_REFLECTOR = "in a reflector, under reflectors:";

export const SIGNAL: RecordShape = {
  keys: signalLeaves,
  meant: {
    type: "kind",
    station: "kind",
    echoes: "reflectors",
    reflections: "reflectors",
    prop: "propeller",
  },
  elsewhere: {
    speed: IN_PROPELLER,
    rpm: IN_PROPELLER,
    blades: IN_PROPELLER,
    at: IN_REFLECTOR,
    amplitude: IN_REFLECTOR,
  },
};

export const REFLECTOR: RecordShape = {
  keys: reflectorLeaves,
  meant: { ident: "station", position: "at", strength: "amplitude", size: "amplitude" },
};

export const PROPELLER: RecordShape = {
  keys: propellerLeaves,
  meant: { rpm: "speed", turns: "speed" },
};
