/** How the items of a pile fared: their statistics, whether their options catch the ideas they stand for, and where unexplained answers lie. */

import {
  answerOffsets,
  type HypothesisSpace,
  type ItemStatistics,
  itemStatistics,
  type OffsetBin,
  type SlipFidelity,
  slipFidelity,
  statisticsKey,
  type UnmodelledAnswer,
} from "../diagnosis/index.ts";
import type { SlipId } from "../slips.ts";
import type { AnsweredRow } from "./mark-row.ts";

export type Doubt = "negative-discrimination" | "dead-option" | "new-slip";

export interface PileItem extends ItemStatistics<SlipId> {
  /** What is counted together here: numbers in the set, then codes of problems that are not of it. */
  readonly problems: readonly string[];
  /** Of each idea that someone holds by all his other answers. */
  readonly fidelity: readonly Omit<SlipFidelity<SlipId>, "key">[];
  /** Answers that no idea gives, less the truth and less each number of the scene; empty where there are none, or none to subtract. */
  readonly offsets: readonly { readonly from: string; readonly bins: readonly OffsetBin[] }[];
  readonly doubts: readonly Doubt[];
}

const BIN_DEG = 10;
/** Of quantities, in tolerances of the truth. */
const BIN_TOLERANCES = 2;

export function pileItems(
  space: HypothesisSpace<SlipId>,
  answered: readonly AnsweredRow[],
): readonly PileItem[] {
  const log = answered.map(({ logged }) => logged);
  const fidelity = slipFidelity(space, log);
  return itemStatistics(log).map((statistics) => {
    const key = [statistics.form, statistics.mode, ...statistics.firing].join("/");
    const own = answered.filter(({ logged }) => statisticsKey(logged) === key);
    return {
      ...statistics,
      problems: problemsOf(own),
      fidelity: fidelity
        .filter((one) => one.key === key)
        .map(({ slip, holders, share }) => ({ slip, holders, share })),
      offsets: offsetsOf(own),
      doubts: doubtsOf(statistics),
    };
  });
}

function problemsOf(answered: readonly AnsweredRow[]): readonly string[] {
  const items = [...new Set(answered.map(({ item }) => item))];
  const place = (number: number | null): number => number ?? Number.MAX_SAFE_INTEGER;
  return items
    .sort((one, other) => place(one.number) - place(other.number))
    .map(({ number, problem }) => (number === null ? problem.code : String(number)));
}

function doubtsOf({ discrimination, options, unmodelled }: ItemStatistics): readonly Doubt[] {
  return [
    ...(discrimination?.verdict === "doubtful" ? (["negative-discrimination"] as const) : []),
    ...(options.some(({ works, kind }) => works === false && kind !== "other")
      ? (["dead-option"] as const)
      : []),
    ...(unmodelled?.newSlip === true ? (["new-slip"] as const) : []),
  ];
}

/** Told directions and quantities that are wrong and that no idea gives. */
function offsetsOf(answered: readonly AnsweredRow[]): PileItem["offsets"] {
  const [first] = answered;
  if (first === undefined) return [];
  const { truth } = first.item.problem;
  if (truth.kind !== "direction" && truth.kind !== "quantity") return [];
  const unexplained = answered.flatMap((one) => {
    const { item, answer, logged } = one;
    const isOther = item.options === null && logged.answer.pick === logged.item.optionCount - 1;
    return isOther && (answer?.kind === "direction" || answer?.kind === "quantity")
      ? [{ answer: answer.kind === "direction" ? answer.deg : answer.value, references: referencesOf(one) }]
      : [];
  });
  const width = truth.kind === "direction" ? BIN_DEG : binWidth(first);
  return [...answerOffsets(unexplained, truth.kind, width)].map(([from, bins]) => ({ from, bins }));
}

function binWidth({ item: { problem } }: AnsweredRow): number {
  const { truth } = problem;
  const { value = 0, share = 0 } = problem.case.tolerance;
  const size = truth.kind === "quantity" ? Math.abs(truth.value) : 0;
  return Math.max(value, share * size) * BIN_TOLERANCES || 1;
}

/** What a direction may have been read off: where the first receiver's figures are known. */
function referencesOf({ item: { problem } }: AnsweredRow): UnmodelledAnswer["references"] {
  const { truth, situation } = problem;
  if (truth.kind === "quantity") return { truth: truth.value };
  if (truth.kind !== "direction") return {};
  const [first] = situation.receivers;
  const radialDeg = first?.radial ?? null;
  return {
    truth: truth.deg,
    heading: situation.scene.aircraft.heading,
    ...(first === undefined ? {} : { course: first.settings.course }),
    ...(radialDeg === null ? {} : { radial: radialDeg, reciprocal: (radialDeg + 180) % 360 }),
  };
}
