/** Time on the bench, with or without its controls in sight: the clock, the keys, and the chart that goes on with the aircraft. */

import { useEffect } from "preact/hooks";
import type { Bench } from "../state/bench.ts";
import { runFrames } from "./frames.ts";
import { keepInSight, type Sight } from "./keep-in-sight.ts";
import { useMotionKeys } from "./motion-keys.ts";
import type { Player } from "./player.ts";

export interface MotionUse {
  readonly bench: Bench;
  readonly player: Player;
  readonly sight: Sight;
}

export function useMotion({ bench, player, sight }: MotionUse): void {
  useEffect(() => runFrames(player), [player]);
  useEffect(() => keepInSight({ bench, player, sight }), [bench, player, sight]);
  useMotionKeys(player);
}
