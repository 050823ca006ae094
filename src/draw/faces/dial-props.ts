/** What every dial takes. A dial is a group around (0, 0), so that a face, a panel or a slide can put it where it wants. */

import type { ReceiverReading } from "../../panel/index.ts";
import type { Lit } from "../lit.ts";
import type { Theme } from "../theme.ts";

export interface DialProps {
  readonly reading: ReceiverReading;
  readonly sizePx: number;
  readonly theme: Theme;
  /** Begins every id in the picture, so that pictures can stand side by side in one document. */
  readonly idPrefix: string;
  /** The scene's covers. */
  readonly covers?: readonly string[] | undefined;
  readonly lit?: Lit | undefined;
  /** Where a damped needle has got to, dots, right positive; the reading's own when not given. */
  readonly shownDots?: number | undefined;
}
