/** What the pilot sees: every receiver, and the aircraft's own instruments below. */

import type { JSX } from "preact";
import { useEffect, useMemo } from "preact/hooks";
import type { Theme } from "../../draw/index.ts";
import { createIdentify } from "../sound/identify.ts";
import type { Bench } from "../state/bench.ts";
import { AircraftControls } from "./aircraft-controls.tsx";
import { ReceiverView } from "./receiver-view.tsx";

export interface PanelViewProps {
  readonly bench: Bench;
  readonly theme: Theme;
  readonly onTurned: () => void;
}

export function PanelView({ bench, theme, onTurned }: PanelViewProps): JSX.Element {
  const lit = bench.lit.value;
  const identify = useMemo(() => createIdentify(bench), [bench]);
  useEffect(() => identify.close, [identify]);
  return (
    <section class="sheet panel" aria-label="Panel">
      <div class="receivers">
        {bench.situation.value.receivers.map((reading) => (
          <ReceiverView
            key={reading.settings.name}
            bench={bench}
            identify={identify}
            reading={reading}
            theme={theme}
            lit={lit?.receiver === reading.settings.name ? lit : null}
            onTurned={onTurned}
          />
        ))}
      </div>
      <AircraftControls bench={bench} theme={theme} lit={lit} />
    </section>
  );
}
