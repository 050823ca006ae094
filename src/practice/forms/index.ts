/** Every form of problem. */

import type { Form } from "../form.ts";
import { clearanceCourse } from "./clearance-course.ts";
import { cutHeading } from "./cut-heading.ts";
import { dmeForecast } from "./dme-forecast.ts";
import { dmeSpeedTrust } from "./dme-speed-trust.ts";
import { groundRange } from "./ground-range.ts";
import { groundSpeed } from "./ground-speed.ts";
import { minutesOut } from "./minutes-out.ts";
import { nextCut } from "./next-cut.ts";
import type { FormId } from "./numbers.ts";
import { readRadial } from "./read-radial.ts";
import { trackHeading } from "./track-heading.ts";

/** In the order of menus: from reading the panel to whole procedures. */
export const FORMS: readonly (Form & { readonly id: FormId })[] = [
  readRadial,
  clearanceCourse,
  cutHeading,
  trackHeading,
  groundSpeed,
  groundRange,
  dmeForecast,
  dmeSpeedTrust,
  minutesOut,
  nextCut,
];

const BY_ID: ReadonlyMap<FormId, Form & { readonly id: FormId }> = new Map(
  FORMS.map((form) => [form.id, form]),
);

export function formOf(id: FormId): Form & { readonly id: FormId } {
  const form = BY_ID.get(id);
  if (form === undefined) throw new RangeError(`no form of problem is called ${id}`);
  return form;
}
