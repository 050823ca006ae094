/**
 * How items fare in a class. An item is fresh each time, so figures attach to what it asks and what it tells apart: form, mode, and the
 * slips that differ from the truth. Each figure has a number of answers below which it is not given. All figures are counts and
 * shares of a class, none of one learner.
 */

import { groupedBy } from "./grouped-by.ts";
import { type ItemAnswer, type ItemEvidence, isRight } from "./item-evidence.ts";
import { type Interval, median, pointBiserial, wilsonInterval } from "./proportion.ts";

const FACILITY_FROM = 8;
const FACILITY_TRUSTED_FROM = 30;
const CORRELATION_FROM = 50;
/** Corrected point-biserial from which an item is worth keeping; under 0 it is in doubt. Common practice. */
const KEEP_FROM = 0.2;
/** An option works when at least this share picks it, and those who do are the weaker (Haladyna and Downing 1993, from memory). */
const OPTION_WORKS_FROM = 0.05;
const UNMODELLED_FROM = 20;
const UNMODELLED_ABOVE = 0.3;

export interface LoggedAnswer<Slip extends string = string> {
  readonly learner: string;
  readonly form: string;
  /** As it was shown. */
  readonly item: ItemEvidence<Slip>;
  readonly answer: ItemAnswer;
  /** Null where it was not taken. */
  readonly timeS: number | null;
}

export interface OptionStatistics<Slip extends string = string> {
  /** The slips that pick it; none for the truth, for "other", and for an option that no slip leads to. */
  readonly slips: readonly Slip[];
  readonly kind: "truth" | "slips" | "other";
  readonly picks: number;
  /** Of all answers, "I don't know yet" among them, 0..1. */
  readonly share: number;
  /** Of a wrong option, from 50 answers: picked by one in twenty or more, and those the weaker. */
  readonly works: boolean | null;
}

export interface ItemStatistics<Slip extends string = string> {
  readonly form: string;
  readonly mode: ItemEvidence["mode"];
  /** The slips that differ from the truth, in alphabetical order. */
  readonly firing: readonly Slip[];
  readonly answers: number;
  /** Share right, with its 95 % interval; null under 8 answers, to be trusted from 30. */
  readonly facility: {
    readonly share: number;
    readonly interval: Interval;
    readonly trusted: boolean;
  } | null;
  /** Corrected point-biserial against the share right of each learner's other answers; null under 50 answers, or without spread. */
  readonly discrimination: {
    readonly correlation: number;
    readonly verdict: "keep" | "weak" | "doubtful";
  } | null;
  /** The truth first, then by picks. */
  readonly options: readonly OptionStatistics<Slip>[];
  readonly dontKnowShare: number;
  /** Of the answers whose time was taken; null where none was. */
  readonly medianTimeS: number | null;
  /** Tell mode only: of the wrong answers, those that no slip gives; `newSlip` from 20 wrong, over three in ten. */
  readonly unmodelled: { readonly wrong: number; readonly share: number; readonly newSlip: boolean } | null;
}

/** The slips that an item tells from the truth, in alphabetical order. */
export const firingSlips = <Slip extends string>({ slipOptions }: ItemEvidence<Slip>): Slip[] =>
  (Object.keys(slipOptions) as Slip[]).filter((slip) => slipOptions[slip] !== undefined).sort();

/** What answers are counted under: the same for items that ask and tell apart the same. */
export const statisticsKey = ({ form, item }: Pick<LoggedAnswer, "form" | "item">): string =>
  [form, item.mode, ...firingSlips(item)].join("/");

interface Row<Slip extends string> extends LoggedAnswer<Slip> {
  /** Share right of the learner's answers to other items; null when he has none. */
  readonly restScore: number | null;
}

/** Statistics of every kind of item in a log, those with most answers first. */
export function itemStatistics<Slip extends string>(
  log: readonly LoggedAnswer<Slip>[],
): ItemStatistics<Slip>[] {
  const groups = groupedBy(withRestScores(log), statisticsKey);
  return [...groups.values()].map(statisticsOf).sort((a, b) => b.answers - a.answers);
}

function withRestScores<Slip extends string>(log: readonly LoggedAnswer<Slip>[]): Row<Slip>[] {
  const tally = new Map<string, { answers: number; rights: number }>();
  const count = (name: string, { answer }: LoggedAnswer) => {
    const so = tally.get(name) ?? { answers: 0, rights: 0 };
    tally.set(name, { answers: so.answers + 1, rights: so.rights + (isRight(answer) ? 1 : 0) });
  };
  const ownName = (one: LoggedAnswer) => `${one.learner}\n${statisticsKey(one)}`;
  for (const one of log) {
    count(one.learner, one);
    count(ownName(one), one);
  }
  return log.map((one) => {
    const all = tally.get(one.learner) ?? { answers: 0, rights: 0 };
    const own = tally.get(ownName(one)) ?? { answers: 0, rights: 0 };
    const rest = all.answers - own.answers;
    return { ...one, restScore: rest > 0 ? (all.rights - own.rights) / rest : null };
  });
}

