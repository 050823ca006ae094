/** One view on the table, with its name in the margin above, and what a hand can do to the sheet. */

import type { ComponentChildren, JSX } from "preact";
import type { View } from "../../scene/index.ts";
import type { Layout } from "./layout-state.ts";
import { VIEW_NAMES, VIEW_TITLES } from "./view-words.ts";

export interface ViewSheetProps {
  readonly layout: Layout;
  readonly view: View;
  /** Beside the name. */
  readonly aside?: ComponentChildren;
  readonly children: ComponentChildren;
}

export function ViewSheet({ layout, view, aside, children }: ViewSheetProps): JSX.Element {
  const choose = () => {
    layout.chosen.value = view;
  };
  const scale = layout.typeScaleOf(view);
  const bare = layout.phone.value || layout.preset.value === "project";
  return (
    <div
      class="view"
      data-view={view}
      data-chosen={layout.chosen.value === view}
      data-fills={layout.arrangement.value.enlarged === view && !layout.phone.value}
      data-large={scale > 1}
      style={{ "--type-scale": String(scale) }}
      hidden={!layout.isSeen(view)}
      onPointerDown={choose}
      onFocusIn={choose}
    >
      {bare ? null : (
        <div class="view-head">
          <span class="view-name">{VIEW_TITLES[view]}</span>
          {aside}
          <SheetActs layout={layout} view={view} />
        </div>
      )}
      {children}
    </div>
  );
}

function SheetActs({ layout, view }: Pick<ViewSheetProps, "layout" | "view">): JSX.Element {
  const { shown, enlarged } = layout.arrangement.value;
  const fills = enlarged === view;
  const name = VIEW_NAMES[view].toLowerCase();
  return (
    <span class="view-acts">
      <button
        type="button"
        class="quiet"
        aria-label={fills ? `Shrink the ${name}` : `Enlarge the ${name}`}
        onClick={() => layout.toggleEnlarged(view)}
      >
        {fills ? "Shrink" : "Enlarge"}
      </button>
      {shown.length === 1 ? null : (
        <button
          type="button"
          class="quiet"
          aria-label={`Put away the ${name}`}
          onClick={() => layout.toggleShown(view)}
        >
          Put away
        </button>
      )}
    </span>
  );
}
