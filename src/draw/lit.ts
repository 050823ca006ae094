/** What is lit at the moment: parts of chart and panel that a step of the argument speaks of. */

import type { Part } from "../reason/index.ts";

export interface Lit {
  /** Name of the receiver the parts belong to. */
  readonly receiver: string;
  readonly parts: readonly Part[];
}
