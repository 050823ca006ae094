/** The head of the table: the way home, which scene this is and what it asks, and the tools that are of no one view. */

import type { ComponentChildren, JSX } from "preact";
import type { Bench } from "../state/bench.ts";

export interface HeaderProps {
  readonly bench: Bench;
  /** Null where it has no place: projecting. */
  readonly onHome: (() => void) | null;
  readonly children: ComponentChildren;
}

export function Header({ bench, onHome, children }: HeaderProps): JSX.Element {
  const { title, about, ask } = bench.scene.value;
  return (
    <header class="head">
      {onHome === null ? null : (
        <button type="button" class="button home-button" onClick={onHome}>
          Home
        </button>
      )}
      <div class="head-words">
        <h1>{title}</h1>
        <div class="ask">
          <p>{ask === "" ? about : ask}</p>
          {ask === "" || about === "" ? null : <About about={about} />}
        </div>
      </div>
      {children}
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
