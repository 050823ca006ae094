/** Changes to a set, each a new set, so that each can be taken back. Pure. */

import { anotherLike, MOST_PROBLEMS, openProblem, type ProblemSet } from "../../practice/index.ts";

/** The set that comes of it, or one sentence on why not. */
export type Changed = ProblemSet | string;

export const without = (set: ProblemSet, at: number): Changed =>
  set.problems.length === 1
    ? "A set has at least one problem: make another set, or put another problem in first."
    : { ...set, problems: set.problems.filter((_, place) => place !== at) };

/** Nearer the beginning (-1) or the end (1) by one place; at the edge it stays. */
export function moved(set: ProblemSet, at: number, by: -1 | 1): ProblemSet {
  const problems = [...set.problems];
  const [problem, other] = [problems[at], problems[at + by]];
  if (problem === undefined || other === undefined) return set;
  problems[at] = other;
  problems[at + by] = problem;
  return { ...set, problems };
}

/** Another problem like it in its place. `seed`: any whole number; another gives another. */
export function replaced(set: ProblemSet, at: number, seed: number): Changed {
  const like = set.problems[at];
  if (like === undefined) return set;
  const other = anotherLike(set.world, like, { seed, but: set.problems });
  if (other === null) return "There is no other like it on these stations: it stays.";
  return { ...set, problems: set.problems.map((problem, place) => (place === at ? other : problem)) };
}

/** With the problem of a code at its end. */
export function withCode(set: ProblemSet, typed: string): Changed {
  if (set.problems.length >= MOST_PROBLEMS) return `A set has at most ${MOST_PROBLEMS} problems.`;
  const opened = openProblem(set.world, typed);
  if (opened.kind === "fault") return `${opened.says.charAt(0).toUpperCase()}${opened.says.slice(1)}.`;
  const { problem } = opened;
  const at = set.problems.findIndex(({ code }) => code === problem.code);
  if (at >= 0) return `${problem.code} is in the set already, as number ${at + 1}.`;
  return { ...set, problems: [...set.problems, problem] };
}
