/** Reads a catalogue off the page's own thread: a worldwide table takes a few tenths of a second. */

import { type CatalogueFile, readCatalogue } from "./read-catalogue.ts";

export interface CatalogueTask {
  readonly files: readonly CatalogueFile[];
  /** ISO day for which missing declinations are estimated. */
  readonly date: string;
}

addEventListener("message", ({ data }: MessageEvent<CatalogueTask>) => {
  postMessage(readCatalogue(data.files, data.date));
});
