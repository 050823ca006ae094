/**
 * A problem set as plain data for paper and for other programs: what the learner sees. The key is made apart (sheet-key.ts), so that nothing
 * of it can get among the problems.
 */

import type { LatLon } from "../earth/index.ts";
import type { IdentHeard } from "../panel/index.ts";
import { printedMorse } from "../radio/index.ts";
import { isCovered, type Situation } from "../scene/index.ts";
import { answerText, type Unit } from "./answer.ts";
import type { Figure, Given, Mode } from "./form.ts";
import { type Option, optionsOf, shownOrder } from "./options.ts";
import type { Problem } from "./problem.ts";
import type { ProblemCode } from "./problem-code.ts";
import type { ProblemSet } from "./problem-set.ts";
import { skillOf } from "./skills.ts";

/** Under each problem, whatever it asks: scored as not yet, and no idea is read out of it. */
export const DONT_KNOW = "I don't know yet";

export interface SheetOption {
  /** A, B, C and so on, in the order shown. */
  readonly letter: string;
  readonly text: string;
}

/** A letter on the chart: where an option would have the aircraft. */
export interface SheetMark {
  readonly letter: string;
  readonly position: LatLon;
}

/** What a problem is drawn with: views of its scene, and empty instruments for views that are covered. */
export type SheetDrawing =
  | { readonly kind: "chart"; readonly marks: readonly SheetMark[] }
  | { readonly kind: "panel" }
  | { readonly kind: "blank-dial"; readonly course: number | null }
  | { readonly kind: "blank-rose"; readonly ident: string; readonly north: string };

/** How it is answered on paper. */
export type SheetAnswer =
  /** `legend` names the figures of options that are rows; empty otherwise. */
  | { readonly kind: "options"; readonly options: readonly SheetOption[]; readonly legend: string }
  | { readonly kind: "direction" }
  | { readonly kind: "quantity"; readonly unit: Unit }
  | { readonly kind: "panel" }
  | { readonly kind: "place" }
  | { readonly kind: "wind" }
  | { readonly kind: "word" }
  | { readonly kind: "row"; readonly figures: readonly Figure[] }
  | { readonly kind: "order"; readonly items: readonly SheetOption[] };

export interface SheetProblem {
  readonly number: number;
  readonly code: ProblemCode;
  readonly mode: Mode;
  readonly title: string;
  readonly question: string;
  readonly given: readonly Given[];
  readonly drawings: readonly SheetDrawing[];
  readonly answer: SheetAnswer;
  /** To draw the views from, covers and all. */
  readonly situation: Situation;
}

/** The learner's side of a problem. Nothing in it but the situation, which is drawn under its covers, knows the answer. */
export function sheetProblem(problem: Problem, number: number): SheetProblem {
  const { code, mode, form, situation } = problem;
  const { scene, given } = problem.case;
  return {
    number,
    code,
    mode,
    title: form.title,
    question: scene.ask,
    given: [...given, ...heard(problem)],
    drawings: drawingsOf(problem),
    answer: sheetAnswer(problem),
    situation,
  };
}

export const sheetProblems = ({ problems }: Pick<ProblemSet, "problems">): readonly SheetProblem[] =>
  problems.map((problem, at) => sheetProblem(problem, at + 1));

/** Options with their letters, in the order shown. */
export function letteredOptions(problem: Problem): readonly (Option & SheetOption)[] {
  const options = optionsOf(problem);
  return shownOrder(problem, options).flatMap((at, index) => {
    const option = options.options[at];
    return option === undefined
      ? []
      : [{ ...option, letter: letterOf(index), text: answerText(option.answer) }];
  });
}

/** An option where it stands without its letter, as in data: a place keeps it, for the chart shows it there. */
export const optionText = (problem: Problem, { answer, letter, text }: Option & SheetOption): string =>
  answer.kind === "place" && problem.mode === "choose" ? `${letter}: ${text}` : text;

const letterOf = (index: number): string => String.fromCharCode("A".charCodeAt(0) + index);

