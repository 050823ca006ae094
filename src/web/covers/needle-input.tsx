/** A paper needle on a scale: dragged, tapped into place, or moved by arrow keys half a dot at a time. */

import type { JSX } from "preact";
import type { Theme } from "../../draw/index.ts";
import { DOTS_EACH_SIDE } from "../../panel/index.ts";
import { arrowStep } from "../input/arrow-step.ts";
import { followPointer } from "../input/drag.ts";
import { dotsWords } from "./compare-guess.ts";
import { DOT_SPACING_PX, NeedleScale, SCALE_WIDTH_PX } from "./needle-scale.tsx";

export interface NeedleInputProps {
  /** "NAV1 needle". */
  readonly name: string;
  /** Half dots, right positive; null: no signal; undefined: not laid down yet. */
  readonly dots: number | null | undefined;
  readonly theme: Theme;
  readonly onLay: (dots: number | null) => void;
}

/** To the half dot that the eye reads. */
const halfDots = (dots: number): number =>
  Math.max(-DOTS_EACH_SIDE, Math.min(DOTS_EACH_SIDE, Math.round(dots * 2) / 2)) + 0;

export function NeedleInput({ name, dots, theme, onLay }: NeedleInputProps): JSX.Element {
  const now = dots ?? 0;
  const words = dots === undefined ? "not laid down yet" : dotsWords(dots);
  return (
    <div class="needle-input">
      <div
        class="needle-slider"
        role="slider"
        tabIndex={0}
        aria-label={`Your guess at ${name}`}
        aria-valuemin={-DOTS_EACH_SIDE}
        aria-valuemax={DOTS_EACH_SIDE}
        aria-valuenow={now}
        aria-valuetext={words}
        onPointerDown={(press) => {
          if (press.button !== 0 || !press.isPrimary) return;
          const box = press.currentTarget.getBoundingClientRect();
          const dotPx = (box.width / SCALE_WIDTH_PX) * DOT_SPACING_PX;
          const lay = (x: number) => onLay(halfDots((x - box.left - box.width / 2) / dotPx));
          press.currentTarget.focus();
          lay(press.clientX);
          followPointer(press, (hand) => lay(hand.x));
        }}
        onKeyDown={(event) => {
          const end = { Home: -DOTS_EACH_SIDE, End: DOTS_EACH_SIDE }[event.key];
          const by = arrowStep(event, 0.5, 1);
          if (end === undefined && by === null) return;
          event.preventDefault();
          onLay(end ?? halfDots(now + (by ?? 0)));
        }}
      >
        <NeedleScale guesses={typeof dots === "number" ? [dots] : []} truth={null} theme={theme} />
      </div>
      <p class="needle-words">
        <output>{words}</output>
        <button type="button" class="button" aria-pressed={dots === null} onClick={() => onLay(null)}>
          No signal
        </button>
      </p>
    </div>
  );
}
