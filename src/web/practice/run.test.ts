import { describe, expect, it } from "vitest";
import { answerBy, putDown } from "../../../test/practice-learner.ts";
import { PRACTICE_ISLES } from "../../../test/practice-world.ts";
import { FORMS, type FormId, type Mode, makeProblem, type Problem, slipOf } from "../../practice/index.ts";
import {
  asking,
  beginRun,
  checked,
  confided,
  drafted,
  lengthOf,
  markedOf,
  NOTHING_BELIEVED,
  onwardFrom,
  optionsShown,
  over,
  putAway,
  type Run,
  slipToRefute,
  stageOf,
  timed,
} from "./run.ts";
import { readRuns, runsText } from "./run-file.ts";

const WHEN = { at: "2026-07-01T10:00:00.000Z", day: "2026-07-01" };

function problemOf(form: FormId, mode: Mode, seed = 1): Problem {
  const made = makeProblem(PRACTICE_ISLES, form, mode, seed);
  if (made.kind === "none") throw new Error(made.says);
  return made.problem;
}

const begun = (): Run => beginRun({ kind: "skill", skill: "centre-and-read" }, WHEN.at);
const put = (problem: Problem, run: Run = begun(), believed = NOTHING_BELIEVED): Run =>
  asking(run, { code: problem.code, believed, followUp: null });

function answered(problem: Problem, draft: string, run: Run = put(problem)) {
  const outcome = checked(drafted(run, draft), problem, "answer", WHEN);
  if (outcome.kind === "unready") throw new Error("the answer was not ready");
  return outcome;
}

const PROBLEM = problemOf("read-radial", "tell");
const wrongOf = (problem: Problem) => {
  const [slip] = problem.slipAnswers;
  if (slip === undefined) throw new Error("no idea differs here");
  return { slip: slip.slip, draft: putDown(problem, null, slip.answer) };
};
const RIGHT = putDown(PROBLEM, null, PROBLEM.truth);

