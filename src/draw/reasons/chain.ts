/**
 * The argument as links of a chain: names of receivers, steps, and strips over the steps that say what is covered. How many steps a strip
 * hides is an answer too (a dead needle has fewer than a live one), so that while anything is withheld the steps are counted as they are
 * shown.
 */

import { type Reason, underCovers } from "../../reason/index.ts";

/** Which of a receiver's steps a strip hides: all, those to the end, or some before others. */
export type WithheldExtent = "all" | "rest" | "some";

export type ChainItem =
  | { readonly kind: "receiver"; readonly receiver: string }
  | {
      readonly kind: "step";
      readonly reason: Reason;
      /** Counted from 1 for each receiver, among the steps that are shown. */
      readonly shownNumber: number;
    }
  | { readonly kind: "withheld"; readonly receiver: string; readonly extent: WithheldExtent };

/** Steps in order, each run of withheld ones as one link. Receivers are named when asked. */
export function chainOf(
  reasons: readonly Reason[],
  covers: readonly string[],
  namesReceivers: boolean,
): ChainItem[] {
  const receivers = [...new Set(reasons.map(({ receiver }) => receiver))];
  return receivers.flatMap((receiver) => {
    const links = linksOf(
      receiver,
      reasons.filter((reason) => reason.receiver === receiver),
      covers,
    );
    return namesReceivers ? [{ kind: "receiver", receiver } as const, ...links] : links;
  });
}

function linksOf(receiver: string, reasons: readonly Reason[], covers: readonly string[]): ChainItem[] {
  const items: ChainItem[] = [];
  let shownNumber = 0;
  for (const step of underCovers(reasons, covers)) {
    if (step.kind === "spoken") {
      shownNumber += 1;
      items.push({ kind: "step", reason: step.reason, shownNumber });
    } else if (items.at(-1)?.kind !== "withheld") items.push({ kind: "withheld", receiver, extent: "some" });
  }
  if (items.at(-1)?.kind === "withheld")
    items.splice(-1, 1, { kind: "withheld", receiver, extent: shownNumber === 0 ? "all" : "rest" });
  return items;
}

const EXTENTS: Readonly<Record<WithheldExtent, string>> = {
  all: "all steps",
  rest: "the rest",
  some: "some steps",
};

/** What a strip in the chain says is covered. */
export const withheldWords = (extent: WithheldExtent): string => EXTENTS[extent];

/** The chain in words. */
export const chainText = (items: readonly ChainItem[]): string =>
  items
    .map((item) => {
      switch (item.kind) {
        case "receiver":
          return `${item.receiver}.`;
        case "step":
          return `${item.shownNumber}. ${item.reason.title}: ${item.reason.sentence}`;
        case "withheld":
          return `Covered: ${withheldWords(item.extent)}.`;
        default:
          return item satisfies never;
      }
    })
    .join(" ");

/** The steps that are not withheld. */
export const spokenSteps = (reasons: readonly Reason[], covers: readonly string[]): Reason[] =>
  underCovers(reasons, covers).flatMap((step) => (step.kind === "spoken" ? [step.reason] : []));
