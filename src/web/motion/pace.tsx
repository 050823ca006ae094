/** How time goes: on by one step, or that many times as fast as ours. */

import type { JSX } from "preact";
import { type Player, SPEEDS } from "./player.ts";

export function Pace({ player }: { readonly player: Player }): JSX.Element {
  return (
    <div class="motion-pace">
      <div class="motion-steps">
        {([1, 10] as const).map((stepS) => (
          <button
            key={stepS}
            type="button"
            class="button"
            aria-label={`Step on by ${stepS} s`}
            title={stepS === 1 ? "Period, back with comma" : "Shift and period, back with Shift and comma"}
            onClick={() => player.stepBy(stepS)}
          >
            {stepS} s
          </button>
        ))}
      </div>
      <label class="pick">
        <span class="unseen">Speed</span>
        <select
          value={player.speed.value}
          onChange={(event) => {
            const wanted = Number(event.currentTarget.value);
            player.setSpeed(SPEEDS.find((speed) => speed === wanted) ?? 1);
          }}
        >
          {SPEEDS.map((speed) => (
            <option key={speed} value={speed}>
              {speed}×
            </option>
          ))}
        </select>
      </label>
    </div>
  );
}
