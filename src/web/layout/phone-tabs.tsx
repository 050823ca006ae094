/** Along the bottom of a phone: what lies below the chart. */

import type { JSX } from "preact";
import { VIEWS } from "../../scene/index.ts";
import type { Layout, PhonePane } from "./layout-state.ts";
import { VIEW_NAMES } from "./view-words.ts";

const PANES: readonly PhonePane[] = [...VIEWS, "tools"];

export function PhoneTabs({ layout }: { readonly layout: Layout }): JSX.Element {
  return (
    <nav class="phone-tabs" aria-label="Views">
      {PANES.map((pane) => (
        <button
          key={pane}
          type="button"
          aria-pressed={layout.phonePane.value === pane}
          onClick={() => {
            layout.phonePane.value = pane;
            if (pane !== "tools") layout.chosen.value = pane;
          }}
        >
          {pane === "tools" ? "Tools" : VIEW_NAMES[pane]}
        </button>
      ))}
    </nav>
  );
}
