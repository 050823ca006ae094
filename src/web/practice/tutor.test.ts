import { describe, expect, it } from "vitest";
import { answerBy, putDown } from "../../../test/practice-learner.ts";
import { PRACTICE_ISLES } from "../../../test/practice-world.ts";
import { chance, openProblem, SLIPS, type SlipId, slipBeliefs } from "../../practice/index.ts";
import { beliefsThrough, scopeSlips } from "./beliefs.ts";
import { type Learnt, learntAfter, NOTHING_LEARNT } from "./learner-record.ts";
import {
  asking,
  beginRun,
  checked,
  drafted,
  onwardFrom,
  optionsShown,
  type Plan,
  putAway,
  type Run,
} from "./run.ts";
import { MOST_SLIPS_IN_SCOPE, SCOPES, WHOLE_COURSE } from "./scopes.ts";
import { sumUp } from "./sum-up.ts";
import { chooseNext, secondPrediction } from "./tutor.ts";

const TODAY = 20_635;
const DAY = "2026-07-01";

/** Lets a made-up learner go through a run to its end; answers without a remedy taken to heart. */
function goThrough(plan: Plan, held: readonly SlipId[], before: Learnt = NOTHING_LEARNT, seed = 1) {
  const luck = chance(seed);
  let learnt = before;
  let run: Run = beginRun(plan, `${DAY}T10:00:00.000Z`);
  let second = 0;
  let next = chooseNext(PRACTICE_ISLES, { run, learnt, seed, today: TODAY });
  for (let at = 0; at < 60 && next.kind === "problem"; at += 1) {
    const opened = openProblem(PRACTICE_ISLES, next.code);
    if (opened.kind === "fault") throw new Error(opened.says);
    const { problem } = opened;
    const text = putDown(problem, optionsShown(problem, next.believed), answerBy(problem, held));
    const when = { at: `${DAY}T10:01:00.${String(at).padStart(3, "0")}Z`, day: DAY };
    const outcome = checked(drafted(asking(run, next), text), problem, "answer", when);
    if (outcome.kind === "unready") throw new Error(`${problem.code}: ${text} was not ready`);
    learnt = learntAfter(learnt, outcome.event);
    run = outcome.run;
    const onward = onwardFrom(run, problem);
    if (onward.kind === "over") break;
    const wish = { run: putAway(run), learnt, seed: luck.integer(0, 4_000_000) };
    if (onward.kind === "second-prediction") second += 1;
    const followed =
      onward.kind === "second-prediction" ? secondPrediction(PRACTICE_ISLES, { ...onward, ...wish }) : null;
    next = followed?.kind === "problem" ? followed : chooseNext(PRACTICE_ISLES, { ...wish, today: TODAY });
    run = putAway(run);
  }
  return { run, learnt, second, sum: sumUp({ run, learnt }) };
}

const named = ({ sum }: ReturnType<typeof goThrough>, wanted: string): readonly SlipId[] =>
  sum.standing.kind === "slips"
    ? sum.standing.slips.flatMap(({ slip, standing }) => (standing === wanted ? [slip] : []))
    : [];

describe("finding out what is missing", () => {
  it("names both ideas of one who holds two of a part, and no other as likely", () => {
    const held = ["radial-reads-inbound", "needle-is-aircraft"] as const;
    const gone = goThrough({ kind: "find", scope: "reading" }, held);
    expect([...named(gone, "likely")].sort()).toEqual([...held].sort());
    expect(gone.second).toBeGreaterThan(0);
  });

  it("names nothing of one who has it right, and stops of itself", () => {
    const gone = goThrough({ kind: "find", scope: "joining" }, []);
    expect(named(gone, "likely")).toEqual([]);
    expect(named(gone, "maybe")).toEqual([]);
    expect(gone.run.turns.length).toBeLessThanOrEqual(20);
    expect(gone.run.turns.length).toBeGreaterThan(3);
  });

  it("asks no problem twice, and not one form alone", () => {
    const { run } = goThrough({ kind: "find", scope: "reading" }, []);
    expect(new Set(run.turns.map(({ code }) => code)).size).toBe(run.turns.length);
    expect(new Set(run.turns.map(({ form }) => form)).size).toBeGreaterThan(3);
  });
});

