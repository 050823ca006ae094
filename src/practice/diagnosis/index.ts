/** Diagnosis: which slips a learner most likely holds, what to ask next, what is mastered, what to review, and how items fare. */

export type { Chance } from "../chance.ts";
export {
  ACCEPTANCE_CASES,
  type AcceptanceCase,
  type Demand,
  GAIN_BY_CHOOSING,
  type Measure,
  missedDemands,
  runCase,
} from "./acceptance.ts";
export { answerOffsets, type OffsetBin, type UnmodelledAnswer } from "./answer-offsets.ts";
export {
  afterAnswer,
  afterAnswers,
  afterRemedy,
  atNextSession,
  type Belief,
  priorBelief,
  slipBeliefs,
  unsettledBelief,
} from "./belief.ts";
export {
  candidateOf,
  composedOption,
  type GeneratedCandidate,
  generatedSource,
} from "./generated-problems.ts";
export { type HeldOutResult, heldOut } from "./held-out.ts";
export { type HypothesisSpace, hypothesisSpace, MOST_SLIPS_HELD, type SlipInScope } from "./hypotheses.ts";
export { type Forecast, forecaster } from "./information.ts";
export {
  type Confidence,
  fires,
  type ItemAnswer,
  type ItemEvidence,
  isRight,
  type SlipOption,
} from "./item-evidence.ts";
export {
  type ItemStatistics,
  itemStatistics,
  type LoggedAnswer,
  type OptionStatistics,
  statisticsKey,
} from "./item-statistics.ts";
export {
  afterSkillAnswer,
  NEW_SKILL_RECORD,
  type NextThing,
  type SkillRecord,
  type SkillStanding,
  skillStanding,
} from "./mastery.ts";
export {
  BUILDER_RIGHT_CHANCE,
  type Candidate,
  diagnosisIsDone,
  type NextProblem,
  nextProblem,
  type SessionSoFar,
  type Turn,
} from "./next-problem.ts";
export { type Interval, median, pointBiserial, wilsonInterval } from "./proportion.ts";
export {
  afterReview,
  clearedSlipCard,
  MOST_REVIEWS_A_DAY,
  newCard,
  type ReviewCard,
  type ReviewRating,
  ratingOf,
  reviewsOfDay,
} from "./review.ts";
export { type SimulatedLearner, type SimulatedProblem, simulatedPick } from "./simulated-learner.ts";
export { type ProblemSource, type SimulationOutcome, type SimulationSetup, simulate } from "./simulation.ts";
export { FIDELITY_EXPECTED, type SlipFidelity, slipFidelity } from "./slip-fidelity.ts";
export { type AnsweredItem, type SlipStanding, type Standing, standing } from "./standing.ts";
