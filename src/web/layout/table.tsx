/** The drawing table: chart and signal in one column, panel and reasons in the other, as the layout has them. */

import type { ComponentChildren, JSX } from "preact";
import type { View } from "../../scene/index.ts";
import type { Layout } from "./layout-state.ts";
import { ViewSheet } from "./view-sheet.tsx";

/** What is on a sheet, and what stands beside the sheet's name. */
export interface SheetContent {
  readonly sheet: ComponentChildren;
  readonly aside?: ComponentChildren;
}

export interface TableProps {
  readonly layout: Layout;
  readonly views: Readonly<Record<View, SheetContent>>;
}

const COLUMNS = { place: ["chart", "signal"], why: ["panel", "reasons"] } as const;

export function Table({ layout, views }: TableProps): JSX.Element {
  const seen = (column: keyof typeof COLUMNS) => COLUMNS[column].filter(layout.isSeen);
  const column = (name: keyof typeof COLUMNS) => (
    <div class="column" data-column={name} data-seen={seen(name).join(" ")} hidden={seen(name).length === 0}>
      {COLUMNS[name].map((view) => (
        <ViewSheet key={view} layout={layout} view={view} aside={views[view].aside}>
          {views[view].sheet}
        </ViewSheet>
      ))}
    </div>
  );
  const alone = seen("place").length === 0 || seen("why").length === 0;
  return (
    <main class="table" data-alone={alone}>
      {column("place")}
      {column("why")}
    </main>
  );
}
