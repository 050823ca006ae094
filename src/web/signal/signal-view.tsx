/** Why: the two waves as the attended receiver compares them, with its selected course, in step with chart and panel. */

import type { JSX } from "preact";
import { useRef } from "preact/hooks";
import { type Theme, TwoWaves } from "../../draw/index.ts";
import { isCovered, isReceiverCovered } from "../../scene/index.ts";
import { type ElementSize, useElementSize } from "../frame/element-size.ts";
import { CoveredNote } from "../panel/covered-note.tsx";
import type { Bench } from "../state/bench.ts";

export interface SignalViewProps {
  readonly bench: Bench;
  readonly theme: Theme;
  /** 1 on a screen, up to 2 when projecting. */
  readonly typeScale: number;
}

export function SignalView(props: SignalViewProps): JSX.Element {
  const holder = useRef<HTMLDivElement>(null);
  const size = useElementSize(holder);
  return (
    <section class="sheet signal" aria-label="Signal" tabIndex={-1}>
      <div class="signal-plot" ref={holder}>
        {size === null ? null : <Compared {...props} size={size} />}
      </div>
    </section>
  );
}

/** What the receiver compares, or why there is nothing to compare. */
function Compared({ bench, theme, typeScale, size }: SignalViewProps & { size: ElementSize }): JSX.Element {
  const { scene, receivers } = bench.situation.value;
  const name = bench.attended.value;
  const reading = receivers.find(({ settings }) => settings.name === name);
  if (isCovered(scene.covers, null, "signal")) return <CoveredNote what="signal" />;
  if (isReceiverCovered(scene.covers, name)) return <CoveredNote what={name} />;
  if (reading === undefined || reading.radial === null)
    return <p class="signal-none">{name} measures no bearing: there are no two waves to compare.</p>;
  return (
    <TwoWaves
      reading={reading}
      {...size}
      theme={theme}
      idPrefix="signal"
      typeScale={typeScale}
      covers={scene.covers}
    />
  );
}
