/** What can be looked into at one go: parts of the course with at most twelve mistaken ideas each, and the whole course at once. */

import {
  FORMS,
  SKILL_BANDS,
  SKILLS,
  type SkillBand,
  type SkillId,
  SLIPS,
  type SlipId,
} from "../../practice/index.ts";

/** So many can be told apart in twenty problems. */
export const MOST_SLIPS_IN_SCOPE = 12;

export interface Scope {
  readonly id: string;
  readonly title: string;
  readonly skills: readonly SkillId[];
  readonly slips: readonly SlipId[];
}

/** Faces of their own, apart from the plain one, so that neither part has too many ideas. */
const OTHER_FACES: readonly SkillId[] = ["compass-card-panel", "pointer-panel"];

export const BAND_TITLES: Readonly<Record<SkillBand, string>> = {
  signal: "The signal",
  numbers: "Directions and norths",
  reading: "Reading the panel",
  position: "Finding your position",
  flying: "Flying the line",
  procedure: "Checks and planning",
};

const practised = (skills: readonly SkillId[]): boolean =>
  FORMS.some((form) => form.skills.some((skill) => skills.includes(skill)));

/** The ideas that stand in the way of these skills, the commonest first where there are too many. */
export function slipsOf(skills: readonly SkillId[], most = MOST_SLIPS_IN_SCOPE): readonly SlipId[] {
  const attached = SLIPS.filter((slip) => slip.skills.some((skill) => skills.includes(skill)));
  const kept = [...attached].sort((one, other) => other.base - one.base).slice(0, most);
  return attached.filter((slip) => kept.includes(slip)).map(({ id }) => id);
}

const scope = (id: string, title: string, skills: readonly SkillId[], most?: number): Scope => ({
  id,
  title,
  skills,
  slips: slipsOf(skills, most),
});

export const WHOLE_COURSE = "whole-course";

/** In teaching order, the whole course last. Those that no problem practises are left out. */
export const SCOPES: readonly Scope[] = [
  ...SKILL_BANDS.map((band) =>
    scope(
      band,
      BAND_TITLES[band],
      SKILLS.filter((skill) => skill.band === band && !OTHER_FACES.includes(skill.id)).map(({ id }) => id),
    ),
  ),
  scope("other-faces", "HSI and RMI", OTHER_FACES),
  scope(
    WHOLE_COURSE,
    "The whole course",
    SKILLS.map(({ id }) => id),
    SLIPS.length,
  ),
].filter(({ skills, slips }) => slips.length > 0 && practised(skills));

export const scopeOf = (id: string): Scope | null => SCOPES.find((known) => known.id === id) ?? null;
