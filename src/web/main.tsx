/** Starts the bench: the scene it was started with, or the one the address names, or the demo's first. */

import { render } from "preact";
import { App } from "./app.tsx";
import type { Notice } from "./frame/fault-notice.tsx";
import { createBench } from "./state/bench.ts";
import { demoScene } from "./state/demo-scenes.ts";
import { createFirstMinute } from "./state/first-minute.ts";
import { keepSceneInAddress, sceneInAddress } from "./state/scene-address.ts";
import { servedScene } from "./state/scene-files.ts";
import { followTheme } from "./state/theme-choice.ts";

async function start(root: HTMLElement): Promise<void> {
  const themeState = followTheme();
  const asked = sceneInAddress();
  const served = asked === null ? await servedScene() : null;
  const { key, scene } = demoScene(asked ?? "");
  const bench = served?.ok
    ? createBench(served, served.scene)
    : createBench({ name: key, origin: "demo" }, scene);
  keepSceneInAddress(bench);
  const firstNotice: Notice | null = served === null || served.ok ? null : served;
  render(
    <App bench={bench} themeState={themeState} firstMinute={createFirstMinute()} firstNotice={firstNotice} />,
    root,
  );
}

const root = document.getElementById("bench");
if (root !== null) await start(root);
