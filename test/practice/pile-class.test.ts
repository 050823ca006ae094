/** What is said of a class: ideas of learners who err at times too, letters for places and words, hand marks, who is ready and who is stuck. */

import { describe, expect, it } from "vitest";
import { chance } from "../../src/practice/chance.ts";
import {
  answerText,
  buildSet,
  letteredOptions,
  type Mode,
  makeProblem,
  markPile,
  type Problem,
  type ProblemSet,
  pileReport,
  readAnswerSheet,
  type SkillId,
  type SlipId,
  sheetProblem,
} from "../../src/practice/index.ts";
import { nextSkill, stepBack } from "../../src/practice/pile/next-thing.ts";
import { PRACTICE_ISLES } from "../practice-world.ts";

const setOf = (skills: readonly SkillId[], mode: Mode, count = 20, seed = 3): ProblemSet => {
  const built = buildSet(PRACTICE_ISLES, { skills, slips: [], count, seed, mode });
  if (built.kind === "none") throw new Error(built.says);
  return built.set;
};
const setFrom = (problems: readonly Problem[]): ProblemSet => ({
  title: "Problems",
  note: "",
  world: PRACTICE_ISLES,
  problems,
});
const problemOf = (form: Parameters<typeof makeProblem>[1], mode: Mode, seed: number): Problem => {
  const made = makeProblem(PRACTICE_ISLES, form, mode, seed);
  if (made.kind === "none") throw new Error(made.says);
  return made.problem;
};
const marked = (set: ProblemSet, rows: readonly string[]) => markPile(set, readAnswerSheet(rows.join("\n")));
const quoted = (text: string): string => `"${text}"`;

/** What is written by who follows an idea on eight of ten problems that it answers, and is careless on one in twelve others. */
function written(problem: Problem, slip: SlipId, luck: ReturnType<typeof chance>): string {
  const own = problem.slipAnswers.find((one) => one.slip === slip)?.answer;
  const options = sheetProblem(problem, 1).answer.kind === "options" ? letteredOptions(problem) : null;
  const followed = own !== undefined && luck.odds(0.8);
  if (options === null) return answerText(followed ? own : problem.truth);
  if (!followed && luck.odds(own === undefined ? 1 / 12 : 0)) return luck.pick(options).letter;
  const answer = followed ? own : problem.truth;
  return options.find((one) => answerText(one.answer) === answerText(answer))?.letter ?? "?";
}

describe.each(["choose", "tell"] as const)(
  "learners who hold an idea and err at times, asked to %s",
  (mode) => {
    const HELD: readonly SlipId[] = ["selector-is-radial", "radial-reads-inbound", "needle-is-aircraft"];
    const set = setOf(["centre-and-read", "side-of-line", "dots-to-degrees", "one-line-position"], mode);
    const luck = chance(11);
    const rows = HELD.flatMap((slip) =>
      Array.from({ length: 10 }, (_, one) =>
        set.problems.map((problem, at) => `${slip} ${one},${at + 1},${quoted(written(problem, slip, luck))}`),
      ).flat(),
    );
    const pile = marked(set, rows);

    it("are named by it, and seldom by another", () => {
      expect(pile.refused).toEqual([]);
      let named = 0;
      let wrongly = 0;
      for (const { learner, standing } of pile.learners) {
        if (standing.kind !== "slips") continue;
        for (const one of standing.slips.filter((each) => each.standing === "likely"))
          if (learner.startsWith(`${one.slip} `)) named += 1;
          else wrongly += 1;
      }
      expect(named).toBeGreaterThanOrEqual(24);
      expect(wrongly).toBeLessThanOrEqual(3);
    });

    it("make up the groups, each learner once", () => {
      const grouped = pile.classView.groups.flatMap(({ learners }) => learners);
      expect(new Set(grouped).size).toBe(grouped.length);
      for (const { slip, learners } of pile.classView.groups.slice(0, 3))
        expect(learners.filter((name) => name.startsWith(slip)).length).toBeGreaterThanOrEqual(7);
    });

    it("pick the options that stand for it", () => {
      const own = pile.items.flatMap(({ fidelity }) => fidelity).filter(({ holders }) => holders >= 8);
      expect(own.length).toBeGreaterThan(3);
      const share = own.reduce((sum, one) => sum + one.share, 0) / own.length;
      expect(share).toBeGreaterThan(0.6);
    });
  },
);

/** A direction ten degrees from every option, or more. */
function offOptions(problem: Problem): string {
  const taken = letteredOptions(problem).flatMap(({ answer }) =>
    answer.kind === "direction" ? [answer.deg] : [],
  );
  const free = Array.from({ length: 36 }, (_, at) => at * 10 + 5).find((deg) =>
    taken.every((one) => Math.abs(((deg - one + 540) % 360) - 180) >= 10),
  );
  return answerText({ kind: "direction", deg: free ?? 0 });
}

