/** Prepare or project. */

import type { JSX } from "preact";
import type { Layout } from "./layout-state.ts";

export function PresetButton({ layout }: { readonly layout: Layout }): JSX.Element {
  const projecting = layout.preset.value === "project";
  return (
    <button
      type="button"
      class={projecting ? "quiet" : "button"}
      aria-keyshortcuts="P"
      title={projecting ? "Escape" : "Large type for the room, and no tools"}
      onClick={() => layout.setPreset(projecting ? "prepare" : "project")}
    >
      {projecting ? "End projecting" : "Project"}
    </button>
  );
}
