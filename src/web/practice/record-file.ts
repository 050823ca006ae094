/** A learner's record as a file: versioned JSON. What is no record is refused with a sentence, and changes nothing. */

import {
  type Confidence,
  type FormId,
  isFormId,
  isSlipId,
  type ProblemCode,
  type SlipId,
  type SlipOption,
} from "../../practice/index.ts";
import type { Answered, Cleared, PracticeEvent } from "./learner-record.ts";

export const RECORD_VERSION = 1;
export const RECORD_FILE = "needlework-practice.json";
const KIND = "needlework practice record";
/** Many years of practice. */
const LARGEST_CHARACTERS = 20_000_000;

export type RecordRead =
  | { readonly ok: true; readonly events: readonly PracticeEvent[] }
  /** One sentence. */
  | { readonly ok: false; readonly says: string };

/** An answer is written short, since there will be thousands. */
type Written = readonly [
  at: string,
  day: string,
  code: string,
  form: string,
  mode: string,
  optionCount: number,
  slipOptions: Readonly<Record<string, SlipOption>>,
  pick: number | "dont-know",
  confidence: Confidence | null,
  timeS: number,
  followUp: string | null,
];

export const recordText = (events: readonly PracticeEvent[]): string =>
  JSON.stringify({ kind: KIND, version: RECORD_VERSION, events: events.map(written) });

const written = (event: PracticeEvent): Written | readonly ["cleared", string, string, string] =>
  event.kind === "cleared"
    ? ["cleared", event.at, event.day, event.slip]
    : [
        event.at,
        event.day,
        event.code,
        event.form,
        event.item.mode,
        event.item.optionCount,
        event.item.slipOptions,
        event.pick,
        event.confidence,
        event.timeS,
        event.followUp,
      ];

/** Reads a record. Never throws. */
export function readRecord(text: string): RecordRead {
  const fault = (says: string): RecordRead => ({ ok: false, says });
  if (text.length > LARGEST_CHARACTERS) return fault("This file is too large for a record of practice.");
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    return fault("This file is no record of practice: choose one that “Take my record out” has made.");
  }
  if (!isRecord(value) || value.kind !== KIND || !Array.isArray(value.events))
    return fault("This file is no record of practice: choose one that “Take my record out” has made.");
  if (value.version !== RECORD_VERSION)
    return fault(
      `This record is of version ${String(value.version)}, and this bench reads version ${RECORD_VERSION}: open it with the bench that made it.`,
    );
  const events: PracticeEvent[] = [];
  for (const [at, one] of value.events.entries()) {
    const event = eventFrom(one);
    if (event === null)
      return fault(`Entry ${at + 1} of this record is spoilt, so none of it was taken in: take it out anew.`);
    events.push(event);
  }
  return { ok: true, events };
}

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === "object" && value !== null && !Array.isArray(value);

const isInstant = (value: unknown): value is string =>
  typeof value === "string" &&
  /^\d{4}-\d\d-\d\dT[\d:.]{8,12}Z$/.test(value) &&
  !Number.isNaN(Date.parse(value));
const isDay = (value: unknown): value is string =>
  typeof value === "string" && /^\d{4}-\d\d-\d\d$/.test(value) && !Number.isNaN(Date.parse(value));

function eventFrom(value: unknown): PracticeEvent | null {
  if (!Array.isArray(value)) return null;
  return value[0] === "cleared" ? clearedFrom(value) : answeredFrom(value);
}

function clearedFrom([, at, day, slip]: readonly unknown[]): Cleared | null {
  if (!isInstant(at) || !isDay(day) || typeof slip !== "string" || !isSlipId(slip)) return null;
  return { kind: "cleared", at, day, slip };
}

function answeredFrom(value: readonly unknown[]): Answered | null {
  const [at, day, code, form, mode, optionCount, slips, pick, confidence, timeS, followUp] = value;
  if (!isInstant(at) || !isDay(day)) return null;
  if (typeof code !== "string" || typeof form !== "string" || !isFormId(form)) return null;
  if (!/^[0-9A-Z]{3}-[0-9A-Z]{3}-[0-9A-Z]{3}$/.test(code)) return null;
  if (mode !== "choose" && mode !== "tell") return null;
  if (!isWhole(optionCount, 2, 99)) return null;
  const slipOptions = slipOptionsFrom(slips, optionCount);
  if (slipOptions === null) return null;
  if (pick !== "dont-know" && !isWhole(pick, 0, optionCount - 1)) return null;
  if (confidence !== null && confidence !== "sure" && confidence !== "think-so" && confidence !== "guess")
    return null;
  if (typeof timeS !== "number" || !(timeS >= 0 && timeS < 86_400)) return null;
  if (followUp !== null && !(typeof followUp === "string" && isSlipId(followUp))) return null;
  const item = { mode, optionCount, slipOptions } as const;
  return {
    kind: "answer",
    at,
    day,
    code: code as ProblemCode,
    form: form as FormId,
    item,
    pick,
    confidence,
    timeS,
    followUp,
  };
}

const isWhole = (value: unknown, least: number, most: number): value is number =>
  typeof value === "number" && Number.isInteger(value) && value >= least && value <= most;

function slipOptionsFrom(value: unknown, optionCount: number): Partial<Record<SlipId, SlipOption>> | null {
  if (!isRecord(value)) return null;
  const options: Partial<Record<SlipId, SlipOption>> = {};
  for (const [slip, option] of Object.entries(value)) {
    // An idea that another edition knows says nothing here.
    if (!isSlipId(slip)) continue;
    if (option !== "not-on-offer" && !isWhole(option, 1, optionCount - 1)) return null;
    options[slip] = option;
  }
  return options;
}
