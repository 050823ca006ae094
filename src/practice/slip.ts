/** A slip: a mistaken idea written as executable physics. It takes a scene and gives the wrong answer that this idea leads to. */

import type { Patch } from "./functions.ts";
import type { SkillId } from "./skills.ts";

export interface Slip {
  readonly id: string;
  /** In plain words, as the learner holds it: "The needle shows where I am". */
  readonly name: string;
  /** What is so, in a sentence that refutes it. */
  readonly refutation: string;
  /** What to show a class. */
  readonly remedy: string;
  /** The skills it stands in the way of. */
  readonly skills: readonly SkillId[];
  /** How likely it is before anything is known of the learner. Our own judgement, to be set by class data. */
  readonly base: number;
  /** A handbook warns of it, an instructor's list of usual errors has it (from memory), or it is our own. */
  readonly origin: "published" | "listed" | "own";
  readonly patch: Patch;
}
