/** Starts the bench: the scene it was started with, or the one the address names, or the demo's first. */

import { render } from "preact";
import { App } from "./app.tsx";
import { noticeOf } from "./frame/fault-notice.tsx";
import { linkWorld } from "./link/demo-world.ts";
import { askedNow } from "./link/follow-address.ts";
import { readAsked } from "./link/use-address.ts";
import { createPlayer } from "./motion/player.ts";
import { createBench } from "./state/bench.ts";
import { demoScene } from "./state/demo-scenes.ts";
import { createFirstMinute } from "./state/first-minute.ts";
import { servedScene } from "./state/scene-files.ts";
import { followTheme } from "./state/theme-choice.ts";

async function start(root: HTMLElement): Promise<void> {
  const themeState = followTheme();
  const asked = askedNow();
  const demo = demoScene("");
  const world = linkWorld(demo.scene);
  const read = asked.kind === "nothing" ? await servedScene() : await readAsked(asked, world);
  const bench = read?.ok
    ? createBench(read, read.scene)
    : createBench({ name: demo.key, origin: "demo" }, demo.scene);
  const home = asked.kind === "nothing" && read?.ok ? read.scene : demo.scene;
  render(
    <App
      bench={bench}
      player={createPlayer(bench)}
      world={world}
      home={home}
      themeState={themeState}
      firstMinute={createFirstMinute()}
      firstNotice={noticeOf(read)}
    />,
    root,
  );
}

const root = document.getElementById("bench");
if (root !== null) await start(root);
