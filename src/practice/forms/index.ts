/** Every form of problem. */

import type { Form } from "../form.ts";
import { centreCourse } from "./centre-course.ts";
import { clearanceCourse } from "./clearance-course.ts";
import { cutHeading } from "./cut-heading.ts";
import { dmeForecast } from "./dme-forecast.ts";
import { dmeSpeedTrust } from "./dme-speed-trust.ts";
import { flagForecast } from "./flag-forecast.ts";
import { groundRange } from "./ground-range.ts";
import { groundSpeed } from "./ground-speed.ts";
import { hsiTurn } from "./hsi-turn.ts";
import { measureRadial } from "./measure-radial.ts";
import { minutesOut } from "./minutes-out.ts";
import { needleForecast } from "./needle-forecast.ts";
import { nextCut } from "./next-cut.ts";
import type { FormId } from "./numbers.ts";
import { offByMiles } from "./off-by-miles.ts";
import { readRadial } from "./read-radial.ts";
import { rmiAfterTwist } from "./rmi-after-twist.ts";
import { rmiRadial } from "./rmi-radial.ts";
import { sideCall } from "./side-call.ts";
import { trackHeading } from "./track-heading.ts";
import { turnCall } from "./turn-call.ts";

/** In the order of menus: from reading the panel to whole procedures. */
export const FORMS: readonly (Form & { readonly id: FormId })[] = [
  needleForecast,
  flagForecast,
  sideCall,
  turnCall,
  readRadial,
  measureRadial,
  centreCourse,
  clearanceCourse,
  cutHeading,
  trackHeading,
  groundSpeed,
  offByMiles,
  groundRange,
  dmeForecast,
  dmeSpeedTrust,
  minutesOut,
  nextCut,
  hsiTurn,
  rmiRadial,
  rmiAfterTwist,
];

const BY_ID: ReadonlyMap<FormId, Form & { readonly id: FormId }> = new Map(
  FORMS.map((form) => [form.id, form]),
);

export function formOf(id: FormId): Form & { readonly id: FormId } {
  const form = BY_ID.get(id);
  if (form === undefined) throw new RangeError(`no form of problem is called ${id}`);
  return form;
}
