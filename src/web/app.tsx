/** The drawing table with its sheets: chart, panel, reasons. */

import type { JSX } from "preact";
import { useState } from "preact/hooks";
import { TRAINING_CAUTION } from "../scene/index.ts";
import { ChartSheet } from "./chart/chart-sheet.tsx";
import { Announcer } from "./frame/announcer.tsx";
import { FaultNotice, type Notice } from "./frame/fault-notice.tsx";
import { Header } from "./frame/header.tsx";
import { SceneDialog } from "./frame/scene-dialog.tsx";
import { useUndoKeys } from "./frame/undo-keys.ts";
import { PanelView } from "./panel/panel-view.tsx";
import { ReasonsView } from "./reasons/reasons-view.tsx";
import type { Bench } from "./state/bench.ts";
import type { FirstMinute } from "./state/first-minute.ts";
import type { SceneRead } from "./state/scene-files.ts";
import type { ThemeState } from "./state/theme-choice.ts";

export interface AppProps {
  readonly bench: Bench;
  readonly themeState: ThemeState;
  readonly firstMinute: FirstMinute;
  /** What was wrong with the scene that the bench was started with. */
  readonly firstNotice: Notice | null;
}

export function App({ bench, themeState, firstMinute, firstNotice }: AppProps): JSX.Element {
  const [asked, setAsked] = useState(0);
  const [notice, setNotice] = useState(firstNotice);
  useUndoKeys(bench);
  const theme = themeState.theme.value;
  const openRead = (read: SceneRead) => {
    if (read.ok) {
      setNotice(null);
      bench.open(read, read.scene);
    } else setNotice(read);
  };
  return (
    <div class="bench">
      <Header bench={bench} themeState={themeState} onScenes={() => setAsked((count) => count + 1)} />
      <main class="table">
        <ChartSheet bench={bench} theme={theme} firstMinute={firstMinute}>
          {notice === null ? null : <FaultNotice notice={notice} onClose={() => setNotice(null)} />}
        </ChartSheet>
        <div class="side">
          <PanelView bench={bench} theme={theme} onTurned={() => firstMinute.tick("turn")} />
          <ReasonsView bench={bench} onPointedAt={() => firstMinute.tick("why")} />
        </div>
      </main>
      <footer class="foot">
        <p>{TRAINING_CAUTION}</p>
      </footer>
      <Announcer bench={bench} />
      <SceneDialog bench={bench} asked={asked} onRead={openRead} />
    </div>
  );
}
