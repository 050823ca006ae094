/** A wheel on a control: its steps gathered, and told once a frame, however fast it reports. What is drawn between frames nobody sees. */

import { useEffect, useRef } from "preact/hooks";
import { onceAFrame } from "./drag.ts";
import { wheelSteps } from "./wheel.ts";

/** Each step is one of `stepBy`, with Shift of `bigStepBy`. `turn` gets their sum, up positive, and never 0. */
export function useWheel(
  { stepBy, bigStepBy }: { readonly stepBy: number; readonly bigStepBy: number },
  turn: (by: number) => void,
): (event: WheelEvent) => void {
  const newest = useRef<((by: number) => void) | null>(turn);
  newest.current = turn;
  useEffect(
    () => () => {
      newest.current = null;
    },
    [],
  );
  const gathered = useRef<{
    readonly steps: ReturnType<typeof wheelSteps>;
    readonly add: (by: number) => void;
  }>(null);
  gathered.current ??= { steps: wheelSteps(), add: summedEachFrame((by) => newest.current?.(by)) };
  const { steps, add } = gathered.current;
  return (event) => {
    event.preventDefault();
    add(steps(event) * (event.shiftKey ? bigStepBy : stepBy));
  };
}

/** Adds up what it is given and hands on the sum once a frame, unless it is 0. */
function summedEachFrame(job: (sum: number) => void): (by: number) => void {
  let sum = 0;
  const { offer } = onceAFrame<null>(() => {
    const due = sum;
    sum = 0;
    if (due !== 0) job(due);
  });
  return (by) => {
    sum += by;
    if (sum !== 0) offer(null);
  };
}
