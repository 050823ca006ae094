/** The page: Home, practice, or the drawing table with its four views; and over both the ways in and out. */

import { type Signal, useComputed } from "@preact/signals";
import type { JSX } from "preact";
import { useEffect, useState } from "preact/hooks";
import type { LinkWorld, Scene, View } from "../scene/index.ts";
import { VIEWS } from "../scene/index.ts";
import { BenchScreen } from "./bench-screen.tsx";
import type { ChartHold } from "./chart/chart-hold.ts";
import { type FieldState, fieldShown } from "./field/field-state.ts";
import { FaultNotice, noticeOf } from "./frame/fault-notice.tsx";
import { later } from "./frame/later.tsx";
import { useUndoKeys } from "./frame/undo-keys.ts";
import { useHelp } from "./frame/use-help.tsx";
import { emptyScene } from "./home/empty-scene.ts";
import type { HomeProps } from "./home/home.tsx";
import type { Screen } from "./home/screen.ts";
import type { Layout } from "./layout/layout-state.ts";
import { type AskedRead, useAddress, viewIn } from "./link/use-address.ts";
import type { Player } from "./motion/player.ts";
import { Out } from "./out/out.tsx";
import type { OutState } from "./out/out-state.ts";
import type { PracticeScreenProps } from "./practice/practice-screen.tsx";
import type { SetsScreenProps } from "./practice-sets/sets-screen.tsx";
import type { Bench } from "./state/bench.ts";
import { demoScene } from "./state/demo-scenes.ts";
import type { FirstMinute } from "./state/first-minute.ts";
import type { ThemeState } from "./state/theme-choice.ts";
import type { ToolState } from "./tools/tool-state.ts";

const laterHome = later<HomeProps>(async () => (await import("./home/home.tsx")).Home);
const laterPractice = later<PracticeScreenProps>(
  async () => (await import("./practice/practice-screen.tsx")).PracticeScreen,
);
const laterSets = later<SetsScreenProps>(
  async () => (await import("./practice-sets/sets-screen.tsx")).SetsScreen,
);

/** What lives as long as the page. */
export interface AppProps {
  readonly bench: Bench;
  readonly player: Player;
  readonly hold: ChartHold;
  readonly layout: Layout;
  readonly tools: ToolState;
  readonly field: FieldState;
  readonly out: OutState;
  readonly screen: Screen;
  readonly world: LinkWorld;
  /** The scene that a bare address opens. */
  readonly home: Scene;
  readonly themeState: ThemeState;
  readonly firstMinute: FirstMinute;
  /** Whether keys pressed alone act. */
  readonly singleKeys: Signal<boolean>;
}

export function App(props: AppProps): JSX.Element {
  const { bench, player, hold, layout, out, screen, world, home, themeState } = props;
  const [shareAsked, setShareAsked] = useState(0);
  const isHome = screen.isHome.value;
  const practice = screen.practice.value;
  // Not the scene itself: the page as a whole stays as it is while the aircraft moves.
  const title = useComputed(() => bench.scene.value.title).value;
  const theme = themeState.theme.value;
  const help = useHelp(props.singleKeys);
  useUndoKeys(bench);
  useAddress({
    bench,
    world,
    home,
    view: () => hold.chosen.value,
    isAway: () => screen.isAway.value,
    onRead: (read: AskedRead) => {
      out.notice.value = noticeOf(read);
      if (!read.ok) return;
      bench.open(read, read.scene);
      const view = viewIn(read);
      if (view !== null) hold.move(view);
    },
  });
  useEffect(() => {
    const shown = practice === null ? title : "Practice";
    document.title = isHome ? "Needlework" : `${shown} · Needlework`;
    if (screen.isAway.value) player.pause();
  }, [isHome, practice, title]);
  const notice =
    out.notice.value === null ? null : (
      <FaultNotice
        notice={out.notice.value}
        onClose={() => {
          out.notice.value = null;
        }}
      />
    );
  const open = (name: string, origin: "demo" | "file", scene: Scene) => {
    out.notice.value = null;
    screen.toBench();
    bench.open({ name, origin }, scene);
  };
  const viewsShown = (): readonly View[] => VIEWS.filter(layout.isSeen);
  return (
    <>
      {isHome ? (
        <laterHome.Part
          theme={theme}
          desk={out.desk}
          recent={out.recent}
          onBench={title}
          onBack={screen.toBench}
          onHelp={help.ask}
          onPractise={screen.goPractise}
          onOpen={({ key, scene }) => open(key, "demo", scene)}
          onEmpty={() => open("untitled", "file", emptyScene(demoScene("").scene))}
        >
          {notice}
        </laterHome.Part>
      ) : screen.isSets.value ? (
        <laterSets.Part
          theme={theme}
          world={world}
          date={demoScene("").scene.date}
          benchScene={() => bench.scene.value}
          onBack={screen.toBench}
          onHelp={help.ask}
        />
      ) : practice !== null ? (
        <laterPractice.Part
          theme={theme}
          phone={layout.phone}
          world={world}
          date={demoScene("").scene.date}
          wanted={practice}
          onBack={screen.toBench}
          onHelp={help.ask}
        />
      ) : (
        <BenchScreen {...props} onShare={() => setShareAsked((count) => count + 1)} onHelp={help.ask}>
          {notice}
        </BenchScreen>
      )}
      <Out
        bench={bench}
        out={out}
        theme={theme}
        views={viewsShown}
        chartView={() => hold.chosen.value}
        trail={() => player.trail.value}
        field={() => fieldShown(props.field, bench.scene.value)}
        isAway={() => screen.isAway.value}
        asked={shareAsked}
      />
      {help.sheet}
    </>
  );
}
