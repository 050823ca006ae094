/** The head of the table: the way home, which scene this is and what it asks, and the tools that are of no one view. */

import { useComputed } from "@preact/signals";
import type { ComponentChildren, JSX } from "preact";
import { AskLine } from "../covers/ask-line.tsx";
import type { Bench } from "../state/bench.ts";

export interface HeaderProps {
  readonly bench: Bench;
  /** Null where it has no place: projecting. */
  readonly onHome: (() => void) | null;
  /** Whether the question may be edited: preparing, not projecting. */
  readonly editable: boolean;
  readonly children: ComponentChildren;
}

export function Header({ bench, onHome, editable, children }: HeaderProps): JSX.Element {
  const title = useComputed(() => bench.scene.value.title).value;
  return (
    <header class="head">
      {onHome === null ? null : (
        <button type="button" class="button home-button" onClick={onHome}>
          Home
        </button>
      )}
      <div class="head-words">
        <h1>{title}</h1>
        <AskLine bench={bench} editable={editable} />
      </div>
      {children}
    </header>
  );
}
