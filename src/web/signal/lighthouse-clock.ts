/** The lighthouse's own time: it plays, stands, steps and is scrubbed. Second by second where reduced motion is wished. */

import { effect, type ReadonlySignal, type Signal, signal } from "@preact/signals";
import type { LighthouseTurnS } from "../../draw/index.ts";
import { secondsToGo } from "../motion/frames.ts";
import { reducedMotionWished } from "../panel/needle-motion.ts";

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
  const unwatch = effect(() => {
    if (!playing.value) return;
    let lastMs: number | null = null;
    let waitingS = 0;
    let frame = requestAnimationFrame(function onFrame(nowMs) {
      const frameS = lastMs === null ? 0 : (nowMs - lastMs) / 1000;
      lastMs = nowMs;
      const gone = secondsToGo({ frameS, waitingS, speed: 1, inWholeSeconds: reducedMotionWished() });
      waitingS = gone.waitingS;
      if (gone.goS > 0) put(atS.peek() + gone.goS);
      frame = requestAnimationFrame(onFrame);
    });
    return () => cancelAnimationFrame(frame);
  });
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
    close: unwatch,
  };
}
