/** Back and forth. */

import type { JSX } from "preact";
import type { Bench } from "../state/bench.ts";

export const UndoButtons = ({ bench }: { readonly bench: Bench }): JSX.Element => (
  <div class="undo-buttons">
    <button type="button" class="button" disabled={!bench.canUndo.value} onClick={bench.undo}>
      Undo
    </button>
    <button type="button" class="button" disabled={!bench.canRedo.value} onClick={bench.redo}>
      Redo
    </button>
  </div>
);
