/** How loud the ident is. One volume for all receivers, since only one sounds at a time. */

import type { JSX } from "preact";
import type { Identify } from "./identify.ts";

export function IdentVolume({
  identify,
}: {
  readonly identify: Pick<Identify, "volumePercent">;
}): JSX.Element {
  const percent = identify.volumePercent.value;
  return (
    <label class="ident-volume">
      <span class="caption">volume</span>
      <input
        type="range"
        min="0"
        max="100"
        step="5"
        value={percent}
        aria-label="Ident volume"
        aria-valuetext={`${percent} percent`}
        onInput={(event) => {
          identify.volumePercent.value = event.currentTarget.valueAsNumber;
        }}
      />
    </label>
  );
}
