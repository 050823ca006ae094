/** A strip in place of a line of a readout. */

import { PaperStrip } from "../plain/paper-strip.tsx";
import { lineWidthPx } from "../plain/text-line.tsx";
import type { Theme } from "../theme.ts";
import { COVERED_AS, type CoverablePart } from "./covers.ts";

export interface CoveredLineProps {
  readonly part: CoverablePart;
  readonly x: number;
  /** Middle of the line. */
  readonly middleY: number;
  readonly heightPx: number;
  /** Room for the strip; it takes no more than its words need. */
  readonly roomPx: number;
  readonly theme: Theme;
}

export function CoveredLine({ part, x, middleY, heightPx, roomPx, theme }: CoveredLineProps) {
  const words = `covered: ${COVERED_AS[part]}`;
  const widthPx = Math.min(roomPx, lineWidthPx(words, Math.max(12, heightPx * 0.5), "words") * 1.15);
  return (
    <PaperStrip
      middleX={x + widthPx / 2}
      middleY={middleY}
      widthPx={widthPx}
      heightPx={heightPx}
      covered={COVERED_AS[part]}
      theme={theme}
    />
  );
}
