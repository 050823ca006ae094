/** Marking a pile: ideas held are named, guessers are not labelled, no row is lost. */

import { describe, expect, it } from "vitest";
import {
  buildSet,
  MODES,
  markPile,
  type ProblemSet,
  pileReport,
  readAnswerSheet,
  slipOf,
} from "../../src/practice/index.ts";
import { PRACTICE_ISLES } from "../practice-world.ts";
import { classAnswers, type PaperLearner } from "./class-answers.ts";

const setOf = (mode: (typeof MODES)[number]): ProblemSet => {
  const built = buildSet(PRACTICE_ISLES, {
    title: "Reading the panel",
    note: "",
    skills: ["centre-and-read", "to-from-halves", "side-of-line", "dots-to-degrees", "in-or-out-course"],
    slips: [],
    count: 20,
    seed: 3,
    mode,
  });
  if (built.kind === "none") throw new Error(built.says);
  return built.set;
};

const CLASS: readonly PaperLearner[] = [
  { name: "Ana Ortega", holds: ["selector-is-radial"] },
  { name: "Ben, the tall one", holds: ["selector-is-radial", "inbound-sets-radial"] },
  { name: "Cho", holds: ["needle-is-aircraft"] },
  { name: "Dag", holds: [] },
  { name: "Eve", holds: [], guesses: true },
];

const marked = (set: ProblemSet, text: string) => markPile(set, readAnswerSheet(text));

describe.each(MODES)("a pile of answers to %s", (mode) => {
  const set = setOf(mode);
  const pile = marked(set, classAnswers(set, CLASS));
  const report = pileReport(pile);
  const learner = (name: string) => {
    const found = report.learners.find((one) => one.learner === name);
    if (found === undefined) throw new Error(`${name} is missing`);
    return found;
  };

  it("names the ideas that learners hold, and no others", () => {
    for (const { name, holds, guesses } of CLASS)
      if (!guesses)
        expect([...learner(name).likely].sort()).toEqual(holds.map((id) => slipOf(id).name).sort());
  });

  it("marks who has it right in full and sends him on", () => {
    expect(learner("Dag")).toMatchObject({ marks: 20, of: 20, unanswered: 0 });
    expect(learner("Dag").next).toMatch(/^All right: (go on to “|fly it)/);
  });

  it("says first what most of the class need", () => {
    const [first] = report.slips;
    expect(first?.id).toBe("selector-is-radial");
    expect(first?.likely).toEqual(["Ana Ortega", "Ben, the tall one"]);
    expect(report.learnerCount).toBe(5);
    expect(pile.classView.groups).toEqual([
      { slip: "selector-is-radial", learners: ["Ana Ortega", "Ben, the tall one"] },
      { slip: "needle-is-aircraft", learners: ["Cho"] },
    ]);
    expect(learner("Ana Ortega").next).toBe(slipOf("selector-is-radial").remedy);
  });

  it("loses no answer", () => {
    expect(pile.refused).toEqual([]);
    expect(report.answers).toBe(100);
    expect(report.items.reduce((sum, { answers }) => sum + answers, 0)).toBe(100);
  });
});

describe("a guesser", () => {
  it("is called so, and no idea is named", () => {
    const set = setOf("choose");
    const guessers = [1, 2, 3, 4, 5].map((at) => ({
      name: `Guesser ${at}`,
      holds: [],
      guesses: true as const,
    }));
    const report = pileReport(marked(set, classAnswers(set, guessers, 4)));
    expect(report.guessing.length).toBeGreaterThanOrEqual(4);
    for (const { isGuessing, likely, maybe, next } of report.learners)
      if (isGuessing) {
        expect([...likely, ...maybe]).toEqual([]);
        expect(next).toContain("go back");
      }
  });
});

describe("rows that cannot be used", () => {
  const set = setOf("tell");
  const first = set.problems[0];
  if (first === undefined) throw new Error("an empty set");
  const text = [
    "Problem;x",
    "",
    "Ana,1,123",
    "Ana,1,124",
    "Ana,99,123",
    "Ana,AAA-AAA-AAA,123",
    ",1,123",
    "Bo,,123",
    "Bo,2,",
    "Bo,3,over there",
    "Bo,4,?",
  ].join("\n");
  const pile = marked(set, text);

  it("are listed with line and remedy, and all others count", () => {
    expect(pile.refused.map(({ line }) => line)).toEqual([1, 4, 5, 6, 7, 8, 9, 10]);
    const reasons = pile.refused.map(({ reason }) => reason);
    expect(reasons[1]).toContain("a second answer to problem 1");
    expect(reasons[2]).toContain("it has 1 to 20");
    expect(reasons[3]).toContain("miscopied");
    expect(reasons[4]).toContain("no learner is named");
    expect(reasons[6]).toContain("nothing is written");
    expect(reasons[7]).toContain("is none of the options; write A or B");
    for (const reason of reasons) expect(reason).not.toMatch(/\.$/);
    expect(pile.learners.map(({ learner, answers }) => [learner, answers.length])).toEqual([
      ["Ana", 1],
      ["Bo", 1],
    ]);
  });

  it("takes columns in any order by their names, how sure, and the time", () => {
    const sheet = readAnswerSheet(
      "Seconds,Answer,Name,Number,Sure\n41,246,Ana,1,think so\n5,?,Ana,2,\nsoon,1,Ana,3,\n1,1,Ana,4,very",
    );
    expect(sheet.rows).toEqual([
      {
        line: 2,
        learner: "Ana",
        problem: "1",
        answer: "246",
        confidence: "think-so",
        timeS: 41,
        acceptedBecause: null,
      },
      {
        line: 3,
        learner: "Ana",
        problem: "2",
        answer: "?",
        confidence: null,
        timeS: 5,
        acceptedBecause: null,
      },
    ]);
    expect(sheet.refused.map(({ line }) => line)).toEqual([4, 5]);
  });
});

describe("half a mark", () => {
  it("is given for a digit carried wrongly, and for nothing that an idea explains", () => {
    const set = setOf("tell");
    const at = set.problems.findIndex(({ truth }) => truth.kind === "direction");
    const problem = set.problems[at];
    if (problem?.truth.kind !== "direction") throw new Error("no direction is asked");
    const { deg } = problem.truth;
    const written = (by: number) =>
      `Ana,${at + 1},${String((Math.round(deg + by + 359) % 360) + 1).padStart(3, "0")}`;
    const marks = [10, -100, 33].map((by) => marked(set, written(by)).learners[0]?.answers[0]);
    expect(marks.map((answer) => answer?.marks)).toEqual([0.5, 0.5, 0]);
    const slip = problem.slipAnswers[0];
    if (slip?.answer.kind !== "direction") throw new Error("no slip answers it");
    const own = marked(set, `Ana,${at + 1},${Math.round(slip.answer.deg)}`).learners[0]?.answers[0];
    expect(own).toMatchObject({ verdict: "wrong", marks: 0 });
    expect(own?.slips).toContain(slip.slip);
  });
});
