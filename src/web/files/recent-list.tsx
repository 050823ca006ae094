/** Recent work as sheets to pick up again, each with its chart drawn small from the scene itself. */

import type { JSX } from "preact";
import { useEffect, useState } from "preact/hooks";
import { Chart, fitView, type Theme } from "../../draw/index.ts";
import { resolveScene, type Situation } from "../../scene/index.ts";
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
              <Thumbnail entry={entry} theme={theme} />
              <strong>{entry.title === "" ? entry.name : entry.title}</strong>
              <span class="note">
                {entry.name}, {dayOf(entry.when)}
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

const WIDTH_PX = 480;
const HEIGHT_PX = 300;

/** The chart of the scene; a blank sheet while it is read, and where it no longer can be. */
function Thumbnail({ entry, theme }: { readonly entry: RecentEntry; readonly theme: Theme }): JSX.Element {
  const [situation, setSituation] = useState<Situation | null>(null);
  useEffect(() => {
    let wanted = true;
    void situationOf(entry).then((read) => wanted && setSituation(read));
    return () => {
      wanted = false;
    };
  }, [entry]);
  return (
    <span class="recent-thumb" aria-hidden="true">
      {situation === null ? null : (
        <Chart
          situation={situation}
          view={fitView(situation, WIDTH_PX, HEIGHT_PX)}
          widthPx={WIDTH_PX}
          heightPx={HEIGHT_PX}
          theme={theme}
          idPrefix={`recent-${entry.id}`}
        />
      )}
    </span>
  );
}

async function situationOf(entry: RecentEntry): Promise<Situation | null> {
  try {
    const { readRecent } = await import("./file-work.ts");
    const read = readRecent(entry);
    return read.ok ? resolveScene(read.scene) : null;
  } catch {
    // The reader cannot be loaded, or the engine refuses the scene: then there is no picture, and opening it tells why.
    return null;
  }
}
