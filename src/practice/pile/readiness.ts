/** Whether a class may go on to what builds on the set it has answered. One pile is one day's work: secure, not yet mastered. */

import { afterSkillAnswer, NEW_SKILL_RECORD, type SkillRecord, skillStanding } from "../diagnosis/index.ts";
import { type ProblemSet, skillsOf } from "../problem-set.ts";
import { type SkillId, skillOf } from "../skills.ts";
import { SLIPS, type SlipId } from "../slips.ts";
import { type AnsweredRow, sheetItems } from "./mark-row.ts";
import { nextSkill } from "./next-thing.ts";

export interface Readiness {
  /** What the class might go on to. */
  readonly skill: SkillId;
  /** What it builds on and the set practises. */
  readonly practised: readonly SkillId[];
  /** What it builds on besides: this pile says nothing of it. */
  readonly notAsked: readonly SkillId[];
  /** Learners who are secure in all that is practised, by this pile. */
  readonly ready: number;
  readonly isReady: boolean;
  /** Whether the set asks enough of it for someone with every answer right to be called secure. */
  readonly isAskedEnough: boolean;
}

/** What one learner answered, and how likely he holds each idea of the scope, 0..1. */
export interface LearnerEvidence {
  readonly answered: readonly Pick<AnsweredRow, "logged" | "item">[];
  readonly beliefs: ReadonlyMap<SlipId, number>;
}

/** Of a class, from here on it is ready to go on. Our own judgement. */
const READY_FROM = 0.8;
/** All answers of a pile count as given on one day. */
const DAY = "one day";

/** Null where no skill builds on what the set practises. */
export function readinessOf(set: ProblemSet, learners: readonly LearnerEvidence[]): Readiness | null {
  const skills = skillsOf(set);
  const skill = nextSkill(set);
  if (skill === null) return null;
  const { needs } = skillOf(skill);
  const practised = needs.filter((need) => skills.includes(need));
  const isReady = (learner: LearnerEvidence): boolean => practised.every((need) => isSecure(learner, need));
  const ready = learners.filter(isReady).length;
  return {
    skill,
    practised,
    notAsked: needs.filter((need) => !practised.includes(need)),
    ready,
    isReady: learners.length > 0 && ready >= READY_FROM * learners.length,
    isAskedEnough: isReady(allRight(set)),
  };
}

function isSecure({ answered, beliefs }: LearnerEvidence, skill: SkillId): boolean {
  const slips = SLIPS.filter((slip) => (slip.skills as readonly SkillId[]).includes(skill)).map(
    ({ id }) => id,
  );
  const record = answered
    .filter(({ item }) => item.problem.form.skills.includes(skill))
    .reduce(
      (so: SkillRecord, { logged }) => afterSkillAnswer(so, slips, { ...logged, day: DAY }),
      NEW_SKILL_RECORD,
    );
  const left = slips.map((slip) => ({ slip, belief: beliefs.get(slip) ?? 0 }));
  return skillStanding(record, left, null).standing !== "not-yet";
}

/** Someone who has the whole set right and holds no idea. */
function allRight(set: ProblemSet): LearnerEvidence {
  const itemNamed = sheetItems(set);
  const answered = set.problems.flatMap(({ code, form }) => {
    const item = itemNamed(code);
    if (typeof item === "string") return [];
    const answer = { pick: 0, confidence: null };
    return [{ item, logged: { learner: "", form: form.id, item: item.evidence.item, answer, timeS: null } }];
  });
  return { answered, beliefs: new Map() };
}
