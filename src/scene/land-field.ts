/** The land that a file is set on: written inside it, or the path of a land file. */

import { isMap } from "yaml";
import type { Land } from "../radio/index.ts";
import { readInlineLand, readLand } from "./land-file.ts";
import { landPathLeaf } from "./land-shape.ts";
import type { Reading } from "./reading.ts";
import { type FileRecord, type RecordField, readScalar } from "./record.ts";
import { openNamed, sourceFile } from "./sources.ts";
import type { Gathered } from "./station-files.ts";

/** The land under `land:`, written there or in a file of its own; null where there is none or, with its faults, where it cannot be read. */
export function readLandField(reading: Reading, record: FileRecord, stations: Gathered): Land | null {
  const field = record.fields.get("land");
  if (!field) return null;
  if (isMap(field.node)) return readInlineLand(reading, field);
  return readNamedLand(reading, field, stations);
}

function readNamedLand(reading: Reading, field: RecordField, stations: Gathered): Land | null {
  const written = readScalar(reading, field, landPathLeaf, "land");
  const opened = written && openNamed(reading, written, "land", stations.open);
  if (!written || !opened) return null;
  stations.sources.push(sourceFile("land", opened.path, written.text));
  const read = readLand(opened.text, { path: opened.path });
  if (read.ok) return read.land;
  stations.faults.push(...read.faults);
  return null;
}
