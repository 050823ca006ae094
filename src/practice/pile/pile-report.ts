/**
 * What an instructor reads after marking: plain words and counts, the most urgent first. No learner is ranked; of a learner just guessing no
 * idea is named.
 */

import { formOf } from "../forms/index.ts";
import { isFormId } from "../forms/numbers.ts";
import { skillOf } from "../skills.ts";
import { type SlipId, slipOf } from "../slips.ts";
import type { RefusedRow } from "./answer-sheet.ts";
import { changesBetween, type PileSummary, pileSummary, type SlipChange } from "./before-after.ts";
import type { ClassSlip } from "./class-view.ts";
import type { MarkedLearner, MarkedPile } from "./mark-pile.ts";
import type { PileItem } from "./pile-items.ts";

export interface ReportedSlip {
  readonly id: SlipId;
  readonly name: string;
  readonly refutation: string;
  /** What to show a class. */
  readonly remedy: string;
  readonly likely: readonly string[];
  readonly maybe: readonly string[];
  /** Numbers of the set's problems to show it on. */
  readonly problems: readonly number[];
}

export interface ReportedLearner {
  readonly learner: string;
  readonly marks: number;
  /** Problems of the set. */
  readonly of: number;
  readonly right: number;
  readonly half: number;
  readonly wrong: number;
  readonly dontKnow: number;
  readonly unanswered: number;
  readonly likely: readonly string[];
  readonly maybe: readonly string[];
  readonly isGuessing: boolean;
  readonly isStuck: boolean;
  readonly next: string;
}

export interface ReportedOption {
  /** Names of the ideas that lead to it; empty for what no idea leads to. */
  readonly ideas: readonly string[];
  readonly picks: number;
  readonly works: boolean | null;
}

export interface ReportedItem {
  readonly title: string;
  readonly mode: "choose" | "tell";
  /** Numbers in the set, or codes of problems that are not of it. */
  readonly problems: readonly string[];
  readonly answers: number;
  readonly right: number;
  /** Null under eight answers; to be trusted from thirty. Percent. */
  readonly facility: {
    readonly percent: number;
    readonly low: number;
    readonly high: number;
    readonly isTrusted: boolean;
  } | null;
  /** -1..1; null under fifty answers. */
  readonly discrimination: number | null;
  readonly wrongOptions: readonly ReportedOption[];
  readonly dontKnow: number;
  readonly medianTimeS: number | null;
  /** Of learners who hold an idea by their other answers, how many took its answer here. */
  readonly fidelity: readonly { readonly idea: string; readonly took: number; readonly of: number }[];
  /** Told answers that no idea gives, of the wrong ones; null where answers are chosen. */
  readonly unexplained: { readonly count: number; readonly of: number } | null;
  /** Where the unexplained lie, the fullest first. */
  readonly peaks: readonly {
    readonly from: string;
    readonly low: number;
    readonly high: number;
    readonly count: number;
  }[];
  /** What is to be looked at, a sentence each. */
  readonly doubts: readonly string[];
}

export interface PileReport {
  readonly title: string;
  readonly problems: number;
  readonly answers: number;
  readonly learnerCount: number;
  /** Ideas that the problems answered tell from the truth. */
  readonly scope: readonly SlipId[];
  /** Ideas before the last lesson and now; null without a pile to hold this one against. */
  readonly changes: readonly SlipChange[] | null;
  /** The one to reteach first at the head. */
  readonly slips: readonly ReportedSlip[];
  readonly guessing: readonly string[];
  readonly stuck: readonly string[];
  /** Null where nothing builds on what the set practises. */
  readonly readiness: {
    readonly skill: string;
    readonly ready: number;
    readonly isReady: boolean;
    readonly isAskedEnough: boolean;
    readonly practised: readonly string[];
    readonly notAsked: readonly string[];
  } | null;
  readonly groups: readonly { readonly name: string; readonly learners: readonly string[] }[];
  readonly learners: readonly ReportedLearner[];
  readonly items: readonly ReportedItem[];
  /** A question that ought to be looked at, and why; empty where none, or too few have answered to tell. */
  readonly doubts: readonly {
    readonly title: string;
    readonly problems: readonly string[];
    readonly says: string;
  }[];
  /** What to keep in mind while reading, a sentence each. */
  readonly cautions: readonly string[];
  readonly accepted: readonly {
    readonly line: number;
    readonly learner: string;
    readonly problem: string;
    readonly written: string;
    readonly because: string;
  }[];
  readonly refused: readonly RefusedRow[];
}

/** More ideas at once are a first screen only: the diagnosis was tried on twelve with twenty answers. */
const MOST_IN_SCOPE = 12;
const PEAKS_SHOWN = 3;

const nameOf = (slip: SlipId): string => slipOf(slip).name;
const percent = (share: number): number => Math.round(100 * share);

