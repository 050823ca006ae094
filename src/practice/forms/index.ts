/** Every form of problem. */

import type { Form } from "../form.ts";
import { amIOn } from "./am-i-on.ts";
import { canHear } from "./can-hear.ts";
import { canUse } from "./can-use.ts";
import { centreCourse } from "./centre-course.ts";
import { checkVerdict } from "./check-verdict.ts";
import { clearanceCourse } from "./clearance-course.ts";
import { courseAfter } from "./course-after.ts";
import { cutHeading } from "./cut-heading.ts";
import { dmeForecast } from "./dme-forecast.ts";
import { dmeSpeedTrust } from "./dme-speed-trust.ts";
import { flagForecast } from "./flag-forecast.ts";
import { groundRange } from "./ground-range.ts";
import { groundSpeed } from "./ground-speed.ts";
import { handOverPoint } from "./hand-over-point.ts";
import { headingRange } from "./heading-range.ts";
import { hsiTurn } from "./hsi-turn.ts";
import { identMatch } from "./ident-match.ts";
import { legLog } from "./leg-log.ts";
import { lostOrder } from "./lost-order.ts";
import { measureRadial } from "./measure-radial.ts";
import { minutesOut } from "./minutes-out.ts";
import { nearStationAct } from "./near-station-act.ts";
import { needleForecast } from "./needle-forecast.ts";
import { nextCut } from "./next-cut.ts";
import { nextPanel } from "./next-panel.ts";
import type { FormId } from "./numbers.ts";
import { offByMiles } from "./off-by-miles.ts";
import { overheadOrAbeam } from "./overhead-or-abeam.ts";
import { placeDot } from "./place-dot.ts";
import { planHeading } from "./plan-heading.ts";
import { readRadial } from "./read-radial.ts";
import { rmiAfterTwist } from "./rmi-after-twist.ts";
import { rmiRadial } from "./rmi-radial.ts";
import { sideCall } from "./side-call.ts";
import { trackHeading } from "./track-heading.ts";
import { turnCall } from "./turn-call.ts";
import { twoLineFix } from "./two-line-fix.ts";
import { votReading } from "./vot-reading.ts";
import { windFromDrift } from "./wind-from-drift.ts";

/** In the order of menus: from reading the panel to whole procedures. */
export const FORMS: readonly (Form & { readonly id: FormId })[] = [
  needleForecast,
  flagForecast,
  sideCall,
  turnCall,
  readRadial,
  placeDot,
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
  canHear,
  canUse,
  amIOn,
  twoLineFix,
  headingRange,
  overheadOrAbeam,
  courseAfter,
  nearStationAct,
  nextCut,
  nextPanel,
  hsiTurn,
  rmiRadial,
  rmiAfterTwist,
  checkVerdict,
  votReading,
  handOverPoint,
  planHeading,
  windFromDrift,
  identMatch,
  legLog,
  lostOrder,
];

const BY_ID: ReadonlyMap<FormId, Form & { readonly id: FormId }> = new Map(
  FORMS.map((form) => [form.id, form]),
);

export function formOf(id: FormId): Form & { readonly id: FormId } {
  const form = BY_ID.get(id);
  if (form === undefined) throw new RangeError(`no form of problem is called ${id}`);
  return form;
}
