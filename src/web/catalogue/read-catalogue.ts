/** A catalogue of stations out of the files a person gave: a worldwide navaid table, or a station file of ours with those it includes. */

import type { BrokenRow, RowNote, Station } from "../../radio/index.ts";
import { decodeText, type Fault, faultLine, isTablePath, readStations } from "../../scene/index.ts";

/** A file as the browser gives it, and as it is kept. */
export interface CatalogueFile {
  readonly name: string;
  readonly bytes: ArrayBuffer;
}

export interface Catalogue {
  /** The name of the file it came from. */
  readonly name: string;
  readonly stations: readonly Station[];
  /** Rows that could not be used, by line. */
  readonly skipped: readonly BrokenRow[];
  /** Rows that were kept with something to say about them. */
  readonly notes: readonly RowNote[];
}

export type CatalogueRead =
  | { readonly ok: true; readonly catalogue: Catalogue }
  /** What is wrong, one sentence each, with file, line and column. */
  | { readonly ok: false; readonly name: string; readonly lines: readonly string[] };

/**
 * Reads the file that is a table or says it is a station file; what it includes is looked for among the others by name. `date`
 * (ISO) is the day for which missing declinations are estimated. Never throws on what is in the files.
 */
export function readCatalogue(files: readonly CatalogueFile[], date: string): CatalogueRead {
  const texts = new Map<string, string>();
  for (const { name, bytes } of files) {
    const decoded = decodeText(new Uint8Array(bytes), name);
    if (!decoded.ok) return faulty(name, [decoded.fault]);
    texts.set(name, decoded.text);
  }
  const names = [...texts.keys()];
  const isCatalogue = (name: string) => isTablePath(name) || /^stations\s*:/m.test(texts.get(name) ?? "");
  // Picked out of a folder they come in any order; the one that includes the others is the one that is meant.
  const includes = (name: string) => /^include\s*:/m.test(texts.get(name) ?? "");
  const catalogues = names.filter(isCatalogue);
  const name = catalogues.find(includes) ?? catalogues[0] ?? names[0] ?? "";
  const read = readStations(texts.get(name) ?? "", {
    path: name,
    date,
    open: (wanted) => {
      const path = wanted.replace(/^.*[\\/]/, "");
      const text = texts.get(path);
      return text === undefined ? { failure: "it was not given together with this file" } : { path, text };
    },
  });
  if (!read.ok) return faulty(name, read.faults);
  const { stations, skipped, notes } = read;
  return { ok: true, catalogue: { name, stations, skipped, notes } };
}

const faulty = (name: string, faults: readonly Fault[]): CatalogueRead => ({
  ok: false,
  name,
  lines: faults.map(faultLine),
});
