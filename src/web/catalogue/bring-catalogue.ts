/** A catalogue that was given anywhere on the page: the stations' sheet opens, whatever lay over it, and the catalogue is read into it. */

import type { Screen } from "../home/screen.ts";
import type { Layout } from "../layout/layout-state.ts";
import { chooseTool, type ToolState } from "../tools/tool-state.ts";

export interface CataloguePlace {
  readonly screen: Screen;
  readonly layout: Layout;
  readonly tools: ToolState;
}

/** `date` (ISO): for missing declinations. Rejects when the reader cannot be fetched. */
export async function bringCatalogue(
  files: readonly File[],
  date: string,
  { screen, layout, tools }: CataloguePlace,
): Promise<void> {
  screen.toBench();
  // A projected table has no tools, and on a phone they lie below the chart.
  if (layout.preset.value === "project") layout.setPreset("prepare");
  layout.choose("chart");
  if (layout.phone.value) layout.phonePane.value = "tools";
  if (tools.open.value !== "stations") chooseTool(tools, "stations");
  const { takeCatalogue } = await import("./catalogue-state.ts");
  await takeCatalogue(files, date);
}
