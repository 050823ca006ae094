/** The whole argument: for each receiver the steps that its scene needs, in the order an instructor asks them. */

import type { Situation } from "../scene/index.ts";
import { fly } from "./fly.ts";
import { headingAgrees } from "./heading-agrees.ts";
import { deviation, distance, line, toOrFrom } from "./line.ts";
import { measured } from "./measured.ts";
import { norths, radial } from "./radial.ts";
import type { Reason } from "./reason.ts";
import { publishedVolume, received } from "./received.ts";
import { slantRange } from "./slant-range.ts";
import type { Rule } from "./step.ts";
import { identified, tuned } from "./tuned.ts";

const RULES: readonly Rule[] = [
  tuned,
  identified,
  received,
  publishedVolume,
  radial,
  measured,
  norths,
  line,
  toOrFrom,
  deviation,
  distance,
  slantRange,
  headingAgrees,
  fly,
];

/** The steps for every receiver, in panel order, numbered from 1 for each. */
export const reasonsFor = (situation: Situation): Reason[] =>
  situation.receivers.flatMap((reading) => {
    const steps = RULES.map((rule) => rule({ situation, reading })).filter((step) => step !== null);
    return steps.map((step, index) => ({ ...step, receiver: reading.settings.name, number: index + 1 }));
  });
