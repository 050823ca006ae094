/** The demo's scenes, read when the bench was built: they load with the page, and need no reader. */

import { DEMO } from "virtual:demo-scenes";
import type { Land, Station } from "../../radio/index.ts";
import type { Scene } from "../../scene/index.ts";

/** A scene that can be opened, as a list shows it. */
export interface SceneEntry {
  /** Stands in the address: the file's name without its ending. */
  readonly key: string;
  readonly scene: Scene;
}

const shared = <T>(number: number): T => DEMO.shared[number] as T;

/** In the order of their file names, which is teaching order. */
export const DEMO_SCENES: readonly SceneEntry[] = DEMO.entries.map(({ key, scene }) => ({
  key,
  scene: {
    ...scene,
    land: shared<Land | null>(scene.land),
    stations: scene.stations.map(shared<Station>),
  },
}));

/** One scene of the demo, by its key or its number ("01"); the first when there is none such. */
export function demoScene(key: string): SceneEntry {
  const [first] = DEMO_SCENES;
  if (first === undefined) throw new Error("the demo holds no scene");
  return DEMO_SCENES.find((entry) => key !== "" && entry.key.startsWith(key)) ?? first;
}
