/**
 * Practice as the page has it: the record, the run that is open, the problem it puts. Each step is kept at once, so that a page closed in
 * the middle is taken up where it was left.
 */

import { computed, type ReadonlySignal, type Signal, signal } from "@preact/signals";
import type { Confidence } from "../../practice/index.ts";
import { MOST_SEED, openProblem, type Problem, type World } from "../../practice/index.ts";
import type { LinkWorld, Scene, Situation } from "../../scene/index.ts";
import {
  dayNumber,
  type Learnt,
  learntAfter,
  learntFrom,
  merged,
  type PracticeEvent,
} from "./learner-record.ts";
import { createPracticeStore, type PracticeStore, RECORD_KEY } from "./practice-store.ts";
import {
  asking,
  beginRun,
  checked,
  confided,
  drafted,
  onwardFrom,
  over,
  type Plan,
  putAway,
  type Run,
  stageOf,
  timed,
} from "./run.ts";
import { MOST_RUNS } from "./run-file.ts";
import type { Path, Sum } from "./sum-up.ts";
import { createTutorClient, type TutorClient } from "./tutor-client.ts";

export interface Practice {
  readonly isles: World;
  /** The isles as links name them. */
  readonly links: LinkWorld;
  readonly learnt: ReadonlySignal<Learnt>;
  /** A scene of the open run's stations, resolved. */
  readonly resolve: (scene: Scene) => Situation;
  /** Unfinished ones, the last used first. */
  readonly runs: ReadonlySignal<readonly Run[]>;
  /** The one that fills the page; null at the start. */
  readonly run: ReadonlySignal<Run | null>;
  /** What the open run asks; null while it is being chosen. */
  readonly problem: ReadonlySignal<Problem | null>;
  /** Where the skills stand; null while it is worked out. */
  readonly path: ReadonlySignal<Path | null>;
  /** At the end of a run. */
  readonly sum: ReadonlySignal<Sum | null>;
  /** One sentence on what went wrong; empty when nothing. */
  readonly said: Signal<string>;
  readonly start: (plan: Plan) => void;
  readonly goOn: (run: Run) => Promise<void>;
  /** Back to the start; the run waits. */
  readonly leave: () => void;
  readonly draft: (text: string) => void;
  readonly confide: (confidence: Confidence | null) => void;
  readonly give: (given: "answer" | "dont-know") => void;
  /** From an answer that was seen to what comes next. */
  readonly onward: () => void;
  readonly takeIn: (events: readonly PracticeEvent[]) => void;
  readonly close: () => void;
}

export interface PracticeParts {
  readonly isles: World;
  readonly links: LinkWorld;
  /** The world of a set with stations of its own. */
  readonly worldOfLink: (link: string) => Promise<World | null>;
  readonly store?: PracticeStore;
  readonly tutor?: TutorClient;
  readonly now?: () => Date;
}

const isoDay = (date: Date): string =>
  `${date.getFullYear()}-${String(date.getMonth() + 1).padStart(2, "0")}-${String(date.getDate()).padStart(2, "0")}`;

export const todayOf = (date: Date): number => dayNumber(isoDay(date));

const samePlan = (one: Plan, other: Plan): boolean => JSON.stringify(one) === JSON.stringify(other);

