/** Unfinished runs as text in the browser's store. What is spoilt is left out: its answers are in the record. */

import { isFormId, isSkillId, isSlipId, type SlipId } from "../../practice/index.ts";
import type { Asked, Plan, Run, Turn } from "./run.ts";

const VERSION = 1;
/** Runs that wait to be gone on with. */
export const MOST_RUNS = 6;

export const runsText = (runs: readonly Run[]): string => JSON.stringify({ version: VERSION, runs });

/** The runs of a stored text, none where it makes no sense. Never throws. */
export function readRuns(text: string | null): readonly Run[] {
  if (text === null) return [];
  try {
    const stored: unknown = JSON.parse(text);
    if (!isRecord(stored) || stored.version !== VERSION || !Array.isArray(stored.runs)) return [];
    return stored.runs.filter(isRun).slice(0, MOST_RUNS);
  } catch {
    return [];
  }
}

type Fields = Readonly<Record<string, unknown>>;
const isRecord = (value: unknown): value is Fields =>
  typeof value === "object" && value !== null && !Array.isArray(value);
const isText = (value: unknown): value is string => typeof value === "string";
const isTexts = (value: unknown): value is readonly string[] => Array.isArray(value) && value.every(isText);
const isNumber = (value: unknown): value is number => typeof value === "number" && Number.isFinite(value);
const isSlip = (value: unknown): value is SlipId => isText(value) && isSlipId(value);

const isRun = (value: unknown): value is Run =>
  isRecord(value) &&
  isPlan(value.plan) &&
  isText(value.startedAt) &&
  Array.isArray(value.turns) &&
  value.turns.every(isTurn) &&
  (value.asked === null || isAsked(value.asked)) &&
  typeof value.isOver === "boolean";

function isPlan(value: unknown): value is Plan {
  if (!isRecord(value)) return false;
  switch (value.kind) {
    case "find":
      return isText(value.scope);
    case "skill":
      return isText(value.skill) && isSkillId(value.skill);
    case "review":
      return isTexts(value.cards);
    case "set":
      return isTexts(value.codes) && [value.title, value.note, value.link].every(isText);
    default:
      return false;
  }
}

const isTurn = (value: unknown): value is Turn =>
  isRecord(value) &&
  [value.code, value.place].every(isText) &&
  isText(value.form) &&
  isFormId(value.form) &&
  ["right", "wrong", "dont-know"].includes(String(value.verdict)) &&
  Array.isArray(value.slips) &&
  value.slips.every(isSlip) &&
  (value.followUp === null || isSlip(value.followUp)) &&
  isNumber(value.timeS);

const isAsked = (value: unknown): value is Asked =>
  isRecord(value) &&
  [value.code, value.draft].every(isText) &&
  isRecord(value.believed) &&
  isRecord(value.believed.slips) &&
  Object.entries(value.believed.slips).every(([slip, held]) => isSlip(slip) && isNumber(held)) &&
  typeof value.believed.guessing === "boolean" &&
  (value.followUp === null || isSlip(value.followUp)) &&
  [null, "sure", "think-so", "guess"].includes(value.confidence as null) &&
  [null, "answer", "dont-know"].includes(value.given as null) &&
  isNumber(value.timeS);
