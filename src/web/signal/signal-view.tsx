/** Why: the two waves as the attended receiver compares them, in step with chart and panel. */

import type { JSX } from "preact";
import { useRef } from "preact/hooks";
import { type Theme, TwoWaves, waveReading } from "../../draw/index.ts";
import { isCovered } from "../../scene/index.ts";
import { useElementSize } from "../frame/element-size.ts";
import { CoveredNote } from "../panel/covered-note.tsx";
import type { Bench } from "../state/bench.ts";

export interface SignalViewProps {
  readonly bench: Bench;
  readonly theme: Theme;
  /** 1 on a screen, up to 2 when projecting. */
  readonly typeScale: number;
}

export function SignalView({ bench, theme, typeScale }: SignalViewProps): JSX.Element {
  const holder = useRef<HTMLDivElement>(null);
  const size = useElementSize(holder);
  const situation = bench.situation.value;
  const { covers } = situation.scene;
  return (
    <section class="sheet signal" aria-label="Signal" tabIndex={-1}>
      <div class="signal-plot" ref={holder}>
        {isCovered(covers, null, "signal") ? (
          <CoveredNote what="signal" />
        ) : size === null ? null : (
          <TwoWaves
            reading={waveReading(situation, bench.attended.value)}
            {...size}
            theme={theme}
            idPrefix="signal"
            typeScale={typeScale}
            covers={covers}
          />
        )}
      </div>
    </section>
  );
}
