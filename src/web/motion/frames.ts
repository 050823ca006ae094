/** Clocks that run frame by frame, or second by second where reduced motion is wished. The bench's own stops while the page is hidden. */

import { effect, type ReadonlySignal } from "@preact/signals";
import { reducedMotionWished } from "../panel/needle-motion.ts";
import type { Player } from "./player.ts";

/** A frame that came late (the machine was busy) brings the flight no further than this, seconds of ours. */
const LONGEST_FRAME_S = 0.25;

/** What goes by of the flight at one frame: seconds, and what is left over for the next. */
export function secondsToGo(given: {
  readonly frameS: number;
  readonly waitingS: number;
  readonly speed: number;
  readonly inWholeSeconds: boolean;
}): { readonly goS: number; readonly waitingS: number } {
  const { frameS, waitingS, speed, inWholeSeconds } = given;
  const passedS = waitingS + Math.min(Math.max(0, frameS), LONGEST_FRAME_S);
  if (!inWholeSeconds) return { goS: passedS * speed, waitingS: 0 };
  const wholeS = Math.floor(passedS);
  return { goS: wholeS * speed, waitingS: passedS - wholeS };
}

/** What time runs for, while it plays. */
export interface Running {
  readonly playing: ReadonlySignal<boolean>;
  /** Seconds that go by in one of ours. */
  readonly speed: () => number;
  readonly goOn: (stepS: number) => void;
}

/** Lets time run. Gives what stops that for good. */
export function everyFrame({ playing, speed, goOn }: Running): () => void {
  let frame = 0;
  let lastMs: number | null = null;
  let waitingS = 0;
  const run = (nowMs: number) => {
    frame = requestAnimationFrame(run);
    const frameS = lastMs === null ? 0 : (nowMs - lastMs) / 1000;
    lastMs = nowMs;
    const step = secondsToGo({ frameS, waitingS, speed: speed(), inWholeSeconds: reducedMotionWished() });
    waitingS = step.waitingS;
    goOn(step.goS);
  };
  const unwatch = effect(() => {
    cancelAnimationFrame(frame);
    if (!playing.value) return;
    lastMs = null;
    waitingS = 0;
    frame = requestAnimationFrame(run);
  });
  return () => {
    unwatch();
    cancelAnimationFrame(frame);
  };
}

/** Lets time run for the player while it plays, and halts it when the page is hidden. Gives what stops that for good. */
export function runFrames(player: Player): () => void {
  const { playing, goOn } = player;
  const end = everyFrame({ playing, speed: () => player.speed.value, goOn });
  const onVisibility = () => {
    if (document.hidden) player.pause();
  };
  document.addEventListener("visibilitychange", onVisibility);
  return () => {
    end();
    document.removeEventListener("visibilitychange", onVisibility);
  };
}