/** `before`: an earlier pile of this class. */
export function pileReport(pile: MarkedPile, before: PileSummary | null = null): PileReport {
  const { classView, problemCount } = pile;
  const items = pile.items.map(reportedItem);
  const { readiness } = classView;
  return {
    title: pile.title,
    problems: problemCount,
    answers: pile.answerCount,
    learnerCount: classView.learnerCount,
    scope: pile.scope,
    changes: before === null ? null : changesBetween(before, pileSummary(pile)),
    slips: classView.slips.map(reportedSlip),
    guessing: classView.justGuessing,
    stuck: classView.stuck,
    readiness:
      readiness === null
        ? null
        : {
            skill: skillOf(readiness.skill).title,
            ready: readiness.ready,
            isReady: readiness.isReady,
            isAskedEnough: readiness.isAskedEnough,
            practised: readiness.practised.map((id) => skillOf(id).title),
            notAsked: readiness.notAsked.map((id) => skillOf(id).title),
          },
    groups: classView.groups.map(({ slip, learners }) => ({ name: nameOf(slip), learners })),
    learners: pile.learners.map((learner) => reportedLearner(learner, problemCount)),
    items,
    doubts: items.flatMap(({ title, problems, doubts }) => doubts.map((says) => ({ title, problems, says }))),
    cautions: cautionsOf(pile),
    accepted: pile.accepted.map(({ learner, answer }) => ({
      line: answer.line,
      learner,
      problem: answer.number === null ? answer.code : String(answer.number),
      written: answer.written,
      because: answer.acceptedBecause ?? "",
    })),
    refused: pile.refused,
  };
}

const reportedSlip = ({ slip, likely, maybe, problems }: ClassSlip): ReportedSlip => {
  const { id, name, refutation, remedy } = slipOf(slip);
  return { id, name, refutation, remedy, likely, maybe, problems };
};

function reportedLearner(learner: MarkedLearner, of: number): ReportedLearner {
  const { standing, answers: _, ...counts } = learner;
  const named = (word: "likely" | "maybe"): readonly string[] =>
    standing.kind === "slips"
      ? standing.slips.filter((one) => one.standing === word).map(({ slip }) => nameOf(slip))
      : [];
  return {
    ...counts,
    of,
    likely: named("likely"),
    maybe: named("maybe"),
    isGuessing: standing.kind === "just-guessing",
  };
}

function reportedItem(item: PileItem): ReportedItem {
  const { form, answers, facility, options, unmodelled } = item;
  const explained = (slips: readonly SlipId[]): readonly string[] => slips.map(nameOf);
  const right = options.find(({ kind }) => kind === "truth")?.picks ?? 0;
  return {
    title: isFormId(form) ? formOf(form).title : form,
    mode: item.mode,
    problems: item.problems,
    answers,
    right,
    facility:
      facility === null
        ? null
        : {
            percent: percent(facility.share),
            low: percent(facility.interval.low),
            high: percent(facility.interval.high),
            isTrusted: facility.trusted,
          },
    discrimination: item.discrimination?.correlation ?? null,
    wrongOptions: options
      .filter(({ kind }) => kind !== "truth")
      .map(({ slips, picks, works }) => ({ ideas: explained(slips), picks, works })),
    dontKnow: Math.round(item.dontKnowShare * answers),
    medianTimeS: item.medianTimeS,
    fidelity: item.fidelity.map(({ slip, holders, share }) => ({
      idea: nameOf(slip),
      took: Math.round(share * holders),
      of: holders,
    })),
    unexplained:
      unmodelled === null
        ? null
        : { count: Math.round(unmodelled.share * unmodelled.wrong), of: unmodelled.wrong },
    peaks: peaksOf(item),
    doubts: item.doubts.map((doubt) => DOUBTS[doubt]),
  };
}

const DOUBTS = {
  "negative-discrimination": "Those who do well elsewhere do worse here: look at the question.",
  "dead-option": "A wrong option is taken by fewer than one in twenty: it tells little.",
  "new-slip": "Over three in ten wrong answers follow no idea we know: a new one?",
} as const;

const peaksOf = ({ offsets }: PileItem): ReportedItem["peaks"] =>
  offsets
    .flatMap(({ from, bins }) =>
      bins.map(({ fromOffset, toOffset, count }) => ({ from, low: fromOffset, high: toOffset, count })),
    )
    .sort((one, other) => other.count - one.count)
    .slice(0, PEAKS_SHOWN);

function cautionsOf({ scope, foretells }: MarkedPile): readonly string[] {
  const cautions: string[] = [];
  if (scope.length > MOST_IN_SCOPE)
    cautions.push(
      `These problems tell ${scope.length} ideas apart: take what is named as a first screen, and ask again about it.`,
    );
  if (foretells === null)
    cautions.push("Too few answers to try the diagnosis on this class: show learners no idea's name yet.");
  else if (!foretells.mayNameSlips)
    cautions.push(
      "The diagnosis foretold this class's last answers no better than plain difficulty does: show learners no idea's name yet.",
    );
  return cautions;
}
