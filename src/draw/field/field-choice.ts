/** Which needle field the chart wears, if any. Plain data; what a scene no longer has or has covered is not shown. */

import { AIRBORNE_CHECK_ERROR_DEG, GROUND_CHECK_ERROR_DEG } from "../../panel/index.ts";
import { type CoverPart, isCovered, type Scene } from "../../scene/index.ts";

export const FIELD_KINDS = ["needle", "to-from", "reception", "fix"] as const;
export type FieldKind = (typeof FIELD_KINDS)[number];

/** Null: no field. */
export type FieldChoice = FieldShown | null;
export interface FieldShown {
  readonly kind: FieldKind;
  /** Whose needle, flag or reception; of a fix the first. */
  readonly receiver: string;
  /** The second receiver of a fix; the others leave it alone. */
  readonly other: string;
  /** What each bearing of a fix may be out by, degrees. */
  readonly allowedErrorDeg: number;
}

/** A choice as text, for what is kept. */
export const fieldText = (choice: FieldChoice): string => JSON.stringify(choice);

/** The choice out of such a text; null where it is none, or spoilt. */
export function fieldFrom(text: string): FieldChoice {
  let stored: unknown;
  try {
    stored = JSON.parse(text);
  } catch {
    return null;
  }
  if (typeof stored !== "object" || stored === null) return null;
  const { kind, receiver, other, allowedErrorDeg }: Partial<Record<keyof FieldShown, unknown>> = stored;
  const known = FIELD_KINDS.find((each) => each === kind);
  if (known === undefined || typeof receiver !== "string" || typeof other !== "string") return null;
  const allowed = [GROUND_CHECK_ERROR_DEG, AIRBORNE_CHECK_ERROR_DEG].find((each) => each === allowedErrorDeg);
  return { kind: known, receiver, other, allowedErrorDeg: allowed ?? GROUND_CHECK_ERROR_DEG };
}

/** A choice that the scene can show: names it does not have give way to the ones it has; a fix wants two receivers. */
export function choiceFor(scene: Scene, choice: FieldChoice): FieldChoice {
  if (choice === null) return null;
  const names = scene.receivers.map(({ name }) => name);
  const receiver = names.includes(choice.receiver) ? choice.receiver : names[0];
  if (receiver === undefined || (choice.kind === "fix" && names.length < 2)) return null;
  const others = names.filter((name) => name !== receiver);
  const other = others.includes(choice.other) ? choice.other : (others[0] ?? receiver);
  return receiver === choice.receiver && other === choice.other ? choice : { ...choice, receiver, other };
}

/** A field of this kind, of the receiver attended to. */
export const newChoice = (kind: FieldKind, receiver: string): FieldShown => ({
  kind,
  receiver,
  other: "",
  allowedErrorDeg: GROUND_CHECK_ERROR_DEG,
});

/** What of a receiver each kind of field gives away. */
const SHOWS: Readonly<Record<FieldKind, readonly CoverPart[]>> = {
  needle: ["frequency", "ident", "course", "needle", "flag"],
  "to-from": ["frequency", "ident", "course", "flag"],
  reception: ["frequency", "ident"],
  fix: ["frequency", "ident"],
};

/** What the scene has covered that the field would show, as the cover says it; null when nothing is in the way. */
export function coverOver({ covers }: Scene, { kind, receiver, other }: FieldShown): string | null {
  if (isCovered(covers, null, "chart")) return "chart";
  const readsPanel = kind === "needle" || kind === "to-from";
  if (readsPanel && isCovered(covers, null, "panel")) return "panel";
  for (const name of kind === "fix" ? [receiver, other] : [receiver]) {
    if (covers.includes(name)) return name;
    for (const part of SHOWS[kind]) if (isCovered(covers, name, part)) return `${name} ${part}`;
  }
  return null;
}
