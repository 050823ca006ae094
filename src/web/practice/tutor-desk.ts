/** What the page asks of the tutor and what it answers, as plain data that can go to a worker and back. */

import { practiceWorld, type World } from "../../practice/index.ts";
import { type Path, pathOf, type Sum, type SumWish, sumUp } from "./sum-up.ts";
import { chooseNext, type Next, type NextWish, type SecondWish, secondPrediction } from "./tutor.ts";

/** Where problems are set, without what cannot be sent. */
export type Ground = Pick<World, "name" | "date" | "stations" | "land">;

export const groundOf = ({ name, date, stations, land }: World): Ground => ({ name, date, stations, land });

export interface TutorAnswers {
  readonly next: { readonly wish: NextWish; readonly reply: Next };
  readonly second: { readonly wish: SecondWish; readonly reply: Next };
  readonly path: { readonly wish: Pick<SumWish, "learnt">; readonly reply: Path };
  readonly sum: { readonly wish: SumWish; readonly reply: Sum };
}
export type TutorTask = keyof TutorAnswers;

export interface TutorOrder<T extends TutorTask = TutorTask> {
  readonly order: number;
  readonly ground: Ground;
  readonly task: T;
  readonly wish: TutorAnswers[T]["wish"];
}

export interface TutorReply {
  readonly order: number;
  readonly reply: TutorAnswers[TutorTask]["reply"];
}

const TASKS: {
  readonly [T in TutorTask]: (world: World, wish: TutorAnswers[T]["wish"]) => TutorAnswers[T]["reply"];
} = {
  next: chooseNext,
  second: secondPrediction,
  path: (_, wish) => pathOf(wish),
  sum: (_, wish) => sumUp(wish),
};

let kept: { readonly text: string; readonly world: World } | null = null;

/** The world of a ground; the one last used is kept, since resolving its stations takes time. */
function worldOn(ground: Ground): World {
  const text = JSON.stringify(ground);
  if (kept?.text !== text) kept = { text, world: practiceWorld(ground) };
  return kept.world;
}

export const carryOut = <T extends TutorTask>({
  ground,
  task,
  wish,
}: TutorOrder<T>): TutorAnswers[T]["reply"] => TASKS[task](worldOn(ground), wish);