/** How the problem is answered on paper. */
export function sheetAnswer(problem: Problem): SheetAnswer {
  const { truth, mode } = problem;
  const { words, figures = [], items = [] } = problem.case;
  // Words to tell are among few, and are to be known: they stand there to be ticked.
  if (mode === "choose" || (truth.kind === "word" && words !== undefined))
    return {
      kind: "options",
      options: letteredOptions(problem).map(({ letter, text }) => ({ letter, text })),
      legend: truth.kind === "row" ? figures.map(({ label }) => label).join(", ") : "",
    };
  switch (truth.kind) {
    case "quantity":
      return { kind: "quantity", unit: truth.unit };
    case "row":
      return { kind: "row", figures };
    case "order":
      return { kind: "order", items };
    default:
      return { kind: truth.kind };
  }
}

const HEARD = "You hear";

/** What is to be listened to, as it is keyed: paper makes no sound. */
export function heard({ situation, case: { listenTo, given } }: Problem): readonly Given[] {
  // A form whose question turns on what is heard says it itself.
  if (given.some(({ label }) => label === HEARD)) return [];
  const reading = situation.receivers.find(({ settings }) => settings.name === listenTo);
  return reading === undefined ? [] : [{ label: HEARD, value: keyed(reading.ident) }];
}

function keyed(ident: IdentHeard): string {
  switch (ident.kind) {
    case "ident":
      return printedMorse(ident.text);
    case "dme-only":
      return `${printedMorse(ident.text)}, higher in pitch, about every 30 seconds`;
    case "test":
      return printedMorse("TEST");
    case "test-signal":
      return "dots without an end";
    case "mixed":
      return "two idents into each other";
    case "none":
      return "no ident";
  }
}

function drawingsOf(problem: Problem): readonly SheetDrawing[] {
  const { views, scene } = problem.case;
  const { covers } = scene;
  const shown: SheetDrawing[] = views.map((kind) =>
    kind === "chart" ? { kind, marks: marksOf(problem) } : { kind },
  );
  if (views.length === 0 || !isDrawn(problem)) return shown;
  const { kind } = problem.truth;
  if (covers.includes("panel") && !views.includes("panel") && kind !== "place")
    shown.push(blankDial(problem));
  if (covers.includes("chart") && !views.includes("chart")) shown.push(blankRose(problem));
  return shown;
}

/** Whether drawing helps: not to work out miles, norths and wind, nor to judge whether a signal may be used. */
function isDrawn({ truth, form }: Problem): boolean {
  if (truth.kind === "place" || truth.kind === "panel") return true;
  if (truth.kind !== "direction" && truth.kind !== "word") return false;
  return form.skills.some((skill) => DRAWN_BANDS.has(skillOf(skill).band));
}

const DRAWN_BANDS: ReadonlySet<string> = new Set(["reading", "flying"]);

function blankDial({ case: { scene } }: Problem): SheetDrawing {
  const [first] = scene.receivers;
  const hidden = first === undefined || isCovered(scene.covers, first.name, "course");
  return { kind: "blank-dial", course: hidden ? null : first.course };
}

function blankRose(problem: Problem): SheetDrawing {
  const {
    case: { scene, given },
    situation,
    truth,
  } = problem;
  const station = scene.stations.find(
    ({ frequencyMhz }) => frequencyMhz === situation.receivers[0]?.settings.frequencyMhz,
  );
  const told = [scene.ask, ...given.map(({ value }) => value)].join(" ");
  // A station that the words do not name may be what is asked for.
  const isNamed = station !== undefined && [station.ident, station.name].some((name) => told.includes(name));
  return {
    kind: "blank-rose",
    ident: isNamed ? station.ident : "station",
    north: truth.kind === "place" ? "true north" : "the station's north",
  };
}

/** Options that are places, where they are to be chosen from. */
const marksOf = (problem: Problem): readonly SheetMark[] =>
  problem.mode !== "choose"
    ? []
    : letteredOptions(problem).flatMap(({ letter, answer }) =>
        answer.kind === "place" ? [{ letter, position: answer.position }] : [],
      );
