/**
 * The layout of what does not move with the aircraft, held while something is being moved: roses, boxes and names keep their places
 * under the hand, and find better ones once it has let go.
 */

import { useEffect, useMemo, useRef, useState } from "preact/hooks";
import { type ChartFrame, type GroundLayout, layOutGround } from "../../draw/index.ts";
import type { Situation } from "../../scene/index.ts";
import { handsOnBench } from "../input/drag.ts";

/** Wheel and keys come in runs: this long after the last step a hand counts as gone, ms. */
const SETTLED_AFTER_MS = 450;

/** `receiver` names the one whose lines are drawn in full. */
export function useHeldGround(frame: ChartFrame, situation: Situation, receiver: string): GroundLayout {
  const newest = useRef(situation);
  newest.current = situation;
  const [settled, setSettled] = useState(situation);
  const held = handsOnBench.value > 0;
  useEffect(() => {
    if (held || settled === situation) return;
    const timer = setTimeout(() => setSettled(newest.current), SETTLED_AFTER_MS);
    return () => clearTimeout(timer);
  }, [held, settled, situation]);
  // Another sheet, other stations on it or other words about them cannot wait.
  const { stations, land, covers, wind } = situation.scene;
  const tuned = situation.receivers.map(({ settings }) => settings.frequencyMhz).join(" ");
  return useMemo(() => {
    const layout = layOutGround(frame, newest.current, receiver);
    return layout;
  }, [frame, settled, stations, land, covers, wind, tuned, receiver]);
}
