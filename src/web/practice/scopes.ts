/** What can be looked into at one go: parts of the course with at most twelve mistaken ideas each, and the whole course at once. */

import { FORMS, SKILLS, type SkillBand, type SkillId, SLIPS, type SlipId } from "../../practice/index.ts";

/** So many can be told apart in twenty problems. */
export const MOST_SLIPS_IN_SCOPE = 12;

export interface Scope {
  readonly id: string;
  readonly title: string;
  readonly skills: readonly SkillId[];
  readonly slips: readonly SlipId[];
}

/** Parts of their own inside a band, so that none has too many ideas. */
const OTHER_FACES: readonly SkillId[] = ["compass-card-panel", "pointer-panel"];
const JOINING: readonly SkillId[] = ["in-or-out-course", "cut-the-line", "lead-the-roll-out"];

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

/** The ideas that stand in the way of these skills. */
export const slipsOf = (skills: readonly SkillId[]): readonly SlipId[] =>
  SLIPS.filter((slip) => slip.skills.some((skill) => skills.includes(skill))).map(({ id }) => id);

const scope = (id: string, title: string, skills: readonly SkillId[]): Scope => ({
  id,
  title,
  skills,
  slips: slipsOf(skills),
});

const ofBand = (band: SkillBand): readonly SkillId[] =>
  SKILLS.filter((skill) => skill.band === band).map(({ id }) => id);
const but = (skills: readonly SkillId[], apart: readonly SkillId[]): readonly SkillId[] =>
  skills.filter((skill) => !apart.includes(skill));

export const WHOLE_COURSE = "whole-course";

/** In teaching order, the whole course last. Those that no problem practises are left out. */
export const SCOPES: readonly Scope[] = [
  scope("signal", BAND_TITLES.signal, ofBand("signal")),
  scope("numbers", BAND_TITLES.numbers, ofBand("numbers")),
  scope("reading", BAND_TITLES.reading, but(ofBand("reading"), OTHER_FACES)),
  scope("other-faces", "HSI and RMI", OTHER_FACES),
  scope("position", BAND_TITLES.position, ofBand("position")),
  scope("joining", "Joining a line", JOINING),
  scope("wind-and-passage", "Wind and station passage", but(ofBand("flying"), JOINING)),
  scope("procedure", BAND_TITLES.procedure, ofBand("procedure")),
  scope(
    WHOLE_COURSE,
    "The whole course",
    SKILLS.map(({ id }) => id),
  ),
].filter(({ skills, slips }) => slips.length > 0 && practised(skills));

export const scopeOf = (id: string): Scope | null => SCOPES.find((known) => known.id === id) ?? null;
