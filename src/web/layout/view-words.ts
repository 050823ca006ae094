/** What the views are called. */

import type { View } from "../../scene/index.ts";

/** Above the sheet: what it says. */
export const VIEW_TITLES: Readonly<Record<View, string>> = {
  chart: "Chart",
  panel: "Panel",
  signal: "Signal",
  reasons: "Why it reads so",
};

/** On a tab, and inside a sentence. */
export const VIEW_NAMES: Readonly<Record<View, string>> = {
  chart: "Chart",
  panel: "Panel",
  signal: "Signal",
  reasons: "Reasons",
};
