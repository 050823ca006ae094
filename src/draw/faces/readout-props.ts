/** What every readout takes. A readout is a group with its top left corner at (x, y). */

import type { ReceiverReading } from "../../panel/index.ts";
import type { Lit } from "../lit.ts";
import type { Theme } from "../theme.ts";

export interface ReadoutProps {
  readonly reading: ReceiverReading;
  readonly x: number;
  readonly y: number;
  readonly widthPx: number;
  /** 1 for 14 px text, 2 for a projector. */
  readonly scale: number;
  readonly theme: Theme;
  readonly covers?: readonly string[] | undefined;
  readonly lit?: Lit | undefined;
}