describe("a run", () => {
  it("goes from choosing to asking, to answered, and on", () => {
    expect(stageOf(begun())).toBe("choosing");
    const asked = put(PROBLEM);
    expect(stageOf(asked)).toBe("asking");
    const { run } = answered(PROBLEM, RIGHT, asked);
    expect(stageOf(run)).toBe("answered");
    expect(stageOf(putAway(run))).toBe("choosing");
    expect(stageOf(over(run))).toBe("end");
  });

  it("takes nothing that cannot be marked, and nothing twice", () => {
    expect(checked(put(PROBLEM), PROBLEM, "answer", WHEN).kind).toBe("unready");
    expect(checked(drafted(put(PROBLEM), "east"), PROBLEM, "answer", WHEN).kind).toBe("unready");
    const { run } = answered(PROBLEM, RIGHT);
    expect(checked(run, PROBLEM, "answer", WHEN).kind).toBe("unready");
    expect(drafted(run, "001")).toBe(run);
    expect(confided(run, "sure")).toBe(run);
  });

  it("keeps what was answered, how surely and how long it took", () => {
    const { run, event } = answered(PROBLEM, RIGHT, timed(confided(put(PROBLEM), "sure"), 12.4));
    expect(event).toMatchObject({ pick: 0, confidence: "sure", timeS: 12, code: PROBLEM.code });
    expect(run.turns).toHaveLength(1);
    expect(run.turns[0]).toMatchObject({ verdict: "right", followUp: null });
  });

  it("takes a pause for no more than half an hour", () => {
    expect(timed(put(PROBLEM), 1e6).asked?.timeS).toBe(1800);
    expect(timed(put(PROBLEM), -5).asked?.timeS).toBe(0);
  });

  it("asks one like it after a wrong answer that an idea explains, and not a third time", () => {
    const { slip, draft } = wrongOf(PROBLEM);
    const { run } = answered(PROBLEM, draft);
    expect(onwardFrom(run, PROBLEM)).toMatchObject({ kind: "second-prediction", like: PROBLEM.code });
    const again = problemOf("read-radial", "tell", 5);
    const second = asking(putAway(run), { code: again.code, believed: NOTHING_BELIEVED, followUp: slip });
    const after = answered(again, wrongOf(again).draft, second);
    expect(after.event.followUp).toBe(slip);
    expect(onwardFrom(after.run, again)).toEqual({ kind: "choose" });
  });

  it("names no idea to one who is just guessing, nor for an answer that none explains", () => {
    const guessing = { slips: {}, guessing: true };
    const { run } = answered(PROBLEM, wrongOf(PROBLEM).draft, put(PROBLEM, begun(), guessing));
    expect(onwardFrom(run, PROBLEM)).toEqual({ kind: "choose" });
    const marked = markedOf(PROBLEM, { ...put(PROBLEM).asked!, draft: "001", given: "answer" });
    expect(marked?.verdict).toBe("wrong");
    expect(slipToRefute(marked!, put(PROBLEM).asked!)).toBeNull();
  });

  it("refutes the idea that is held the likeliest", () => {
    const shared = FORMS.flatMap((form) =>
      Array.from({ length: 20 }, (_, seed) => problemOf(form.id, form.modes[0]!, seed)),
    ).find((problem) =>
      problem.slipAnswers.some(({ answer }, at) =>
        problem.slipAnswers.some(
          (other, place) => place > at && JSON.stringify(other.answer) === JSON.stringify(answer),
        ),
      ),
    )!;
    const options = optionsShown(shared, NOTHING_BELIEVED);
    const [first, second] = shared.slipAnswers.filter(
      ({ answer }, _, all) =>
        all.filter((other) => JSON.stringify(other.answer) === JSON.stringify(answer)).length > 1,
    );
    for (const likely of [first!.slip, second!.slip]) {
      const believed = { slips: { [likely]: 0.9 }, guessing: false };
      const asked = {
        ...put(shared, begun(), believed).asked!,
        draft: putDown(shared, options, first!.answer),
        given: "answer" as const,
      };
      expect(slipToRefute(markedOf(shared, asked)!, asked)).toBe(likely);
      expect(slipOf(likely).refutation).not.toBe("");
    }
  });

  it("does not hold 'I don't know yet' against anyone: no idea, no second prediction", () => {
    const outcome = checked(put(PROBLEM), PROBLEM, "dont-know", WHEN);
    if (outcome.kind === "unready") throw new Error("it is always ready");
    expect(outcome.event.pick).toBe("dont-know");
    expect(outcome.run.turns[0]).toMatchObject({ verdict: "dont-know", slips: [] });
    expect(onwardFrom(outcome.run, PROBLEM)).toEqual({ kind: "choose" });
  });

  it("of six problems is over after the sixth, second predictions not counted", () => {
    let run = begun();
    expect(lengthOf(run)).toBe(6);
    for (let at = 0; at < 6; at += 1) {
      const problem = problemOf("read-radial", "tell", at);
      run = answered(problem, putDown(problem, null, problem.truth), put(problem, putAway(run))).run;
      const extra = asking(putAway(run), {
        code: PROBLEM.code,
        believed: NOTHING_BELIEVED,
        followUp: "radial-is-heading",
      });
      if (at === 2) run = answered(PROBLEM, RIGHT, extra).run;
      expect(onwardFrom(run, problem).kind).toBe(at === 5 ? "over" : "choose");
    }
  });

  it("comes back from its stored text at any moment, and holds no answer in it", () => {
    const half = drafted(confided(put(PROBLEM), "guess"), "24");
    expect(readRuns(runsText([half]))).toEqual([half]);
    const stored = runsText([put(PROBLEM)]);
    expect(stored).not.toContain(RIGHT);
    for (const { slip } of PROBLEM.slipAnswers) expect(stored).not.toContain(slip);
    const { run } = answered(PROBLEM, wrongOf(PROBLEM).draft);
    expect(readRuns(runsText([run]))).toEqual([run]);
  });

  it.each([
    ["no text", null],
    ["no JSON", "{"],
    ["another version", JSON.stringify({ version: 2, runs: [begun()] })],
    [
      "a plan that is none",
      JSON.stringify({ version: 1, runs: [{ ...begun(), plan: { kind: "skill", skill: "none" } }] }),
    ],
    ["a turn that is none", JSON.stringify({ version: 1, runs: [{ ...begun(), turns: [{}] }] })],
    ["a problem that is none", JSON.stringify({ version: 1, runs: [{ ...begun(), asked: { code: 3 } }] })],
  ])("is left out when its store holds %s", (_, text) => {
    expect(readRuns(text)).toEqual([]);
  });
});

describe("a learner's draft", () => {
  it.each(FORMS.flatMap((form) => form.modes.map((mode) => [form.id, mode] as const)))(
    "gives the right answer of %s (%s), and that of an idea, as they are meant",
    (id, mode) => {
      for (let seed = 0; seed < 8; seed += 1) {
        const problem = problemOf(id, mode, seed);
        const options = optionsShown(problem, NOTHING_BELIEVED);
        expect(answered(problem, putDown(problem, options, problem.truth)).event.pick).toBe(0);
        for (const { slip } of problem.slipAnswers) {
          const answer = answerBy(problem, [slip]);
          const { run, event } = answered(problem, putDown(problem, options, answer));
          const shown = event.item.slipOptions[slip];
          if (shown === "not-on-offer") continue;
          // Told, two ideas' answers may lie so near that one stands for both.
          if (mode === "choose") expect(event.pick, `${slip} at seed ${seed}`).toBe(shown);
          else expect(event.pick).not.toBe(0);
          expect(run.turns[0]?.slips).toContain(slip);
        }
      }
    },
  );
});
