/** Recent work as sheets to pick up again, each with its chart drawn small from the scene itself. */

import type { JSX } from "preact";
import { useEffect, useState } from "preact/hooks";
import type { Theme } from "../../draw/index.ts";
import { resolveScene, type Scene } from "../../scene/index.ts";
import { Thumbnail } from "../home/thumbnail.tsx";
import type { Recent } from "./recent.ts";
import type { RecentEntry } from "./recent-entry.ts";
import type { SceneDesk } from "./scene-desk.ts";

export interface RecentListProps {
  readonly recent: Recent;
  readonly desk: SceneDesk;
  readonly theme: Theme;
}

/** Nothing at all while there is no recent work. */
export function RecentList({ recent, desk, theme }: RecentListProps): JSX.Element | null {
  const entries = recent.entries.value;
  if (entries.length === 0) return null;
  return (
    <section class="recent" aria-labelledby="recent-title">
      <header class="recent-head">
        <h2 id="recent-title">Recent work</h2>
        <p class="note">Kept in this browser only.</p>
        <button type="button" class="quiet" onClick={recent.forgetAll}>
          Forget all
        </button>
      </header>
      <ol class="recent-list">
        {entries.map((entry) => (
          <li key={entry.id}>
            <button type="button" class="sheet recent-open" onClick={() => void desk.resume(entry)}>
              <Sketch entry={entry} theme={theme} />
              <span class="scene-words">
                <strong>{entry.title === "" ? entry.name : entry.title}</strong>
                <span class="note">{entry.name}</span>
                <span class="note">{dayOf(entry.when)}</span>
              </span>
            </button>
            <button
              type="button"
              class="recent-forget"
              aria-label={`Forget ${entry.title === "" ? entry.name : entry.title}`}
              title="Forget"
              onClick={() => recent.forget(entry.id)}
            >
              ×
            </button>
          </li>
        ))}
      </ol>
    </section>
  );
}

const dayOf = (when: string): string =>
  new Date(when).toLocaleString(undefined, { dateStyle: "medium", timeStyle: "short" });

/** The scene drawn small; a blank sheet while it is read, and where it no longer can be. */
function Sketch({ entry, theme }: { readonly entry: RecentEntry; readonly theme: Theme }): JSX.Element {
  const [scene, setScene] = useState<Scene | null>(null);
  useEffect(() => {
    let wanted = true;
    void sceneIn(entry).then((read) => wanted && setScene(read));
    return () => {
      wanted = false;
    };
  }, [entry]);
  return scene === null ? (
    <span class="thumbnail" aria-hidden="true" />
  ) : (
    <Thumbnail scene={scene} theme={theme} idPrefix={`recent-${entry.id}`} />
  );
}

async function sceneIn(entry: RecentEntry): Promise<Scene | null> {
  try {
    const { readRecent } = await import("./file-work.ts");
    const read = readRecent(entry);
    // Tried here: what the engine refuses has no picture, and opening it tells why.
    if (read.ok) resolveScene(read.scene);
    return read.ok ? read.scene : null;
  } catch {
    return null;
  }
}
