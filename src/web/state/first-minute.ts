/** The three things a newcomer tries first. Each is ticked when done, and remembered; when all are done they go away. */

import { computed, type ReadonlySignal } from "@preact/signals";
import { remembered } from "./preferences.ts";

export const FIRST_STEPS = ["drag", "turn", "why"] as const;
export type FirstStep = (typeof FIRST_STEPS)[number];

export interface FirstMinute {
  readonly done: ReadonlySignal<ReadonlySet<FirstStep>>;
  readonly over: ReadonlySignal<boolean>;
  readonly tick: (step: FirstStep) => void;
  /** Puts all three away. */
  readonly skip: () => void;
}

export function createFirstMinute(): FirstMinute {
  const done = remembered<ReadonlySet<FirstStep>>(
    "first-minute",
    new Set(),
    (text) => new Set(FIRST_STEPS.filter((step) => text.split(" ").includes(step))),
    (steps) => [...steps].join(" "),
  );
  return {
    done,
    over: computed(() => done.value.size === FIRST_STEPS.length),
    tick: (step) => {
      if (!done.value.has(step)) done.value = new Set([...done.value, step]);
    },
    skip: () => {
      done.value = new Set(FIRST_STEPS);
    },
  };
}
