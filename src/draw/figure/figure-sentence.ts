/** A figure in words: each of its views in turn, what is covered only named as covered. */

import type { Reason } from "../../reason/index.ts";
import { type Situation, TRAINING_CAUTION, type View } from "../../scene/index.ts";
import { chartDescription } from "../chart/index.ts";
import { panelSentence } from "../faces/index.ts";
import { chainOf, chainText } from "../reasons/index.ts";
import { waveReading, wavesSentence } from "./wave-reading.ts";

/** Everything that the figure's description says, in the order of the views. */
export function figureSentence(
  situation: Situation,
  reasons: readonly Reason[],
  {
    views,
    receiver,
    field,
  }: {
    readonly views: readonly View[];
    readonly receiver?: string | undefined;
    readonly field?: { readonly words: string } | null | undefined;
  },
): string {
  const { ask } = situation.scene;
  const sentences = views.map((view) => viewSentence(view, situation, reasons, receiver));
  return [
    ...(ask === "" ? [] : [ask]),
    ...sentences,
    ...(showsField(situation, views) && field ? [field.words] : []),
    TRAINING_CAUTION,
  ].join(" ");
}

/** Whether a field would be on the figure at all. */
export const showsField = ({ scene }: Situation, views: readonly View[]): boolean =>
  views.includes("chart") && !scene.covers.includes("chart");

function viewSentence(
  view: View,
  situation: Situation,
  reasons: readonly Reason[],
  receiver: string | undefined,
): string {
  const { covers } = situation.scene;
  if (covers.includes(view)) return `${view.charAt(0).toUpperCase()}${view.slice(1)} covered.`;
  switch (view) {
    case "chart":
      return `Chart: ${chartDescription(situation)}`;
    case "panel":
      return `Panel: ${panelSentence(situation)}`;
    case "signal":
      return `Signal: ${wavesSentence(waveReading(situation, receiver), covers)}`;
    case "reasons":
      return `Reasons: ${chainText(chainOf(reasons, covers, situation.receivers.length > 1))}`;
  }
}
