/** The head of the table: which scene this is, another scene, back and forth, light and dark. */

import type { JSX } from "preact";
import type { Bench } from "../state/bench.ts";
import type { ThemeState } from "../state/theme-choice.ts";
import { ThemeSwitch } from "./theme-switch.tsx";

export interface HeaderProps {
  readonly bench: Bench;
  readonly themeState: ThemeState;
  readonly onScenes: () => void;
}

export function Header({ bench, themeState, onScenes }: HeaderProps): JSX.Element {
  const { title, about, ask } = bench.scene.value;
  return (
    <header class="head">
      <div class="head-words">
        <h1>{title}</h1>
        <div class="ask">
          <p>{ask === "" ? about : ask}</p>
          {ask === "" || about === "" ? null : <About about={about} />}
        </div>
      </div>
      <div class="head-tools">
        <button type="button" class="button" onClick={onScenes}>
          Scenes
        </button>
        <button type="button" class="button" disabled={!bench.canUndo.value} onClick={bench.undo}>
          Undo
        </button>
        <button type="button" class="button" disabled={!bench.canRedo.value} onClick={bench.redo}>
          Redo
        </button>
        <ThemeSwitch choice={themeState.choice} />
      </div>
    </header>
  );
}

/** What the scene shows, and so often its answer: behind a word, for the one who wants it. */
const About = ({ about }: { readonly about: string }): JSX.Element => (
  <details class="more">
    <summary>About this scene</summary>
    <p class="sheet">{about}</p>
  </details>
);
