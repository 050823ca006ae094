/** What may be said of a learner: where each skill stands, and which ideas are to be named. Pure. */

import {
  isRight,
  SKILL_IDS,
  type SkillId,
  type SlipId,
  type Standing,
  standing,
} from "../../practice/index.ts";
import { believedOf, presentOf, scopeSlips } from "./beliefs.ts";
import { itemAnswer, type Learnt, slipsOfSkill } from "./learner-record.ts";
import type { Run } from "./run.ts";

/** How likely the ideas in the way of a skill are held, by skill; a skill that was never asked has none. */
export type Path = Readonly<Partial<Record<SkillId, Readonly<Partial<Record<SlipId, number>>>>>>;

/** Each skill judged over its own ideas alone: few, so that right answers clear them soon. */
export function pathOf({ learnt }: Pick<SumWish, "learnt">): Path {
  const path: Partial<Record<SkillId, Readonly<Partial<Record<SlipId, number>>>>> = {};
  for (const skill of SKILL_IDS)
    if (learnt.skills[skill] !== undefined) {
      const slips = slipsOfSkill(skill);
      path[skill] = slips.length === 0 ? {} : believedOf(presentOf(learnt.events, slips)).slips;
    }
  return path;
}

/** What may be said of the learner over the ideas of a run. */
export interface Sum {
  readonly standing: Standing<SlipId>;
  readonly path: Path;
}

export interface SumWish {
  readonly run: Run;
  readonly learnt: Learnt;
}

/** An idea is named only where some answer has followed it: what is merely common is nobody's yet. */
export function sumUp({ run, learnt }: SumWish): Sum {
  const slips = scopeSlips(
    run.plan,
    run.turns.map(({ form }) => form),
  );
  const answers = learnt.events.flatMap((event) =>
    event.kind === "answer" && (event.followUp === null || !isRight(itemAnswer(event))) ? [event] : [],
  );
  const history = answers.map((event) => ({ form: event.form, item: event.item, answer: itemAnswer(event) }));
  const stands = standing(presentOf(learnt.events, slips), history);
  const followed = (slip: SlipId): boolean =>
    answers.some(({ item, pick }) => pick !== 0 && item.slipOptions[slip] === pick);
  return {
    path: pathOf({ learnt }),
    standing:
      stands.kind === "just-guessing"
        ? stands
        : {
            kind: "slips",
            slips: stands.slips.map((one) =>
              (one.standing === "likely" || one.standing === "maybe") && !followed(one.slip)
                ? { slip: one.slip, standing: "open" }
                : one,
            ),
          },
  };
}
