/** What is believed of a learner over the ideas of a run, from all he has answered. Pure. */

import {
  afterAnswer,
  afterRemedy,
  atNextSession,
  type Belief,
  FORMS,
  type FormId,
  fires,
  hypothesisSpace,
  isRight,
  priorBelief,
  type SlipId,
  slipBeliefs,
  slipOf,
  unsettledBelief,
  withNeeds,
} from "../../practice/index.ts";
import { itemAnswer, type PracticeEvent, slipsOfSkill } from "./learner-record.ts";
import type { Believed, Plan } from "./run.ts";
import { MOST_SLIPS_IN_SCOPE, scopeOf, slipsOf } from "./scopes.ts";

const GUESSING_FROM = 0.5;
/** Answers older than these say little of today. */
const EVENTS_LOOKED_BACK = 400;

/** The ideas told apart in a run. */
export function scopeSlips(plan: Plan, formsAsked: readonly FormId[] = []): readonly SlipId[] {
  switch (plan.kind) {
    case "find":
      return scopeOf(plan.scope)?.slips ?? [];
    case "skill": {
      const own = slipsOfSkill(plan.skill);
      const needed = slipsOf(withNeeds([plan.skill])).filter((slip) => !own.includes(slip));
      return [...own, ...needed].slice(0, MOST_SLIPS_IN_SCOPE);
    }
    case "review":
    case "set":
      return slipsOf(FORMS.filter(({ id }) => formsAsked.includes(id)).flatMap(({ skills }) => skills));
  }
}

const baseOf = (slips: readonly SlipId[]) => slips.map((id) => ({ id, base: slipOf(id).base }));

/** What is believed once an event has happened; before the first where there is none. */
export interface BeliefAfter {
  readonly event: PracticeEvent | null;
  readonly belief: Belief<SlipId>;
}

/** What is believed before and after each event that speaks of the scope; the last is the present. */
export function beliefsThrough(
  events: readonly PracticeEvent[],
  slips: readonly SlipId[],
): readonly BeliefAfter[] {
  let belief = priorBelief(hypothesisSpace(baseOf(slips)));
  const through: BeliefAfter[] = [{ event: null, belief }];
  let day: string | null = null;
  for (const event of events.slice(-EVENTS_LOOKED_BACK)) {
    if (event.kind !== "answer" || !slips.some((slip) => fires(event.item, slip))) continue;
    if (day !== null && event.day !== day) belief = atNextSession(belief);
    day = event.day;
    const answer = itemAnswer(event);
    if (event.followUp !== null && isRight(answer))
      belief = slips.includes(event.followUp) ? afterRemedy(belief, event.followUp) : belief;
    else belief = afterAnswer(belief, event.item, answer);
    through.push({ event, belief });
  }
  return through;
}

export const presentOf = (events: readonly PracticeEvent[], slips: readonly SlipId[]): Belief<SlipId> =>
  beliefsThrough(events, slips).at(-1)?.belief ?? priorBelief(hypothesisSpace(baseOf(slips)));

export function believedOf(belief: Belief<SlipId>): Believed {
  const held = slipBeliefs(belief);
  const slips: Partial<Record<SlipId, number>> = {};
  belief.space.slips.forEach((slip, at) => {
    slips[slip] = Math.round((held[at] ?? 0) * 1000) / 1000;
  });
  return { slips, guessing: unsettledBelief(belief) >= GUESSING_FROM };
}
