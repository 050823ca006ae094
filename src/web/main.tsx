/** Starts the bench: the scene it was started with, or the one the address names, or the demo's first. */

import { render } from "preact";
import { App } from "./app.tsx";
import { bringCatalogue } from "./catalogue/bring-catalogue.ts";
import { createChartHold } from "./chart/chart-hold.ts";
import { createFieldState } from "./field/field-state.ts";
import { servedScene } from "./files/served-scene.ts";
import { noticeOf } from "./frame/fault-notice.tsx";
import { createScreen } from "./home/screen.ts";
import { createLayout } from "./layout/layout-state.ts";
import { linkWorld } from "./link/demo-world.ts";
import { askedNow } from "./link/follow-address.ts";
import { readAsked, viewIn } from "./link/use-address.ts";
import { createPlayer } from "./motion/player.ts";
import { keepOffline } from "./offline/keep-offline.ts";
import { createOut } from "./out/out-state.ts";
import { createBench } from "./state/bench.ts";
import { demoScene } from "./state/demo-scenes.ts";
import { createFirstMinute } from "./state/first-minute.ts";
import { createSingleKeys } from "./state/single-keys.ts";
import { followTheme } from "./state/theme-choice.ts";
import { createToolState } from "./tools/tool-state.ts";

async function start(root: HTMLElement): Promise<void> {
  const singleKeys = createSingleKeys();
  const themeState = followTheme();
  const screen = createScreen();
  const asked = askedNow();
  const demo = demoScene("");
  const world = linkWorld(demo.scene);
  const read = asked.kind === "nothing" ? await servedScene() : await readAsked(asked, world);
  const bench = read?.ok
    ? createBench(read, read.scene)
    : createBench({ name: demo.key, origin: "demo" }, demo.scene);
  const firstSource = read?.ok && "source" in read ? read.source : null;
  const layout = createLayout();
  const tools = createToolState();
  const out = createOut(bench, {
    onOpened: screen.toBench,
    onCatalogue: (files) => bringCatalogue(files, bench.scene.value.date, { screen, layout, tools }),
    firstSource,
  });
  out.notice.value = noticeOf(read);
  const hold = createChartHold(bench);
  const view = viewIn(read);
  if (view !== null) hold.move(view);
  render(
    <App
      bench={bench}
      player={createPlayer(bench)}
      hold={hold}
      layout={layout}
      tools={tools}
      field={createFieldState()}
      out={out}
      screen={screen}
      world={world}
      home={asked.kind === "nothing" && read?.ok ? read.scene : demo.scene}
      themeState={themeState}
      firstMinute={createFirstMinute()}
      singleKeys={singleKeys}
    />,
    root,
  );
}

const root = document.getElementById("bench");
if (root !== null) await start(root);
keepOffline();
