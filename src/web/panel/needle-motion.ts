/** Moves a needle toward its reading as a real one does: damped, frame by frame. At once where reduced motion is wished. */

import { useEffect, useRef, useState } from "preact/hooks";
import { stepNeedle } from "../../panel/index.ts";

/** Nearer than this the needle has arrived, dots: a fiftieth of a dot is under a pixel on the largest face. */
const ARRIVED_WITHIN_DOTS = 0.02;
/** A frame that came late (a hidden page) moves the needle no further than this, seconds. */
const LONGEST_STEP_S = 0.25;

export const reducedMotionWished = (): boolean => matchMedia("(prefers-reduced-motion: reduce)").matches;

/**
 * Where the needle stands now, dots, right positive. `targetDots` is the reading; null, no signal, lets go of the needle at once.
 */
export function useNeedle(targetDots: number | null): number | null {
  const shown = useRef<number | null>(targetDots);
  const [, showAgain] = useState(0);
  useEffect(() => {
    if (targetDots === null || shown.current === null || reducedMotionWished()) {
      shown.current = targetDots;
      showAgain((count) => count + 1);
      return;
    }
    let frame = 0;
    let lastMs: number | null = null;
    const move = (nowMs: number) => {
      const stepS = lastMs === null ? 0 : Math.min((nowMs - lastMs) / 1000, LONGEST_STEP_S);
      lastMs = nowMs;
      const next = stepNeedle(shown.current ?? targetDots, targetDots, stepS);
      const arrived = Math.abs(next - targetDots) < ARRIVED_WITHIN_DOTS;
      shown.current = arrived ? targetDots : next;
      showAgain((count) => count + 1);
      if (!arrived) frame = requestAnimationFrame(move);
    };
    frame = requestAnimationFrame(move);
    return () => cancelAnimationFrame(frame);
  }, [targetDots]);
  return targetDots === null ? null : shown.current;
}