describe("letters", () => {
  it("choose places, and words that may be told", () => {
    for (const problem of [problemOf("place-dot", "choose", 5), problemOf("check-verdict", "tell", 2)]) {
      const set = setFrom([problem]);
      const options = letteredOptions(problem);
      expect(options.length).toBeGreaterThan(1);
      const pile = marked(
        set,
        options.map(({ letter }) => `${letter},1,${letter}`),
      );
      expect(pile.refused).toEqual([]);
      for (const { letter, answer, slips } of options)
        expect(pile.learners.find(({ learner }) => learner === letter)?.answers[0]).toMatchObject({
          verdict: answer === problem.truth ? "right" : "wrong",
          slips,
        });
    }
  });

  it("choose what is on offer though no idea leads there, and nothing that is not on offer", () => {
    const problem = Array.from({ length: 60 }, (_, seed) => problemOf("centre-course", "choose", seed)).find(
      (one) => letteredOptions(one).some(({ answer, slips }) => answer !== one.truth && slips.length === 0),
    );
    if (problem === undefined) throw new Error("no such problem");
    const filler = letteredOptions(problem).find(
      ({ answer, slips }) => answer !== problem.truth && slips.length === 0,
    );
    const pile = marked(setFrom([problem]), [
      `Ana,1,${filler?.letter}`,
      "Bo,1,H",
      "Cho,1,12345",
      `Dag,1,${offOptions(problem)}`,
    ]);
    expect(pile.learners[0]?.answers[0]).toMatchObject({ verdict: "wrong", slips: [], marks: 0 });
    expect(pile.refused.map(({ line }) => line)).toEqual([2, 3, 4]);
    expect(pile.refused[0]?.reason).toMatch(/“H” is none of the options; write A to [A-G]/);
  });
});

describe("half a mark", () => {
  it("is not given where what is told is merely inexact", () => {
    const problem = problemOf("cut-heading", "tell", 3);
    if (problem.truth.kind !== "direction") throw new Error("a direction is told");
    const { deg } = problem.truth;
    expect(problem.case.tolerance.deg).toBe(10);
    const told = (by: number) => String(Math.round((deg + by + 359) % 360) + 1).padStart(3, "0");
    const pile = marked(setFrom([problem]), [`Ana,1,${told(14)}`, `Bo,1,${told(100)}`]);
    expect(pile.learners.map(({ marks }) => marks)).toEqual([0, 0.5]);
  });
});

describe("a digit carried wrongly that an idea gives too", () => {
  it("is the idea's, and has no half mark", () => {
    const seeds = (["read-radial", "centre-course", "measure-radial", "plan-heading"] as const).flatMap(
      (form) => Array.from({ length: 80 }, (_, seed) => problemOf(form, "tell", seed)),
    );
    const found = seeds.flatMap((problem) =>
      problem.slipAnswers.flatMap(({ slip, answer }) => {
        if (answer.kind !== "direction" || problem.truth.kind !== "direction") return [];
        const { deg = 0 } = problem.case.tolerance;
        const away = Math.abs(((answer.deg - problem.truth.deg + 540) % 360) - 180);
        return Math.abs(away - 10) < deg && deg < 3 ? [{ problem, slip, answer }] : [];
      }),
    )[0];
    if (found === undefined) throw new Error("no such problem");
    const [one] = marked(setFrom([found.problem]), [`Ana,1,${answerText(found.answer)}`]).learners;
    expect(one?.answers[0]).toMatchObject({ verdict: "wrong", marks: 0 });
    expect(one?.answers[0]?.slips).toContain(found.slip);
  });
});

describe("a learner", () => {
  it("is the same however the name is written", () => {
    const problems = [problemOf("read-radial", "tell", 4), problemOf("read-radial", "tell", 5)];
    const pile = marked(setFrom(problems), ["Ana  Ortega,1,?", "ana ortega,2,?"]);
    expect(pile.learners.map(({ learner, dontKnow }) => [learner, dontKnow])).toEqual([["Ana Ortega", 2]]);
  });

  it("has no idea that no answer of his has followed, however common it is", () => {
    const problem = Array.from({ length: 40 }, (_, seed) =>
      problemOf("overhead-or-abeam", "choose", seed),
    ).find(({ slipAnswers }) => slipAnswers.length === 1);
    if (problem === undefined) throw new Error("no such problem");
    const [one] = marked(setFrom([problem]), ["Ana,1,?"]).learners;
    expect(one?.standing).toEqual({
      kind: "slips",
      slips: [{ slip: problem.slipAnswers[0]?.slip, standing: "open" }],
    });
  });
});

