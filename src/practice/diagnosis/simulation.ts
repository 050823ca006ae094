/** Runs made-up learners through the diagnosis as a class would use it, and counts how often it is right about them. */

import { type Chance, chance } from "../chance.ts";
import { afterAnswer, type Belief, priorBelief, slipBeliefs } from "./belief.ts";
import { type HeldOutResult, heldOut } from "./held-out.ts";
import { type HypothesisSpace, hypothesisSpace, type SlipInScope } from "./hypotheses.ts";
import type { LoggedAnswer } from "./item-statistics.ts";
import { diagnosisIsDone, nextProblem, type SessionSoFar } from "./next-problem.ts";
import { type SimulatedLearner, type SimulatedProblem, simulatedPick } from "./simulated-learner.ts";
import { standing } from "./standing.ts";

/** Where the problems of a simulation come from. */
export interface ProblemSource<Slip extends string = string> {
  /**
   * So many fresh problems, on each of which a slip in scope would be wrong.
   * @param belief how likely each slip is at this moment, by which options are chosen
   */
  candidates(count: number, luck: Chance, belief: (slip: Slip) => number): readonly SimulatedProblem<Slip>[];
}

export interface SimulationSetup<Slip extends string = string> {
  readonly scope: readonly SlipInScope<Slip>[];
  readonly learners: number;
  /** Answers of a learner, at most. */
  readonly items: number;
  /** Whether a learner is let go as soon as his diagnosis is done. */
  readonly endsWhenDone: boolean;
  /** Fresh problems among which each item is chosen; 1 gives items at random. */
  readonly candidates: number;
  readonly learner: (luck: Chance) => SimulatedLearner<Slip>;
  readonly seed: number;
}

export interface SimulationOutcome {
  readonly learners: number;
  /** Answers of a learner, on average. */
  readonly meanItems: number;
  /** Of the learners with slips, those whose likeliest slip by the diagnosis is one they hold. Null without such learners. */
  readonly topHeld: number | null;
  /** Of all slips held, those among their holder's three likeliest. */
  readonly heldInTopThree: number | null;
  /** Of all slips called likely, those held. Null when none was. */
  readonly likelyPrecision: number | null;
  /** Slips called likely and not held, a learner. */
  readonly falseLikely: number;
  /** Share of learners called just guessing. */
  readonly justGuessing: number;
  /** Of the beliefs in [.8, 1], the share of slips truly held. Null when there are none. */
  readonly heldWhenSure: number | null;
  /** Mean square of belief less truth, over every learner and slip: 0 is perfect. */
  readonly brier: number;
  /** How well each learner's last five answers are foretold from those before. Null when none had more than five. */
  readonly heldOut: HeldOutResult | null;
}

interface Diagnosed<Slip extends string> {
  readonly held: readonly Slip[];
  readonly belief: Belief<Slip>;
  readonly log: readonly LoggedAnswer<Slip>[];
}

/** Learners by the set-up, each from a seed of his own, diagnosed one after the other. The same seed gives the same outcome. */
export function simulate<Slip extends string>(
  source: ProblemSource<Slip>,
  setup: SimulationSetup<Slip>,
): SimulationOutcome {
  const space = hypothesisSpace(setup.scope);
  const diagnosed = Array.from({ length: setup.learners }, (_, at) => {
    const luck = chance(setup.seed * 1_000_000 + at);
    const learner = setup.learner(luck);
    const held = learner.kind === "settled" ? learner.slips : [];
    return { held, ...diagnose(space, source, setup, learner, luck, `learner-${at}`) };
  });
  return outcomeOf(space, diagnosed);
}

function diagnose<Slip extends string>(
  space: HypothesisSpace<Slip>,
  source: ProblemSource<Slip>,
  setup: SimulationSetup<Slip>,
  learner: SimulatedLearner<Slip>,
  luck: Chance,
  name: string,
): Omit<Diagnosed<Slip>, "held"> {
  const places = new Map(space.slips.map((slip, place) => [slip, place]));
  let belief = priorBelief(space);
  let session: SessionSoFar = { forms: [], lastPlace: null, medianTimeS: null };
  const log: LoggedAnswer<Slip>[] = [];
  const history = [slipBeliefs(belief)];
  const isDone = () => setup.endsWhenDone && diagnosisIsDone(history);
  while (log.length < setup.items && !isDone()) {
    const beliefs = history.at(-1) ?? slipBeliefs(belief);
    const believed = (slip: Slip) => beliefs[places.get(slip) ?? -1] ?? 0;
    const next = nextProblem(belief, source.candidates(setup.candidates, luck, believed), session);
    if (next === null) throw new RangeError("the source of problems gave none");
    const { candidate } = next;
    const { form, item, place, usualTimeS } = candidate;
    const answer = { pick: simulatedPick(learner, candidate, luck), confidence: null };
    belief = afterAnswer(belief, item, answer);
    history.push(slipBeliefs(belief));
    log.push({ learner: name, form, item, answer, timeS: usualTimeS ?? 0 });
    session = { ...session, forms: log.map((one) => one.form), lastPlace: place };
  }
  return { belief, log };
}

function outcomeOf<Slip extends string>(
  space: HypothesisSpace<Slip>,
  diagnosed: readonly Diagnosed<Slip>[],
): SimulationOutcome {
  const rows = diagnosed.map(({ held, belief }) => {
    const beliefs = slipBeliefs(belief);
    const slips = belief.space.slips.map((slip, at) => ({
      slip,
      belief: beliefs[at] ?? 0,
      isHeld: held.includes(slip),
    }));
    const stands = standing(belief, []);
    const likely = stands.kind === "slips" ? stands.slips.filter((one) => one.standing === "likely") : [];
    return { held, slips, likely, isGuessing: stands.kind === "just-guessing" };
  });
  const all = rows.flatMap(({ slips }) => slips);
  const holders = rows.filter(({ held }) => held.length > 0);
  const topHeld = holders.filter(({ slips }) => likeliest(slips, 1).some(({ isHeld }) => isHeld)).length;
  const found = holders.flatMap(({ slips }) => likeliest(slips, 3)).filter(({ isHeld }) => isHeld).length;
  const likely = rows.flatMap(({ held, likely: named }) => named.map(({ slip }) => held.includes(slip)));
  const trueLikely = likely.filter(Boolean).length;
  const sure = all.filter(({ belief }) => belief >= 0.8);
  return {
    learners: rows.length,
    meanItems: diagnosed.reduce((sum, { log }) => sum + log.length, 0) / diagnosed.length,
    topHeld: shareOf(topHeld, holders.length),
    heldInTopThree: shareOf(
      found,
      holders.reduce((sum, { held }) => sum + held.length, 0),
    ),
    likelyPrecision: shareOf(trueLikely, likely.length),
    falseLikely: (likely.length - trueLikely) / rows.length,
    justGuessing: rows.filter(({ isGuessing }) => isGuessing).length / rows.length,
    heldWhenSure: shareOf(sure.filter(({ isHeld }) => isHeld).length, sure.length),
    brier: all.reduce((sum, { belief, isHeld }) => sum + (belief - (isHeld ? 1 : 0)) ** 2, 0) / all.length,
    heldOut: heldOut(
      space,
      diagnosed.flatMap(({ log }) => log),
    ),
  };
}

const likeliest = <T extends { readonly belief: number }>(slips: readonly T[], count: number): T[] =>
  [...slips].sort((a, b) => b.belief - a.belief).slice(0, count);

const shareOf = (part: number, whole: number): number | null => (whole === 0 ? null : part / whole);
