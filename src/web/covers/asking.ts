/**
 * What has been guessed under the covers of the scenes on a bench. It stands beside the history of the scene, not in it: taking back a
 * step of the scene never takes back a guess. Each guess keeps the situation it was made in, so that an aircraft flown on or a course
 * turned since makes no right guess wrong.
 */

import { computed, type ReadonlySignal, type Signal, signal } from "@preact/signals";
import { parseCover, type Scene, type Situation } from "../../scene/index.ts";
import type { Bench } from "../state/bench.ts";
import { isInSight } from "./cover-words.ts";
import type { Answer } from "./guess.ts";

export interface Given {
  readonly answer: Answer;
  readonly situation: Situation;
}

/** One cover and what has been guessed under it. */
export interface Question {
  readonly cover: string;
  /** In the order they were given. */
  readonly given: readonly Given[];
  /** The answer being put together: where the paper needle lies, a place pencilled on the chart. */
  readonly draft: Answer | null;
  /** A guess is being made: the first, or another. */
  readonly guessing: boolean;
  /** The cover has been lifted: truth and guess may be shown together. */
  readonly lifted: boolean;
}

export interface Asking {
  /** What is covered now, in the scene's order, and then what was guessed at and has been lifted. */
  readonly questions: ReadonlySignal<readonly Question[]>;
  /** The one being asked; null when nothing is covered and nothing was guessed. */
  readonly asked: ReadonlySignal<Question | null>;
  /** Covers that were guessed at and lifted: the reasons light the steps they withheld. */
  readonly revealed: ReadonlySignal<readonly string[]>;
  /** Whether things are covered and lifted by pointing at them. */
  readonly pointing: Signal<boolean>;
  /** Counts the times that someone wants to be asked: the card takes the focus. */
  readonly called: ReadonlySignal<number>;
  readonly ask: (cover: string) => void;
  readonly draft: (cover: string, answer: Answer | null) => void;
  /** Takes a guess; the draft has become it. */
  readonly give: (cover: string, answer: Answer) => void;
  /** Begins another guess beside those given. */
  readonly again: (cover: string) => void;
  /** Forgets what was guessed under a cover. */
  readonly putAway: (cover: string) => void;
  /** Puts the focus where the question is answered. */
  readonly call: () => void;
}

type Guessed = Pick<Question, "given" | "draft" | "guessing">;
type ByCover = ReadonlyMap<string, Guessed>;
const NOTHING: Guessed = { given: [], draft: null, guessing: true };

const askings = new WeakMap<Bench, Asking>();

/** The guesses of one bench; the same for every part of the page that asks. */
export function askingOf(bench: Bench): Asking {
  const known = askings.get(bench);
  if (known !== undefined) return known;
  const made = createAsking(bench);
  askings.set(bench, made);
  return made;
}

function createAsking(bench: Bench): Asking {
  // By the scene as it was opened: another scene brings its own guesses, and taking the opening back brings the old ones again.
  const guessed = signal<ReadonlyMap<Scene, ByCover>>(new Map());
  const chosen = signal<string | null>(null);
  const pointing = signal(false);
  const called = signal(0);
  // Neither changes while something is dragged, so that the card is not drawn again with every frame.
  const covers = computed(() => bench.scene.value.covers);
  const names = computed(() => bench.scene.value.receivers.map(({ name }) => name).join(" "));
  const here = computed(() => guessed.value.get(bench.opened.value.asOpened) ?? new Map<string, Guessed>());
  const questions = computed(() => {
    const receivers = names.value.split(" ");
    const lifted = [...here.value].filter(
      ([cover, { given }]) =>
        given.length > 0 && isInSight(covers.value, cover) && isOnBench(receivers, cover),
    );
    return [
      ...covers.value.map((cover) => ({ cover, ...(here.value.get(cover) ?? NOTHING), lifted: false })),
      ...lifted.map(([cover, each]) => ({ cover, ...each, lifted: true })),
    ];
  });
  const change = (cover: string, next: (before: Guessed) => Guessed | null) => {
    const { asOpened } = bench.opened.value;
    const byCover = new Map(guessed.value.get(asOpened));
    const after = next(byCover.get(cover) ?? NOTHING);
    if (after === null) byCover.delete(cover);
    else byCover.set(cover, after);
    guessed.value = new Map(guessed.value).set(asOpened, byCover);
  };
  return {
    questions,
    asked: computed(() => {
      const all = questions.value;
      return all.find(({ cover }) => cover === chosen.value) ?? all[0] ?? null;
    }),
    revealed: computed(() => questions.value.filter(({ lifted }) => lifted).map(({ cover }) => cover)),
    pointing,
    called,
    ask: (cover) => {
      chosen.value = cover;
    },
    draft: (cover, answer) => change(cover, (before) => ({ ...before, draft: answer })),
    give: (cover, answer) => {
      chosen.value = cover;
      const { value: situation } = bench.situation;
      change(cover, ({ given }) => ({
        given: [...given, { answer, situation }],
        draft: null,
        guessing: false,
      }));
    },
    again: (cover) => change(cover, (before) => ({ ...before, guessing: true })),
    putAway: (cover) => change(cover, () => null),
    call: () => {
      called.value += 1;
    },
  };
}

/** Whether the scene still has what the cover hid: a receiver may have gone. */
function isOnBench(receivers: readonly string[], cover: string): boolean {
  const target = parseCover(cover);
  return target?.kind !== "receiver" || receivers.includes(target.receiver);
}
