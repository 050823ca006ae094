/** What the pilot sees: every receiver, and the aircraft's own instruments below. */

import type { JSX } from "preact";
import { useEffect, useMemo, useRef } from "preact/hooks";
import type { Theme } from "../../draw/index.ts";
import { useElementSize } from "../frame/element-size.ts";
import { createIdentify } from "../sound/identify.ts";
import type { Bench } from "../state/bench.ts";
import { AircraftControls } from "./aircraft-controls.tsx";
import type { FlightTime } from "./clock-state.ts";
import { CoveredNote } from "./covered-note.tsx";
import { arrangePanel } from "./panel-arrangement.ts";
import { ReceiverView } from "./receiver-view.tsx";
import { sharedDial } from "./shared-dial.ts";

export interface PanelViewProps {
  readonly bench: Bench;
  readonly theme: Theme;
  /** The flight whose time the clock goes by; real time where none is given. */
  readonly flight?: FlightTime;
  readonly onTurned: () => void;
}

export function PanelView({ bench, theme, flight, onTurned }: PanelViewProps): JSX.Element {
  const lit = bench.lit.value;
  const identify = useMemo(() => createIdentify(bench), [bench]);
  useEffect(() => identify.close, [identify]);
  const { receivers } = bench.situation.value;
  const shared = sharedDial(receivers);
  const holder = useRef<HTMLDivElement>(null);
  const { columns, form } = arrangePanel(receivers.length, useElementSize(holder)?.widthPx ?? 0);
  if (bench.scene.value.covers.includes("panel"))
    return (
      <section class="sheet panel covered-sheet" aria-label="Panel" tabIndex={-1}>
        <CoveredNote what="panel" />
      </section>
    );
  return (
    <section class="sheet panel" aria-label="Panel" tabIndex={-1}>
      <div class="receivers" ref={holder} data-form={form} style={{ "--columns": columns }}>
        {receivers.map((reading) => (
          <ReceiverView
            key={reading.settings.name}
            bench={bench}
            identify={identify}
            reading={reading}
            second={reading === shared?.first ? shared.second : null}
            shownOn={reading === shared?.second ? shared.first.settings.name : null}
            theme={theme}
            lit={lit}
            onTurned={onTurned}
          />
        ))}
      </div>
      <AircraftControls bench={bench} theme={theme} lit={lit} flight={flight ?? null} />
    </section>
  );
}