describe("what is named", () => {
  it("is nothing that no answer has followed, however common it is", () => {
    const gone = goThrough({ kind: "skill", skill: "pointer-panel" }, []);
    expect(named(gone, "likely")).toEqual([]);
    expect(named(gone, "maybe")).toEqual([]);
  });
  it("is what the answers followed, before it is likely", () => {
    const gone = goThrough({ kind: "skill", skill: "pointer-panel" }, ["head-is-radial"]);
    expect([...named(gone, "likely"), ...named(gone, "maybe")]).toContain("head-is-radial");
  });
});

describe("a remedy", () => {
  it("halves what speaks for the idea once the prediction after it was right, and is no other evidence", () => {
    const { learnt } = goThrough({ kind: "skill", skill: "pointer-panel" }, ["head-is-radial"]);
    const wrong = learnt.events.find((event) => event.kind === "answer" && event.pick !== 0);
    if (wrong?.kind !== "answer") throw new Error("nothing was wrong");
    const slips = ["head-is-radial", "selector-drives-rmi"] as const;
    const before = beliefsThrough([wrong], slips).at(-1)!.belief;
    const right = { ...wrong, pick: 0, followUp: "head-is-radial" } as const;
    const after = beliefsThrough([wrong, right], slips).at(-1)!.belief;
    expect(slipBeliefs(after)[0]).toBeCloseTo(slipBeliefs(before)[0]! / 2, 12);
    expect(slipBeliefs(after)[1]).toBeCloseTo(slipBeliefs(before)[1]!, 12);
  });
});

describe("practising a skill", () => {
  it("is six problems of that skill, told instead of chosen once the first was right", () => {
    const { run, learnt } = goThrough({ kind: "skill", skill: "side-of-line" }, []);
    expect(run.turns).toHaveLength(6);
    const modes = learnt.events.flatMap((event) => (event.kind === "answer" ? [event.item.mode] : []));
    expect(modes[0]).toBe("choose");
  });
});

describe("reviews", () => {
  it("ask each card in a fresh problem of its form", () => {
    const { learnt } = goThrough({ kind: "skill", skill: "centre-and-read" }, []);
    const cards = learnt.cards.map(({ id }) => id);
    const again = goThrough({ kind: "review", cards }, [], learnt);
    expect(again.run.turns.map(({ form }) => form)).toEqual(cards.map((id) => id.split("/")[1]));
    const seen = learnt.events.flatMap((event) => (event.kind === "answer" ? [event.code] : []));
    for (const { code } of again.run.turns) expect(seen).not.toContain(code);
  });
});

describe("an instructor's set", () => {
  it("goes through its problems in order", () => {
    const codes = goThrough({ kind: "find", scope: "reading" }, [])
      .run.turns.slice(0, 4)
      .map(({ code }) => code);
    const { run } = goThrough({ kind: "set", title: "Four", note: "", codes, link: "" }, []);
    expect(run.turns.map(({ code }) => code)).toEqual(codes);
  });
});

describe("the parts of the course", () => {
  it("hold at most twelve ideas each, but the whole course all of them", () => {
    for (const { id, slips } of SCOPES)
      if (id === WHOLE_COURSE) expect(slips).toHaveLength(SLIPS.length);
      else expect(slips.length, id).toBeLessThanOrEqual(MOST_SLIPS_IN_SCOPE);
    const covered = new Set(SCOPES.filter(({ id }) => id !== WHOLE_COURSE).flatMap(({ slips }) => slips));
    expect(covered.size).toBe(SLIPS.length);
  });
  it("let a skill's run tell its own ideas first", () => {
    const slips = scopeSlips({ kind: "skill", skill: "pointer-panel" });
    expect([...slips.slice(0, 2)].sort()).toEqual(["head-is-radial", "selector-drives-rmi"]);
    expect(slips).toContain("radial-is-heading");
  });
});
