/** Home: what this is, the demo's scenes in teaching order, one's own work, and the caution. */

import type { JSX } from "preact";
import { useEffect, useRef } from "preact/hooks";
import type { Theme } from "../../draw/index.ts";
import { TRAINING_CAUTION } from "../../scene/index.ts";
import type { Recent } from "../files/recent.ts";
import { RecentList } from "../files/recent-list.tsx";
import type { SceneDesk } from "../files/scene-desk.ts";
import { DEMO_SCENES, type SceneEntry } from "../state/demo-scenes.ts";
import { Thumbnail } from "./thumbnail.tsx";

export interface HomeProps {
  readonly theme: Theme;
  readonly desk: SceneDesk;
  readonly recent: Recent;
  /** What lies on the bench meanwhile. */
  readonly onBench: string;
  readonly onBack: () => void;
  readonly onHelp: () => void;
  readonly onPractise: () => void;
  readonly onOpen: (entry: SceneEntry) => void;
  readonly onEmpty: () => void;
  readonly children: JSX.Element | null;
}

export function Home(props: HomeProps): JSX.Element {
  const { theme, desk, recent, onBench, onBack, onHelp, onPractise, onOpen, onEmpty, children } = props;
  const title = useRef<HTMLHeadingElement>(null);
  useEffect(() => title.current?.focus({ preventScroll: true }), []);
  return (
    <div class="home">
      <header class="home-head">
        <h1 ref={title} tabIndex={-1}>
          Needlework
        </h1>
        <p>
          A bench to teach radio navigation on: move the aircraft, turn the course, and see what every
          instrument shows, and why.
        </p>
        <div class="home-acts">
          <button type="button" class="button inked" onClick={onBack}>
            Back to “{onBench}”
          </button>
          <button type="button" class="button" onClick={onPractise}>
            Practice
          </button>
          <a class="button" href="#sets">
            Problem sets
          </a>
          <button type="button" class="button" onClick={() => void desk.pick()}>
            Open a scene file…
          </button>
          <button type="button" class="button" onClick={onEmpty}>
            Start empty
          </button>
          <button type="button" class="button" aria-keyshortcuts="?" onClick={onHelp}>
            Help
          </button>
          <p class="note">A scene file can be dropped anywhere on this page.</p>
        </div>
        {children}
      </header>
      <main>
        <RecentList recent={recent} desk={desk} theme={theme} />
        <section class="home-scenes" aria-labelledby="scenes-title">
          <h2 id="scenes-title">Scenes to teach with</h2>
          <p class="note">
            In teaching order, in the invented Ostrelle Isles. New here? Open the first: it shows in a minute
            how the bench is used.
          </p>
          <ol>
            {DEMO_SCENES.map((entry, index) => (
              <SceneCard
                key={entry.key}
                entry={entry}
                number={index + 1}
                theme={theme}
                onOpen={() => onOpen(entry)}
              />
            ))}
          </ol>
        </section>
      </main>
      <footer class="home-foot">
        <p>{TRAINING_CAUTION}</p>
      </footer>
    </div>
  );
}

interface SceneCardProps {
  readonly entry: SceneEntry;
  readonly number: number;
  readonly theme: Theme;
  readonly onOpen: () => void;
}

/** A link, so that a scene can also be opened in a tab of its own. */
function SceneCard({ entry, number, theme, onOpen }: SceneCardProps): JSX.Element {
  const { key, scene } = entry;
  return (
    <li>
      <a
        class="sheet scene-card"
        href={`#${new URLSearchParams({ scene: key })}`}
        onClick={(event) => {
          if (event.ctrlKey || event.metaKey || event.shiftKey) return;
          event.preventDefault();
          onOpen();
        }}
      >
        <Thumbnail scene={scene} theme={theme} idPrefix={`scene-${key}`} />
        <span class="scene-words">
          <strong>
            <span class="scene-number">{number}</span> {scene.title}
          </strong>
          <span class="scene-about">{firstSentence(scene.about)}</span>
        </span>
      </a>
    </li>
  );
}

/** Enough to choose by. */
const firstSentence = (about: string): string => /^.*?[.?!](?=\s|$)/s.exec(about)?.[0] ?? about;