export function createPractice({
  isles,
  links,
  worldOfLink,
  store = createPracticeStore(),
  tutor = createTutorClient(),
  now = () => new Date(),
}: PracticeParts): Practice {
  const learnt = signal<Learnt>(learntFrom(store.events()));
  const runs = signal<readonly Run[]>(store.runs());
  const open = signal<Run | null>(null);
  const world = signal<World>(isles);
  const sum = signal<Sum | null>(null);
  const path = signal<Path | null>(null);
  const said = signal("");
  let shownMs = performance.now();
  /** Counts what was asked of the tutor: an answer that comes too late is dropped. */
  let asks = 0;

  const problem = computed<Problem | null>(() => {
    const code = asked.value;
    if (code === null) return null;
    const opened = openProblem(world.value, code);
    return opened.kind === "problem" ? opened.problem : null;
  });
  const asked = computed(() => open.value?.asked?.code ?? null);

  const keepRun = (run: Run) => {
    const others = runs.value.filter((other) => other.startedAt !== run.startedAt);
    runs.value = (run.isOver ? others : [run, ...others]).slice(0, MOST_RUNS);
    store.keepRuns(runs.value);
    open.value = run;
  };
  const keepEvent = (event: PracticeEvent) => {
    learnt.value = learntAfter(learnt.value, event);
    if (!store.keepEvents(learnt.value.events))
      said.value =
        "This browser keeps nothing more for this page: take your record out as a file before you close it.";
  };
  const seed = () => Math.floor(Math.random() * MOST_SEED);
  const askTutor = async <T>(work: Promise<T>): Promise<T | null> => {
    asks += 1;
    const mine = asks;
    const reply = await work;
    return mine === asks ? reply : null;
  };
  const put = (run: Run, next: Awaited<ReturnType<typeof nextFor>>) => {
    if (next === null) return;
    if (next.kind === "problem") {
      shownMs = performance.now();
      keepRun(asking(run, next));
    } else finish(run);
  };
  const nextFor = (run: Run) =>
    askTutor(
      tutor.ask(world.value, "next", {
        run,
        learnt: learnt.value,
        seed: seed(),
        today: todayOf(now()),
      }),
    );
  const choose = async (run: Run) => {
    keepRun(putAway(run));
    put(putAway(run), await nextFor(run));
  };
  const finish = (run: Run) => {
    const ended = over(run);
    sum.value = null;
    keepRun(ended);
    void askTutor(tutor.ask(world.value, "sum", { run: ended, learnt: learnt.value })).then((found) => {
      if (found === null) return;
      sum.value = found;
      if (found.standing.kind === "slips")
        for (const { slip, standing } of found.standing.slips)
          if (standing === "cleared" && !learnt.value.cards.some(({ id }) => id === slip))
            keepEvent({ kind: "cleared", at: now().toISOString(), day: isoDay(now()), slip });
    });
  };
  /** The time since the problem was shown, or since this was last asked; none that the page lay hidden. */
  const clocked = (run: Run): Run => {
    const nowMs = performance.now();
    const seconds = (nowMs - shownMs) / 1000;
    shownMs = nowMs;
    return timed(run, seconds);
  };
  const onVisible = () => {
    if (document.hidden && open.value !== null && stageOf(open.value) === "asking")
      keepRun(clocked(open.value));
    else shownMs = performance.now();
  };
  const onStorage = ({ key }: StorageEvent) => {
    // Another page of this browser has gone on with it.
    if (key === RECORD_KEY) {
      learnt.value = learntFrom(store.events());
      void findPath();
    }
    if (open.value === null) runs.value = store.runs();
  };
  const findPath = async () => {
    const of = learnt.value;
    const found = await tutor.ask(isles, "path", { learnt: of });
    if (learnt.value === of) path.value = found;
  };
  void findPath();
  document.addEventListener("visibilitychange", onVisible);
  addEventListener("storage", onStorage);

  const goOn = async (run: Run): Promise<void> => {
    said.value = "";
    const { plan } = run;
    const own = plan.kind === "set" && plan.link !== "" ? await worldOfLink(plan.link) : isles;
    if (own === null) {
      said.value = "The stations of this set can no longer be read: open its link again.";
      return;
    }
    world.value = own;
    shownMs = performance.now();
    open.value = run;
    const lost = run.asked !== null && openProblem(own, run.asked.code).kind === "fault";
    if (run.asked === null || lost) {
      if (stageOf(run) === "end") finish(run);
      else await choose(run);
    }
  };
  return {
    isles,
    links,
    learnt,
    resolve: (scene) => world.value.resolve(scene),
    runs,
    run: open,
    problem,
    path,
    sum,
    said,
    start: (plan) => {
      const before = runs.value.find((run) => samePlan(run.plan, plan));
      void goOn(before ?? beginRun(plan, now().toISOString()));
    },
    goOn,
    leave: () => {
      asks += 1;
      if (open.value !== null && stageOf(open.value) === "asking") keepRun(clocked(open.value));
      open.value = null;
      void findPath();
    },
    draft: (text) => {
      if (open.value !== null) keepRun(clocked(drafted(open.value, text)));
    },
    confide: (confidence) => {
      if (open.value !== null) keepRun(clocked(confided(open.value, confidence)));
    },
    give: (given) => {
      const [run, put] = [open.value, problem.value];
      if (run === null || put === null) return;
      const when = { at: now().toISOString(), day: isoDay(now()) };
      const outcome = checked(clocked(run), put, given, when);
      if (outcome.kind === "unready") return;
      keepEvent(outcome.event);
      keepRun(outcome.run);
    },
    onward: () => {
      const [run, seen] = [open.value, problem.value];
      if (run === null || seen === null) return;
      const onward = onwardFrom(run, seen);
      if (onward.kind === "over") finish(run);
      else if (onward.kind === "choose") void choose(run);
      else
        void askTutor(
          tutor.ask(world.value, "second", { ...onward, run, learnt: learnt.value, seed: seed() }),
        ).then((next) => {
          if (next?.kind === "problem") put(putAway(run), next);
          else if (next !== null) void choose(run);
        });
    },
    takeIn: (events) => {
      learnt.value = learntFrom(merged(learnt.value.events, events));
      store.keepEvents(learnt.value.events);
      void findPath();
    },
    close: () => {
      document.removeEventListener("visibilitychange", onVisible);
      removeEventListener("storage", onStorage);
      tutor.close();
    },
  };
}