describe("an answer accepted by hand", () => {
  const problem = problemOf("read-radial", "tell", 4);
  const pile = marked(setFrom([problem]), [
    "learner,problem,answer,accept",
    "Ana,1,about where the board says,the board was misprinted",
    "Bo,1,,no reason for nothing",
  ]);

  it("counts as right, with its reason in the report; nothing written cannot be accepted", () => {
    expect(pile.learners.map(({ learner, marks }) => [learner, marks])).toEqual([["Ana", 1]]);
    expect(pileReport(pile).accepted).toEqual([
      {
        line: 2,
        learner: "Ana",
        problem: "1",
        written: "about where the board says",
        because: "the board was misprinted",
      },
    ]);
    expect(pile.refused).toEqual([
      { line: 3, reason: "Bo: problem 1: nothing is written that could be accepted" },
    ]);
  });
});

describe("the class", () => {
  const set = setOf(["centre-and-read"], "tell", 12);
  const right = (name: string) =>
    set.problems.map((problem, at) => {
      const options = sheetProblem(problem, 1).answer.kind === "options" ? letteredOptions(problem) : [];
      const letter = options.find(({ answer }) => answer === problem.truth)?.letter;
      return `${name},${at + 1},${quoted(letter ?? answerText(problem.truth))}`;
    });
  const none = (name: string) => set.problems.map((_, at) => `${name},${at + 1},?`);

  it("is ready from four in five who are secure in what comes next builds on", () => {
    const readiness = (...names: readonly string[]) =>
      marked(set, [...names.flatMap(right), ...none("Eve"), ...(names.length < 4 ? none("Dag") : [])])
        .classView.readiness;
    expect(readiness("Ana", "Bo", "Cho", "Dag")).toEqual({
      skill: "to-from-halves",
      practised: ["centre-and-read"],
      notAsked: [],
      ready: 4,
      isReady: true,
      isAskedEnough: true,
    });
    expect(readiness("Ana", "Bo", "Cho")).toMatchObject({ ready: 3, isReady: false });
  });

  it("is not ready while an idea that stands in the way is held", () => {
    const long = setOf(["centre-and-read"], "tell", 30);
    let followed = 0;
    const rows = long.problems.map((problem, at) => {
      const own = problem.slipAnswers.find(({ slip }) => slip === "selector-is-radial");
      if (own !== undefined) followed += 1;
      return `Ana,${at + 1},${quoted(answerText(own !== undefined && followed <= 5 ? own.answer : problem.truth))}`;
    });
    const pile = marked(long, rows);
    const rights = long.problems.map((problem, at) => `Ana,${at + 1},${quoted(answerText(problem.truth))}`);
    expect(marked(long, rights).classView.readiness?.ready).toBe(1);
    expect(pile.classView.readiness).toMatchObject({ skill: "to-from-halves", ready: 0 });
  });

  it("is sent back, guessing, to what most problems build on, and on to what builds on most", () => {
    const problems = [
      ...[1, 2, 3].map((seed) => problemOf("minutes-out", "tell", seed)),
      problemOf("side-call", "choose", 1),
    ];
    expect(stepBack(setFrom(problems))).toBe("four-directions");
    expect(nextSkill(setFrom(problems))).toBe("dots-to-degrees");
  });

  it("is not judged by a set that asks too little", () => {
    const small = setFrom(set.problems.slice(0, 2));
    expect(marked(small, ["Ana,1,?"]).classView.readiness?.isAskedEnough).toBe(false);
  });

  it("has stuck who has eight in a row of which none is right, not seven", () => {
    const rows = [...none("Ana").slice(0, 8), ...none("Bo").slice(0, 7), ...right("Bo").slice(7)];
    expect(marked(set, rows).classView.stuck).toEqual(["Ana"]);
  });

  it("counts where answers lie that no idea gives", () => {
    const problem = problemOf("read-radial", "tell", 4);
    if (problem.truth.kind !== "direction") throw new Error("a direction is told");
    const stray = (problem.truth.deg + 57) % 360;
    const names = Array.from(
      { length: 20 },
      (_, at) => `L${at},1,${answerText({ kind: "direction", deg: stray })}`,
    );
    const [item] = marked(setFrom([problem]), names).items;
    expect(item?.unmodelled).toEqual({ wrong: 20, share: 1, newSlip: true });
    expect(item?.doubts).toEqual(["new-slip"]);
    const bins = item?.offsets.find(({ from }) => from === "truth")?.bins;
    expect(bins).toEqual([{ fromOffset: 55, toOffset: 65, count: 20 }]);
    expect(item?.offsets.map(({ from }) => from)).toEqual([
      "truth",
      "heading",
      "course",
      "radial",
      "reciprocal",
    ]);
    const chosen = problemOf("read-radial", "choose", 4);
    const letters = letteredOptions(chosen).map(({ letter }) => `${letter},1,${letter}`);
    expect(letters.length).toBeGreaterThan(2);
    expect(marked(setFrom([chosen]), letters).items.map(({ offsets }) => offsets)).toEqual([[]]);
  });
});
