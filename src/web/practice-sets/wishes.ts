/** What an instructor wishes for, as the form holds it: texts until they can be read. Pure. */

import {
  isSkillId,
  isSlipId,
  MODES,
  MOST_PROBLEMS,
  type Mode,
  type SkillId,
  type SlipId,
  type Wishes,
} from "../../practice/index.ts";

export interface WishForm {
  readonly title: string;
  readonly note: string;
  readonly skills: readonly SkillId[];
  readonly slips: readonly SlipId[];
  readonly count: string;
  readonly seed: string;
  readonly mode: Mode;
}

export const FIRST_WISHES: WishForm = {
  title: "",
  note: "",
  skills: [],
  slips: [],
  count: "10",
  seed: "1",
  mode: "choose",
};

const MOST_WISHED_SEED = 2 ** 32 - 1;

/** The wishes to build a set from, or one sentence on what to mend. */
export function wishesOf(form: WishForm): Wishes | string {
  const count = wholeNumber(form.count);
  if (count === null || count < 1 || count > MOST_PROBLEMS)
    return `“${form.count}” is no number of problems: write 1 to ${MOST_PROBLEMS}.`;
  const seed = wholeNumber(form.seed);
  if (seed === null || seed > MOST_WISHED_SEED)
    return `“${form.seed}” is no seed: write a whole number, such as 1; another number gives other problems.`;
  return {
    title: form.title.trim() === "" ? "Problems" : form.title.trim(),
    note: form.note.trim(),
    skills: form.skills,
    slips: form.slips,
    count,
    seed,
    mode: form.mode,
  };
}

const wholeNumber = (text: string): number | null => (/^\d{1,10}$/.test(text.trim()) ? Number(text) : null);

/** With one skill or slip more or less. */
export const toggled = <T>(list: readonly T[], one: T): readonly T[] =>
  list.includes(one) ? list.filter((other) => other !== one) : [...list, one];

/** What was kept in the browser; the first wishes where it cannot be read. */
export function readWishForm(kept: unknown): WishForm {
  if (typeof kept !== "object" || kept === null) return FIRST_WISHES;
  const fields = kept as Readonly<Record<string, unknown>>;
  const text = (name: "title" | "note" | "count" | "seed"): string => {
    const value = fields[name];
    return typeof value === "string" ? value : FIRST_WISHES[name];
  };
  const list = (value: unknown): readonly string[] =>
    Array.isArray(value) ? value.filter((one) => typeof one === "string") : [];
  return {
    title: text("title"),
    note: text("note"),
    count: text("count"),
    seed: text("seed"),
    skills: list(fields.skills).filter(isSkillId),
    slips: list(fields.slips).filter(isSlipId),
    mode: MODES.find((mode) => mode === fields.mode) ?? FIRST_WISHES.mode,
  };
}
