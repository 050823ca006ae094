/** The argument as links of a chain: names of receivers, steps, and strips over the steps that say what is covered. */

import { type Reason, underCovers } from "../../reason/index.ts";

export type ChainItem =
  | { readonly kind: "receiver"; readonly receiver: string }
  | { readonly kind: "step"; readonly reason: Reason }
  /** The steps from one number to another are withheld. */
  | { readonly kind: "withheld"; readonly receiver: string; readonly from: number; readonly to: number };

/** Steps in order, each run of withheld ones as one link. Receivers are named when asked. */
export function chainOf(
  reasons: readonly Reason[],
  covers: readonly string[],
  namesReceivers: boolean,
): ChainItem[] {
  const items: ChainItem[] = [];
  let receiver: string | null = null;
  for (const step of underCovers(reasons, covers)) {
    const whose = step.kind === "spoken" ? step.reason.receiver : step.receiver;
    if (namesReceivers && whose !== receiver) items.push({ kind: "receiver", receiver: whose });
    receiver = whose;
    const last = items.at(-1);
    if (step.kind === "spoken") items.push({ kind: "step", reason: step.reason });
    else if (last?.kind === "withheld" && last.receiver === whose)
      items.splice(-1, 1, { ...last, to: step.number });
    else items.push({ kind: "withheld", receiver: whose, from: step.number, to: step.number });
  }
  return items;
}

/** "step 7", "steps 7 to 10". */
export const withheldSteps = (from: number, to: number): string =>
  from === to ? `step ${from}` : `steps ${from} to ${to}`;

/** The chain in words. */
export const chainText = (items: readonly ChainItem[]): string =>
  items
    .map((item) => {
      switch (item.kind) {
        case "receiver":
          return `${item.receiver}.`;
        case "step":
          return `${item.reason.number}. ${item.reason.title}: ${item.reason.sentence}`;
        case "withheld": {
          const steps = withheldSteps(item.from, item.to);
          return `${steps.charAt(0).toUpperCase()}${steps.slice(1)} covered.`;
        }
        default:
          return item satisfies never;
      }
    })
    .join(" ");

/** The steps that are not withheld. */
export const spokenSteps = (reasons: readonly Reason[], covers: readonly string[]): Reason[] =>
  underCovers(reasons, covers).flatMap((step) => (step.kind === "spoken" ? [step.reason] : []));
