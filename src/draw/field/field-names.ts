/** The kinds of field by name, as the button and its panel call them. */

import type { FieldKind } from "./field-choice.ts";

export const KIND_NAMES: Readonly<Record<FieldKind, string>> = {
  needle: "Needle",
  "to-from": "TO and FROM",
  reception: "Reception",
  fix: "Cross fix",
};
