/**
 * An answer while it is being put together, as the text that would be typed for it. Every input reads and writes this one text, so that a
 * half-made answer can be kept, and is read by the very reader of typed answers. Pure.
 */

import { type LatLon, latLonText, threeDigits } from "../../earth/index.ts";
import type { Flag } from "../../panel/index.ts";
import {
  type Answer,
  NEEDLES,
  type Needle,
  OPTION_LETTERS,
  type Options,
  type Problem,
  readTypedAnswer,
  shownOrder,
} from "../../practice/index.ts";
import { answerWords } from "./answer-words.ts";

/** Stands for a part that is not chosen yet. */
const OPEN = "…";

export const letterOf = (place: number): string => OPTION_LETTERS.charAt(place);

export const FLAG_WORDS: Readonly<Record<Flag, string>> = { TO: "TO", FROM: "FROM", OFF: "no flag" };
const FLAGS = Object.keys(FLAG_WORDS) as readonly Flag[];

export interface PanelDraft {
  readonly flag: Flag | null;
  readonly needle: Needle | null;
}

export const panelDraft = ({ flag, needle }: PanelDraft): string =>
  `${flag === null ? OPEN : FLAG_WORDS[flag]}, ${needle ?? OPEN}`;

export function panelOf(draft: string): PanelDraft {
  const [flag, needle] = draft.split(", ");
  return {
    flag: FLAGS.find((known) => FLAG_WORDS[known] === flag) ?? null,
    needle: NEEDLES.find((known) => known === needle) ?? null,
  };
}

/** Parts of a wind or of a row, as typed so far. */
export const partsOf = (draft: string, separator: string, count: number): readonly string[] => {
  const parts = draft.split(separator).map((part) => part.trim());
  return Array.from({ length: count }, (_, at) => parts[at] ?? "");
};

export const windDraft = (from: string, speed: string): string => `${from}/${speed}`;
export const rowDraft = (figures: readonly string[]): string => figures.join("; ");

export const orderDraft = (letters: readonly string[]): string => letters.join("");
/** The letters in the order of the draft, or as they are listed where none has been made yet. */
export function orderOf(draft: string, listed: readonly string[]): readonly string[] {
  const letters = [...draft];
  return letters.length === listed.length && listed.every((letter) => letters.includes(letter))
    ? letters
    : listed;
}
/** The order with one letter moved up (-1) or down (1); the same at the end of the list. */
export function moved(order: readonly string[], letter: string, by: -1 | 1): readonly string[] {
  const at = order.indexOf(letter);
  const other = order[at + by];
  if (at < 0 || other === undefined) return order;
  return order.map((each) => (each === letter ? other : each === other ? letter : each));
}

export const placeDraft = (position: LatLon): string => latLonText(position);

/** A number stepped from what is typed, or from `start` where nothing is; kept within 0 and more, without float dust. */
export function stepped(typed: string, by: number, start: number): string {
  const now = /^\d+(\.\d+)?$/.test(typed) ? Number(typed) : null;
  const next = Math.max(0, now === null ? start : now + by);
  return String(Math.round(next * 100) / 100);
}

/** A direction stepped, three digits 001 to 360; the first step lays down 360. */
export function steppedDirection(typed: string, byDeg: number): string {
  return /^\d{1,3}$/.test(typed) ? threeDigits(Number(typed) + byDeg) : "360";
}

/** The answer of a draft; null while there is none that could be marked. */
export function answerOf(problem: Problem, options: Options | null, draft: string): Answer | null {
  const read = readTypedAnswer(problem, options, draft);
  return read.kind === "answer" ? read.answer : null;
}

/** Why a draft cannot be checked yet, one sentence with the remedy; null when it can. */
export function missing(problem: Problem, options: Options | null, draft: string): string | null {
  if (options !== null && draft.trim() === "") return "Choose one of the answers.";
  if (problem.truth.kind === "panel" && options === null) {
    const { flag, needle } = panelOf(draft);
    if (flag === null) return "Choose what the flag shows.";
    if (needle === null) return "Choose where the needle stands.";
  }
  if (problem.truth.kind === "wind" && options === null) {
    const [from, speed] = partsOf(draft, "/", 2);
    if (from === "") return "Say where the wind is from.";
    if (speed === "") return "Say how strong the wind is.";
  }
  const read = readTypedAnswer(problem, options, draft);
  if (read.kind === "unready") return read.says;
  return null;
}

/** An option as it is shown, with a key that says nothing. */
export interface AnswerText {
  readonly text: string;
  readonly key: number;
}

/** The options in the order shown, in words; places are lettered on the chart. */
export function optionTexts(problem: Problem, options: Options): readonly AnswerText[] {
  return shownOrder(problem, options).flatMap((at, place) => {
    const option = options.options[at];
    if (option === undefined) return [];
    // A place stands on the chart: its name would do the learner's work.
    const text =
      option.answer.kind === "place" ? `Place ${letterOf(place)}` : answerWords(problem, option.answer);
    return [{ text, key: place }];
  });
}

/** Places to choose from, to be lettered on the chart; none where the options are no places. */
export function optionPlaces(
  problem: Problem,
  options: Options | null,
): readonly { readonly letter: string; readonly position: LatLon }[] {
  if (options === null) return [];
  return shownOrder(problem, options).flatMap((at, place) => {
    const answer = options.options[at]?.answer;
    return answer?.kind === "place" ? [{ letter: letterOf(place), position: answer.position }] : [];
  });
}
