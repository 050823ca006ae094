/** What is said to a learner: where skills stand, what a run is, what was found. No percentages, no ranking. */

import {
  FORMS,
  NEW_SKILL_RECORD,
  type NextThing,
  type ReviewCard,
  reviewsOfDay,
  SKILLS,
  type Skill,
  type SkillId,
  type SkillStanding,
  type SlipId,
  skillOf,
  skillStanding,
  slipOf,
} from "../../practice/index.ts";
import { type Learnt, slipsOfSkill } from "./learner-record.ts";
import type { Plan } from "./run.ts";
import { scopeOf, WHOLE_COURSE } from "./scopes.ts";
import type { Path } from "./sum-up.ts";

/** Where a skill stands for this learner. `flown`: no problem practises it, it is flown. */
export type SkillPlace = SkillStanding | "locked" | "flown";

export interface SkillRow {
  readonly skill: Skill;
  readonly place: SkillPlace;
  /** The skills that come first; empty but where it is locked. */
  readonly first: readonly SkillId[];
  readonly begun: boolean;
}

export const isPractised = (skill: SkillId): boolean =>
  FORMS.some((form) => (form.skills as readonly SkillId[]).includes(skill));

const standsIn = (learnt: Learnt, skill: SkillId, path: Path) =>
  skillStanding(
    learnt.skills[skill] ?? NEW_SKILL_RECORD,
    slipsOfSkill(skill).map((slip) => ({ slip, belief: path[skill]?.[slip] ?? 0 })),
    null,
  );

/** The one thing to do next for a skill. */
export const nextThing = (learnt: Learnt, skill: SkillId, path: Path): NextThing<SlipId> =>
  standsIn(learnt, skill, path).next;

/** Every skill in teaching order. One that no problem practises locks nothing. */
export function skillRows(learnt: Learnt, path: Path): readonly SkillRow[] {
  const standings = new Map(SKILLS.map(({ id }) => [id, standsIn(learnt, id, path).standing]));
  const isOpen = (id: SkillId): boolean => standings.get(id) !== "not-yet" || !isPractised(id);
  return SKILLS.map((skill) => {
    const first = skill.needs.filter((need) => !isOpen(need));
    const standing = standings.get(skill.id) ?? "not-yet";
    const begun = learnt.skills[skill.id] !== undefined;
    const place: SkillPlace = !isPractised(skill.id)
      ? "flown"
      : standing === "not-yet" && first.length > 0 && !begun
        ? "locked"
        : standing;
    return { skill, place, first: place === "locked" ? first : [], begun };
  });
}

export function placeWords({ place, first, begun }: SkillRow): string {
  switch (place) {
    case "mastered":
      return "mastered";
    case "secure-today":
      return "secure today";
    case "locked":
      return `locked: first “${first.map((id) => skillOf(id).title).join("” and “")}”`;
    case "flown":
      return "flown, not practised here";
    case "not-yet":
      return begun ? "begun" : "open";
  }
}

export const dueToday = (learnt: Learnt, today: number): readonly ReviewCard[] => {
  const done = learnt.cards.filter(({ lastDay, reviews }) => lastDay === today && reviews > 1).length;
  return reviewsOfDay(learnt.cards, today, done);
};

/** What a run is called. */
export function planTitle(plan: Plan): string {
  switch (plan.kind) {
    case "find":
      return plan.scope === WHOLE_COURSE
        ? "What am I missing? A first look at the whole course"
        : `What am I missing? ${scopeOf(plan.scope)?.title ?? ""}`;
    case "skill":
      return skillOf(plan.skill).title;
    case "review":
      return "Reviews due today";
    case "set":
      if (plan.title !== "") return plan.title;
      return plan.codes.length === 1 ? `Problem ${plan.codes[0]}` : "Problems";
  }
}

/** `named`: the ideas that the learner has just been told of; no other is named here. */
export function nextWords(next: NextThing<SlipId>, named: readonly SlipId[]): string {
  switch (next.kind) {
    case "answer-another":
      return "Practise it again: a few more right answers make it secure.";
    case "answer-in-another-form":
      return "Practise it once more, in another kind of problem.";
    case "clear-up":
      return named.includes(next.slip)
        ? `Clear up “${slipOf(next.slip).name}” first: then this skill can become secure.`
        : "Practise it again: a few more right answers make it secure.";
    case "fly-an-exercise":
      return "Fly it.";
    case "come-back-another-day":
      return "Secure today. Come back another day: what is right then too is mastered.";
    case "review-when-due":
      return "Mastered. It comes back among your reviews when it is due.";
  }
}
