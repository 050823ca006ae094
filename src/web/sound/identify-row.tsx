/** A receiver's ident: the button, and while it is pressed its volume and the keying. Stops when it leaves the page. */

import { useComputed } from "@preact/signals";
import type { JSX } from "preact";
import { useEffect } from "preact/hooks";
import type { Theme } from "../../draw/index.ts";
import type { ReceiverReading } from "../../panel/index.ts";
import type { Bench } from "../state/bench.ts";
import { IdentKeying } from "./ident-keying.tsx";
import { IdentVolume } from "./ident-volume.tsx";
import type { Identify } from "./identify.ts";
import { IdentifyButton } from "./identify-button.tsx";

export interface IdentifyRowProps {
  readonly bench: Bench;
  readonly identify: Identify;
  readonly reading: ReceiverReading;
  readonly theme: Theme;
  /** Lit by a step of the argument that speaks of the ident. */
  readonly lit: boolean;
}

export function IdentifyRow({ bench, identify, reading, theme, lit }: IdentifyRowProps): JSX.Element {
  const { name } = reading.settings;
  const covers = useComputed(() => bench.scene.value.covers).value;
  useEffect(
    () => () => {
      if (identify.playing.peek() === name) identify.stop();
    },
    [identify, name],
  );
  return (
    <div class="identify" data-lit={lit}>
      <div class="identify-line">
        <IdentifyButton bench={bench} identify={identify} receiver={name} />
        {identify.playing.value === name ? <IdentVolume identify={identify} /> : null}
      </div>
      <IdentKeying identify={identify} reading={reading} covers={covers} theme={theme} />
    </div>
  );
}
