/**
 * The bench's state and the one path from it to the picture: history of scenes, present scene, situation, reasons. Everything
 * shown is derived from here; views only read signals and call the functions.
 */

import { computed, type ReadonlySignal, type Signal, signal } from "@preact/signals";
import type { Lit } from "../../draw/index.ts";
import { type Reason, reasonsFor } from "../../reason/index.ts";
import { resolver, type Scene, type Situation } from "../../scene/index.ts";
import { act, type SceneAction } from "./actions.ts";
import { beginHistory, carryOn, type History, record, redo, undo } from "./history.ts";

/** Where a scene came from: the demo's can be named in the address, a person's own file cannot. */
export type Origin = "demo" | "file";

/** What to call a scene: the demo scene's key or the file's name. */
export interface SceneName {
  readonly name: string;
  readonly origin: Origin;
}

/** A scene on the bench. */
export interface Opened extends SceneName {
  /** As it was when opened: what the chart is framed for. */
  readonly asOpened: Scene;
  readonly scene: Scene;
}

export interface Bench {
  readonly opened: ReadonlySignal<Opened>;
  readonly scene: ReadonlySignal<Scene>;
  readonly situation: ReadonlySignal<Situation>;
  /** What the chart is framed for: the scene as it was opened, or with its covers lifted. */
  readonly situationAsOpened: ReadonlySignal<Situation>;
  /** The argument about the attended receiver. */
  readonly reasons: ReadonlySignal<readonly Reason[]>;
  /** Name of the receiver whose argument is shown: the one last touched. */
  readonly attended: ReadonlySignal<string>;
  /** The stations' clock at the present scene, seconds since its flight began: a signal of its own goes on with it. */
  readonly clockS: Signal<number>;
  /** What is lit by pointing at a step. */
  readonly lit: Signal<Lit | null>;
  readonly canUndo: ReadonlySignal<boolean>;
  readonly canRedo: ReadonlySignal<boolean>;
  /** Changes the scene. Changes of one gesture (a drag, a run of clicks) are taken back as one. */
  readonly act: (action: SceneAction, gesture?: string) => void;
  /** Carries the scene on without an entry to take back: for what goes on by itself, once `act` has begun it. */
  readonly carryOn: (action: SceneAction) => void;
  readonly attend: (receiver: string) => void;
  /** Puts another scene on the bench; the present one can be taken back. Throws as `createBench` does, and then nothing changes. */
  readonly open: (name: SceneName, scene: Scene) => void;
  readonly undo: () => void;
  readonly redo: () => void;
}

const openedAs = ({ name, origin }: SceneName, scene: Scene): Opened => ({
  name,
  origin,
  asOpened: scene,
  scene,
});

/** A bench with one scene on it. Throws RangeError when the scene cannot be resolved (a station at a pole). */
export function createBench(name: SceneName, first: Scene): Bench {
  const history = signal<History<Opened>>(beginHistory(openedAs(name, first)));
  const opened = computed(() => history.value.present);
  const scene = computed(() => opened.value.scene);
  const asOpened = computed(() => opened.value.asOpened);
  const covers = computed(() => scene.value.covers);
  const stations = computed(() => scene.value.stations);
  const land = computed(() => scene.value.land);
  // Worked out once for the stations and the ground, which stay while the aircraft moves.
  const resolve = computed(() => resolver(stations.value, land.value));
  const clockS = signal(0);
  // Only a signal of its own hears the clock.
  const situation = computed(() =>
    resolve.value(scene.value, scene.value.signal === null ? 0 : clockS.value),
  );
  const chosen = signal<string | null>(null);
  const attended = computed(() => {
    const names = scene.value.receivers.map((receiver) => receiver.name);
    const wanted = chosen.value;
    return wanted !== null && names.includes(wanted) ? wanted : (names[0] ?? "");
  });
  const argument = computed(() => reasonsFor(situation.value));
  const lit = signal<Lit | null>(null);
  const change = (next: History<Opened>) => {
    if (next.present.name !== history.value.present.name) lit.value = null;
    history.value = next;
  };
  return {
    opened,
    scene,
    situation,
    situationAsOpened: computed(() => resolve.value({ ...asOpened.value, covers: covers.value })),
    reasons: computed(() => argument.value.filter((reason) => reason.receiver === attended.value)),
    attended,
    clockS,
    lit,
    canUndo: computed(() => history.value.past.length > 0),
    canRedo: computed(() => history.value.future.length > 0),
    act: (action, gesture) => {
      const present = history.value.present;
      const after = act(present.scene, action);
      if (after !== present.scene)
        change(record(history.value, { ...present, scene: after }, gesture ?? null));
    },
    carryOn: (action) => {
      const present = history.value.present;
      const after = act(present.scene, action);
      if (after !== present.scene) change(carryOn(history.value, { ...present, scene: after }));
    },
    attend: (receiver) => {
      chosen.value = receiver;
    },
    open: (sceneName, next) => {
      // Resolved before it is shown: a scene the engine refuses leaves the present one standing.
      resolver(next.stations, next.land)(next);
      change(record(history.value, openedAs(sceneName, next), null));
    },
    undo: () => change(undo(history.value)),
    redo: () => change(redo(history.value)),
  };
}
