/** Five dots a side with a paper needle for each guess, in open outline and numbered where there are several, and the true needle when it may be seen. A picture alone. */

import type { JSX } from "preact";
import type { Theme } from "../../draw/index.ts";
import { DOTS_EACH_SIDE } from "../../panel/index.ts";

export interface NeedleScaleProps {
  /** Dots, right positive. */
  readonly guesses: readonly number[];
  /** Dots, right positive; null: not to be seen, or no signal. */
  readonly truth: number | null;
  readonly theme: Theme;
}

export const SCALE_WIDTH_PX = 252;
const HEIGHT_PX = 66;
export const DOT_SPACING_PX = 21;
const MIDDLE_Y = 28;
const NEEDLE_HALF_PX = 24;

const DOTS = Array.from({ length: 2 * DOTS_EACH_SIDE + 1 }, (_, index) => index - DOTS_EACH_SIDE);

export function NeedleScale({ guesses, truth, theme }: NeedleScaleProps): JSX.Element {
  return (
    <svg
      class="needle-scale"
      viewBox={`${-SCALE_WIDTH_PX / 2} 0 ${SCALE_WIDTH_PX} ${HEIGHT_PX}`}
      width={SCALE_WIDTH_PX}
      height={HEIGHT_PX}
      aria-hidden="true"
    >
      {DOTS.map((dot) => (
        <circle
          key={dot}
          cx={dot * DOT_SPACING_PX}
          cy={MIDDLE_Y}
          r={dot === 0 ? 4.5 : 2.4}
          fill={dot === 0 ? theme.paper : theme.ink}
          stroke={theme.ink}
          stroke-width={dot === 0 ? 1.3 : 0}
        />
      ))}
      {truth === null ? null : (
        <line
          x1={truth * DOT_SPACING_PX}
          x2={truth * DOT_SPACING_PX}
          y1={MIDDLE_Y - NEEDLE_HALF_PX}
          y2={MIDDLE_Y + NEEDLE_HALF_PX}
          stroke={theme.course}
          stroke-width="3"
          stroke-linecap="round"
        />
      )}
      {guesses.map((dots, index) => (
        <rect
          key={`${index} ${dots}`}
          x={dots * DOT_SPACING_PX - 4}
          y={MIDDLE_Y - NEEDLE_HALF_PX}
          width={8}
          height={2 * NEEDLE_HALF_PX}
          rx={2}
          fill="none"
          stroke={theme.ink}
          stroke-width="1.7"
        />
      ))}
      {guesses.length < 2
        ? null
        : guesses.map((dots, index) => (
            <text
              key={`number ${index} ${dots}`}
              x={dots * DOT_SPACING_PX}
              y={HEIGHT_PX - 2}
              fill={theme.ink}
              font-size="12"
              text-anchor="middle"
            >
              {index + 1}
            </text>
          ))}
      <text x={-SCALE_WIDTH_PX / 2} y={HEIGHT_PX - 2} fill={theme.soft} font-size="12">
        left
      </text>
      <text x={SCALE_WIDTH_PX / 2} y={HEIGHT_PX - 2} fill={theme.soft} font-size="12" text-anchor="end">
        right
      </text>
    </svg>
  );
}
