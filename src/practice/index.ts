export {
  type Answer,
  type AnswerKind,
  answerText,
  apart,
  NEEDLES,
  type Needle,
  type Tolerance,
  type Unit,
} from "./answer.ts";
export { anotherLike, buildSet, codesOf, type SetBuilt, type Wishes } from "./build-set.ts";
export { type Chance, chance } from "./chance.ts";
export * from "./diagnosis/index.ts";
export type { CheckPlace, Clearance, Facts, Health, Leg, Panel, Reach } from "./facts.ts";
export {
  type Case,
  type Figure,
  type Form,
  type Ghost,
  type Given,
  MODES,
  type Mode,
  type ProblemView,
} from "./form.ts";
export { FORMS, formOf } from "./forms/index.ts";
export { FORM_IDS, type FormId, isFormId } from "./forms/numbers.ts";
export { type Functions, functionsWith, type Hand, type Patch, TRUTH } from "./functions.ts";
export { type Evidence, evidenceOf, type Marked, mark, type Response, type Verdict } from "./mark.ts";
export { type Option, type Options, optionsOf, shownOrder, slipsBehind } from "./options.ts";
export { type AnswerRow, type AnswerSheet, type RefusedRow, readAnswerSheet } from "./pile/answer-sheet.ts";
export {
  changesBetween,
  type PileSummary,
  pileSummary,
  readPileSummary,
  type SlipChange,
} from "./pile/before-after.ts";
export type { ClassSlip, ClassView } from "./pile/class-view.ts";
export { type LearnerSheet, learnerSheet } from "./pile/learner-sheet.ts";
export { type MarkedLearner, type MarkedPile, markPile } from "./pile/mark-pile.ts";
export type { MarkedAnswer } from "./pile/mark-row.ts";
export type { Doubt, PileItem } from "./pile/pile-items.ts";
export {
  type PileReport,
  pileReport,
  type ReportedItem,
  type ReportedLearner,
  type ReportedOption,
  type ReportedSlip,
} from "./pile/pile-report.ts";
export type { Readiness } from "./pile/readiness.ts";
export { makeProblem, type Problem, type ProblemMade, type SlipAnswer } from "./problem.ts";
export {
  type CodeParts,
  type CodeRead,
  GENERATOR_VERSION,
  MOST_SEED,
  type ProblemCode,
  problemCode,
  readProblemCode,
} from "./problem-code.ts";
export { type KeyData, keyData, type ProblemData, problemData } from "./problem-data.ts";
export {
  areAlike,
  firedSlips,
  ISLES_DATE,
  MOST_PROBLEMS,
  modesOf,
  openProblem,
  type ProblemOpened,
  type ProblemSet,
  skillsOf,
} from "./problem-set.ts";
export { editProblemSet, type ProblemSetEdited } from "./problem-set-edit.ts";
export { type ProblemSetLinkRead, problemSetFromLink, problemSetToLink } from "./problem-set-link.ts";
export { type ProblemSetRead, type ProblemSetReadOptions, readProblemSet } from "./problem-set-read.ts";
export { problemSetJsonSchema } from "./problem-set-shape.ts";
export { type ProblemSetWriteOptions, writeProblemSet } from "./problem-set-write.ts";
export type { QtiPicture } from "./qti/qti-item.ts";
export { type PackagePicture, qtiPackage } from "./qti/qti-package.ts";
export {
  DONT_KNOW,
  letteredOptions,
  optionText,
  type SheetAnswer,
  type SheetDrawing,
  type SheetMark,
  type SheetOption,
  type SheetProblem,
  sheetProblem,
  sheetProblems,
} from "./sheet.ts";
export {
  type KeyAnswer,
  type KeyProblem,
  keyProblem,
  keyProblems,
} from "./sheet-key.ts";
export {
  isSkillId,
  SKILL_BANDS,
  SKILL_IDS,
  SKILLS,
  type Skill,
  type SkillBand,
  type SkillId,
  skillOf,
  withNeeds,
} from "./skills.ts";
export type { Slip } from "./slip.ts";
export { isSlipId, SLIPS, type SlipId, slipOf } from "./slips.ts";
export { howToWrite, OPTION_LETTERS, readTypedAnswer, type TypedAnswer } from "./typed-answer.ts";
export { MOST_STATIONS, practiceWorld, type World } from "./world.ts";
