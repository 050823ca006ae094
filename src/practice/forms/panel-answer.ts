/** A panel as an answer: the flag, and where the needle stands. */

import { type Flag, FULL_SCALE_DEG, type ReceiverReading } from "../../panel/index.ts";
import type { Answer, Needle } from "../answer.ts";

/** Nearer the middle than this is centred, degrees; no problem leaves a needle near here. */
const CENTRED_BELOW_DEG = 1;
/** What is neither plainly on the scale nor plainly beyond it, degrees either side of full scale. */
const NEAR_FULL_DEG = 0.6;

export type PanelAnswer = Extract<Answer, { kind: "panel" }>;

/** Where a needle stands. Degrees, right positive. */
export function needleOf(needleDeg: number): Needle {
  const size = Math.abs(needleDeg);
  if (size < CENTRED_BELOW_DEG) return "centred";
  const part = size < FULL_SCALE_DEG;
  if (needleDeg > 0) return part ? "part right" : "full right";
  return part ? "part left" : "full left";
}

/** Whether a needle is neither nearly centred nor nearly full. */
export const standsPlainly = (needleDeg: number): boolean => {
  const size = Math.abs(needleDeg);
  return (size < 0.3 || size >= 1.7) && Math.abs(size - FULL_SCALE_DEG) >= NEAR_FULL_DEG;
};

export const panelAnswer = (flag: Flag, needleDeg: number): PanelAnswer => ({
  kind: "panel",
  flag,
  needle: needleOf(needleDeg),
});

/** What a receiver shows; null without a bearing. */
export function panelRead({
  flag,
  needleSide,
  fullScale,
  deviationDeg,
}: ReceiverReading): PanelAnswer | null {
  if (needleSide === null || deviationDeg === null) return null;
  if (needleSide === "centre") return { kind: "panel", flag, needle: "centred" };
  return { kind: "panel", flag, needle: `${fullScale ? "full" : "part"} ${needleSide}` };
}

const MIRRORED: Readonly<Record<Needle, Needle>> = {
  "full left": "full right",
  "part left": "part right",
  centred: "part left",
  "part right": "part left",
  "full right": "full left",
};

/** Panels to offer beside the true one: the other flag, the other hand, both. */
export function otherPanels({ flag, needle }: PanelAnswer): readonly PanelAnswer[] {
  const otherFlag: Flag = flag === "TO" ? "FROM" : "TO";
  const mirrored = MIRRORED[needle];
  return [
    { kind: "panel", flag: otherFlag, needle: mirrored },
    { kind: "panel", flag, needle: mirrored },
    { kind: "panel", flag: otherFlag, needle },
  ];
}

/** The needle as a ghost draws it, in the middle of what the answer says, degrees. */
export const drawnNeedleDeg = (needle: Needle): number => {
  switch (needle) {
    case "centred":
      return 0;
    case "part left":
      return -FULL_SCALE_DEG / 2;
    case "part right":
      return FULL_SCALE_DEG / 2;
    case "full left":
      return -FULL_SCALE_DEG;
    case "full right":
      return FULL_SCALE_DEG;
  }
};
