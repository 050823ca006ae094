/** The drawing table with its sheets: chart, panel, reasons. */

import type { JSX } from "preact";
import { useState } from "preact/hooks";
import { type LinkWorld, type Scene, TRAINING_CAUTION } from "../scene/index.ts";
import { ChartSheet } from "./chart/chart-sheet.tsx";
import { Announcer } from "./frame/announcer.tsx";
import { FaultNotice, type Notice, noticeOf } from "./frame/fault-notice.tsx";
import { Header } from "./frame/header.tsx";
import { SceneDialog } from "./frame/scene-dialog.tsx";
import { useUndoKeys } from "./frame/undo-keys.ts";
import { useAddress } from "./link/use-address.ts";
import { MotionBar } from "./motion/motion-bar.tsx";
import type { Player } from "./motion/player.ts";
import { PanelView } from "./panel/panel-view.tsx";
import { ReasonsView } from "./reasons/reasons-view.tsx";
import type { Bench } from "./state/bench.ts";
import type { FirstMinute } from "./state/first-minute.ts";
import type { SceneRead } from "./state/scene-files.ts";
import type { ThemeState } from "./state/theme-choice.ts";

export interface AppProps {
  readonly bench: Bench;
  readonly player: Player;
  readonly world: LinkWorld;
  /** The scene that a bare address opens. */
  readonly home: Scene;
  readonly themeState: ThemeState;
  readonly firstMinute: FirstMinute;
  /** What was wrong with the scene that the bench was started with. */
  readonly firstNotice: Notice | null;
}

export function App(props: AppProps): JSX.Element {
  const { bench, player, world, home, themeState, firstMinute, firstNotice } = props;
  const [asked, setAsked] = useState(0);
  const [notice, setNotice] = useState(firstNotice);
  useUndoKeys(bench);
  const theme = themeState.theme.value;
  const openRead = (read: SceneRead) => {
    setNotice(noticeOf(read));
    if (read.ok) bench.open(read, read.scene);
  };
  useAddress({ bench, world, home, onRead: openRead });
  return (
    <div class="bench">
      <Header bench={bench} themeState={themeState} onScenes={() => setAsked((count) => count + 1)} />
      <main class="table">
        <ChartSheet
          bench={bench}
          theme={theme}
          firstMinute={firstMinute}
          trail={player.trail}
          foot={<MotionBar bench={bench} player={player} theme={theme} />}
        >
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
