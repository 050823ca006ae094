/** The day of a file, on which magnetic variation depends. */

import type { ZodMiniType } from "zod/mini";
import { decimalYear } from "../earth/index.ts";
import { addFault, type Reading } from "./reading.ts";
import { type FileRecord, readField } from "./record.ts";
import { isOptional } from "./shape.ts";

/**
 * The day under `date:`, which must exist; `today` stands in where none is written, if there is one. Null, with a fault, otherwise.
 * `what` is the file in words.
 */
export function readDate(
  reading: Reading,
  record: FileRecord,
  { leaf, what, today }: { leaf: ZodMiniType<string | undefined>; what: string; today?: string | undefined },
): string | null {
  const written = readField(reading, record, "date", leaf);
  if (written && isCalendarDay(written.value)) return written.value;
  if (written)
    addFault(
      reading,
      "bad-date",
      written.offset,
      `date ${written.text} is not in the calendar; write a day that exists, such as 2026-06-01`,
    );
  else if (!record.fields.has("date") && isOptional(leaf)) {
    if (today !== undefined) return today;
    addFault(
      reading,
      "missing-key",
      record.offset,
      `${what} has no date; variation depends on it, so write one such as date: 2026-06-01`,
    );
  }
  return null;
}

function isCalendarDay(date: string): boolean {
  try {
    decimalYear(date);
    return true;
  } catch {
    return false;
  }
}
