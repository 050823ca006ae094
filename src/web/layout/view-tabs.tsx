/** Paper tabs at the edge of the table: the views that cannot be seen now, each a press away. Projecting, all four. */

import type { JSX } from "preact";
import { VIEWS } from "../../scene/index.ts";
import type { Layout } from "./layout-state.ts";
import { VIEW_NAMES } from "./view-words.ts";

export function ViewTabs({ layout }: { readonly layout: Layout }): JSX.Element | null {
  const projecting = layout.preset.value === "project";
  const tabs = projecting ? VIEWS : VIEWS.filter((view) => !layout.isSeen(view));
  if (tabs.length === 0) return null;
  return (
    <fieldset class="view-tabs" aria-label={projecting ? "Views" : "Views put away"}>
      {tabs.map((view) => (
        <button
          key={view}
          type="button"
          aria-pressed={layout.isSeen(view)}
          onClick={() => (projecting ? layout.toggleShown(view) : layout.choose(view))}
        >
          {VIEW_NAMES[view]}
        </button>
      ))}
    </fieldset>
  );
}
