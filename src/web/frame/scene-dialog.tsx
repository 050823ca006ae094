/** The list of scenes: the demo's, each with what it shows, and a file of one's own. */

import type { JSX } from "preact";
import { useEffect, useRef } from "preact/hooks";
import type { Bench } from "../state/bench.ts";
import { DEMO_SCENES } from "../state/demo-scenes.ts";
import { pickedScene, type SceneRead } from "../state/scene-files.ts";

export interface SceneDialogProps {
  readonly bench: Bench;
  /** How often the list was asked for; each time it opens. */
  readonly asked: number;
  readonly onRead: (read: SceneRead) => void;
}

export function SceneDialog({ bench, asked, onRead }: SceneDialogProps): JSX.Element {
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    if (asked === 0 || dialog.current?.open === true) return;
    dialog.current?.showModal();
  }, [asked]);
  useEffect(() => {
    // A press beside the sheet puts it away, as Escape does.
    const shown = dialog.current;
    const onPress = (event: MouseEvent) => {
      if (event.target === shown) shown?.close();
    };
    shown?.addEventListener("click", onPress);
    return () => shown?.removeEventListener("click", onPress);
  }, []);
  const take = (read: SceneRead | null) => {
    dialog.current?.close();
    if (read !== null) onRead(read);
  };
  const current = bench.opened.value.name;
  return (
    <dialog ref={dialog} class="sheet" aria-labelledby="scenes-title">
      <header class="dialog-head">
        <h2 id="scenes-title">Scenes</h2>
        <button type="button" class="button" onClick={() => dialog.current?.close()}>
          Close
        </button>
      </header>
      <ol class="scene-list">
        {DEMO_SCENES.map(({ key, scene }, index) => (
          <li key={key}>
            <button
              type="button"
              aria-current={key === current}
              onClick={() => take({ ok: true, name: key, origin: "demo", scene })}
            >
              <span class="index">{index + 1}</span>
              <strong>{scene.title}</strong>
              <span class="first">{firstSentence(scene.about)}</span>
            </button>
          </li>
        ))}
      </ol>
      <footer class="dialog-foot">
        <label>
          <span class="note">A scene file of your own, with the files it names </span>
          <input
            type="file"
            multiple
            accept=".yaml,.yml,.csv"
            onChange={(event) => {
              const input = event.currentTarget;
              void pickedScene([...(input.files ?? [])]).then((read) => {
                input.value = "";
                take(read);
              });
            }}
          />
        </label>
      </footer>
    </dialog>
  );
}

/** Enough to choose by. */
const firstSentence = (about: string): string => /^.*?[.?!](?=\s|$)/s.exec(about)?.[0] ?? about;
