/** Every form of problem. */

import type { Form } from "../form.ts";
import { clearanceCourse } from "./clearance-course.ts";
import type { FormId } from "./numbers.ts";
import { readRadial } from "./read-radial.ts";

/** In the order of menus: from reading the panel to whole procedures. */
export const FORMS: readonly (Form & { readonly id: FormId })[] = [readRadial, clearanceCourse];

const BY_ID: ReadonlyMap<FormId, Form & { readonly id: FormId }> = new Map(
  FORMS.map((form) => [form.id, form]),
);

export function formOf(id: FormId): Form & { readonly id: FormId } {
  const form = BY_ID.get(id);
  if (form === undefined) throw new RangeError(`no form of problem is called ${id}`);
  return form;
}
