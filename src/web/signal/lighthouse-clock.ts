/** The lighthouse's own time: it plays, stands, steps and is scrubbed. Second by second where reduced motion is wished. */

import { type ReadonlySignal, type Signal, signal } from "@preact/signals";
import type { LighthouseTurnS } from "../../draw/index.ts";
import { everyFrame } from "../motion/frames.ts";

export interface LighthouseClock {
  readonly turnS: Signal<LighthouseTurnS>;
  /** Since the last flash, seconds, in [0, turn). */
  readonly atS: ReadonlySignal<number>;
  readonly playing: Signal<boolean>;
  /** A twelfth of a turn on, or back with -1; it stands then. */
  readonly step: (way: 1 | -1) => void;
  readonly scrub: (atS: number) => void;
  readonly chooseTurn: (turnS: LighthouseTurnS) => void;
  /** Ends for good. */
  readonly close: () => void;
}

const STEPS_IN_A_TURN = 12;
/** So that twelve steps of a twelfth come back to nothing. */
const tidy = (seconds: number): number => Math.round(seconds * 1e6) / 1e6;

export function createLighthouseClock(): LighthouseClock {
  const turnS = signal<LighthouseTurnS>(12);
  const atS = signal(0);
  const playing = signal(false);
  const put = (seconds: number): void => {
    const turn = turnS.peek();
    atS.value = tidy(((tidy(seconds) % turn) + turn) % turn) % turn;
  };
  const close = everyFrame({ playing, speed: () => 1, goOn: (stepS) => put(atS.peek() + stepS) });
  return {
    turnS,
    atS,
    playing,
    step: (way) => {
      playing.value = false;
      put(atS.peek() + (way * turnS.peek()) / STEPS_IN_A_TURN);
    },
    scrub: (seconds) => {
      playing.value = false;
      put(seconds);
    },
    chooseTurn: (turn) => {
      // The beam stays where it is.
      const part = atS.peek() / turnS.peek();
      turnS.value = turn;
      put(part * turn);
    },
    close,
  };
}
