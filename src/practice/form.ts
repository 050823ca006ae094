/** A form of problem: which part of a scene is covered and what is asked about it. */

import type { Flag } from "../panel/index.ts";
import type { Scene, Situation } from "../scene/index.ts";
import type { Answer, AnswerKind, Tolerance } from "./answer.ts";
import type { Chance } from "./chance.ts";
import type { Functions } from "./functions.ts";
import type { SkillId } from "./skills.ts";
import type { World } from "./world.ts";

/** `choose` among options, or `tell` by typing, dialling or pointing. */
export const MODES = ["choose", "tell"] as const;
export type Mode = (typeof MODES)[number];

/** What the task says beside the pictures: "Cleared" "inbound on the Tamsel 246 radial". Never the answer. */
export interface Given {
  readonly label: string;
  readonly value: string;
}

/** One figure of a row to be filled. */
export interface Figure {
  readonly name: string;
  readonly label: string;
  readonly unit: string;
}

/** A picture that a problem shows, what it hides covered. */
export type ProblemView = "chart" | "panel";

/**
 * The scene as an answer has it: where the aircraft would be, how it would point, what the panel would show, if the answer were
 * right. Drawn beside the truth once the learner has answered.
 */
export interface Ghost {
  /** The true scene with what the answer changes, nothing covered. */
  readonly scene: Scene;
  /** Where the answer is a panel: what it would show. */
  readonly panel: { readonly flag: Flag; readonly needleDeg: number } | null;
  /** A sentence: "By this answer you would be here, on the 076 radial." */
  readonly says: string;
}

/** One drawn problem before its code: a scene with its cover, its truth by one route and by another. */
export interface Case {
  /** Covers and question (`ask`) set; the title says nothing of the answer. */
  readonly scene: Scene;
  readonly views: readonly ProblemView[];
  readonly given: readonly Given[];
  readonly tolerance: Tolerance;
  /** The form's whole vocabulary, in the order shown, where answers are words. */
  readonly words?: readonly string[];
  /** Where the case practises only some of the form's skills: those. */
  readonly skills?: readonly SkillId[];
  /** Where it differs from the form's: how many distinct wrong answers of slips this case needs. */
  readonly leastSlipAnswers?: 0 | 1 | 2;
  /** Further wrong answers on offer, that no idea leads to, where ideas alone would leave too few to choose from. */
  readonly also?: readonly Answer[];
  /** Where the answer is an order: the things to be ordered, as shown. */
  readonly items?: readonly { readonly letter: string; readonly text: string }[];
  /** Where the answer is a row. */
  readonly figures?: readonly Figure[];
  /** What is to be listened to: the receiver whose ident sounds. Null: nothing. */
  readonly listenTo?: string;
  /** What these functions work out; null where an idea leads to no answer here. */
  answer(functions: Functions): Answer | null;
  /** The truth again, straight from the resolved scene; null where the scene cannot serve (its station is not received). */
  check(situation: Situation): Answer | null;
  /** How the truth is reached, a sentence with numbers for each step. */
  steps(): readonly string[];
  ghost(answer: Answer): Ghost | null;
}

export interface Form {
  readonly id: string;
  /** For a menu: "Which radial?" */
  readonly title: string;
  readonly skills: readonly SkillId[];
  readonly modes: readonly Mode[];
  readonly answers: AnswerKind;
  /** How many distinct wrong answers of slips a problem needs: 1 where only two answers exist, 0 where no slip bears on it. */
  readonly leastSlipAnswers: 0 | 1 | 2;
  /** Minutes a prepared learner takes; our own judgement. */
  readonly minutes: number;
  /** A case of this form; null when the draw came out unfit: draw again. */
  draw(chance: Chance, world: World): Case | null;
}