function statisticsOf<Slip extends string>(rows: readonly Row<Slip>[]): ItemStatistics<Slip> {
  const first = rows[0];
  if (first === undefined) throw new RangeError("statistics of no answers");
  const answers = rows.length;
  const rights = rows.filter(({ answer }) => isRight(answer)).length;
  return {
    form: first.form,
    mode: first.item.mode,
    firing: firingSlips(first.item),
    answers,
    facility:
      answers < FACILITY_FROM
        ? null
        : {
            share: rights / answers,
            interval: wilsonInterval(rights, answers),
            trusted: answers >= FACILITY_TRUSTED_FROM,
          },
    discrimination: discriminationOf(rows),
    options: optionsOf(rows),
    dontKnowShare: rows.filter(({ answer }) => answer.pick === "dont-know").length / answers,
    medianTimeS: median(rows.flatMap(({ timeS }) => (timeS === null ? [] : [timeS]))),
    unmodelled: first.item.mode === "tell" ? unmodelledOf(rows) : null,
  };
}

/** Correlation of having picked so with the score on everything else; null under 50 answers. */
function correlationOf<Slip extends string>(
  rows: readonly Row<Slip>[],
  did: (row: Row<Slip>) => boolean,
): number | null {
  const scored = rows.flatMap((row) =>
    row.restScore === null ? [] : [{ did: did(row), score: row.restScore }],
  );
  return scored.length < CORRELATION_FROM ? null : pointBiserial(scored);
}

function discriminationOf<Slip extends string>(
  rows: readonly Row<Slip>[],
): ItemStatistics<Slip>["discrimination"] {
  const correlation = correlationOf(rows, ({ answer }) => isRight(answer));
  if (correlation === null) return null;
  return {
    correlation,
    verdict: correlation < 0 ? "doubtful" : correlation < KEEP_FROM ? "weak" : "keep",
  };
}

/** What stands behind an option: the same words for the same option of items that tell apart the same. */
function optionName({ slipOptions, mode, optionCount }: ItemEvidence, option: number): string {
  if (option === 0) return "truth";
  const slips = Object.keys(slipOptions).filter((slip) => slipOptions[slip] === option);
  if (slips.length === 0 || (mode === "tell" && option === optionCount - 1)) return "other";
  return slips.sort().join("/");
}

function optionsOf<Slip extends string>(rows: readonly Row<Slip>[]): OptionStatistics<Slip>[] {
  const named = rows.map((row) => ({
    row,
    picked: row.answer.pick === "dont-know" ? null : optionName(row.item, row.answer.pick),
    offered: Array.from({ length: row.item.optionCount }, (_, option) => optionName(row.item, option)),
  }));
  const names = new Set(named.flatMap(({ offered }) => offered));
  const options = [...names].map((name): OptionStatistics<Slip> => {
    const takers = named.filter(({ offered }) => offered.includes(name));
    const picks = takers.filter(({ picked }) => picked === name).length;
    const pickers = new Set<Row<Slip>>(takers.filter(({ picked }) => picked === name).map(({ row }) => row));
    const correlation =
      name === "truth"
        ? null
        : correlationOf(
            takers.map(({ row }) => row),
            (row) => pickers.has(row),
          );
    const share = picks / takers.length;
    const isDead = takers.length >= CORRELATION_FROM && share < OPTION_WORKS_FROM;
    return {
      slips: name === "truth" || name === "other" ? [] : (name.split("/") as Slip[]),
      kind: name === "truth" || name === "other" ? name : "slips",
      picks,
      share,
      works: name === "truth" ? null : isDead ? false : correlation === null ? null : correlation < 0,
    };
  });
  return options.sort((a, b) => Number(b.kind === "truth") - Number(a.kind === "truth") || b.picks - a.picks);
}

function unmodelledOf(rows: readonly LoggedAnswer[]): NonNullable<ItemStatistics["unmodelled"]> {
  const wrong = rows.filter(({ answer }) => answer.pick !== "dont-know" && !isRight(answer));
  const other = wrong.filter(({ item, answer }) => answer.pick === item.optionCount - 1).length;
  const share = wrong.length === 0 ? 0 : other / wrong.length;
  return {
    wrong: wrong.length,
    share,
    newSlip: wrong.length >= UNMODELLED_FROM && share > UNMODELLED_ABOVE,
  };
}
