/** The one thing a learner does next, in words. */

import type { Standing } from "../diagnosis/index.ts";
import { type ProblemSet, skillsOf } from "../problem-set.ts";
import { SKILLS, type SkillId, skillOf } from "../skills.ts";
import { type SlipId, slipOf } from "../slips.ts";
import type { AnsweredRow } from "./mark-row.ts";

export function nextThing(
  set: ProblemSet,
  answered: readonly AnsweredRow[],
  stands: Standing<SlipId>,
): string {
  if (stands.kind === "just-guessing") {
    const back = stepBack(set);
    return back === null
      ? "The answers look like guesses: go through worked problems together."
      : `The answers look like guesses: go back to “${skillOf(back).title}”.`;
  }
  const named = (word: "likely" | "maybe"): SlipId | undefined =>
    stands.slips.find((slip) => slip.standing === word)?.slip;
  const likely = named("likely");
  if (likely !== undefined) return slipOf(likely).remedy;
  const maybe = named("maybe");
  if (maybe !== undefined) return `Ask another problem about “${slipOf(maybe).name}” before teaching it.`;
  const notRight = answered.filter(({ marked }) => marked.verdict !== "right");
  const [first] = notRight;
  if (first !== undefined) {
    const numbers = notRight.map(({ marked }) =>
      marked.number === null ? marked.code : String(marked.number),
    );
    const which = numbers.length === 1 ? `problem ${numbers[0]}` : `problems ${numbers.join(", ")}`;
    const why = notRight.every(({ marked }) => marked.verdict === "dont-know")
      ? "Not known yet"
      : "No one idea explains what went wrong";
    return `${why}: go through the steps of ${which} in the key.`;
  }
  if (answered.length < set.problems.length) return "All right so far: answer the rest of the set.";
  const onward = nextSkill(set);
  return onward === null ? "All right: fly it." : `All right: go on to “${skillOf(onward).title}”.`;
}

/** What most problems of the set build on and do not practise themselves: where to go back to. The later step where equal. */
export function stepBack(set: ProblemSet): SkillId | null {
  const practised = skillsOf(set);
  const counts = new Map<SkillId, number>();
  for (const { form } of set.problems) {
    const needed = new Set(form.skills.flatMap((id) => skillOf(id).needs));
    for (const need of needed) if (!practised.includes(need)) counts.set(need, (counts.get(need) ?? 0) + 1);
  }
  const most = Math.max(...counts.values());
  return SKILLS.findLast(({ id }) => counts.get(id) === most)?.id ?? null;
}

/** What builds on the skills of most problems of the set and is not practised by it: where to go on to. The earlier step where equal. */
export function nextSkill(set: ProblemSet): SkillId | null {
  const practised = skillsOf(set);
  const counts = SKILLS.filter(({ id }) => !practised.includes(id)).map(({ id, needs }) => ({
    id,
    count: set.problems.filter(({ form }) => needs.some((need) => form.skills.includes(need))).length,
  }));
  const most = Math.max(1, ...counts.map(({ count }) => count));
  return counts.find(({ count }) => count === most)?.id ?? null;
}
