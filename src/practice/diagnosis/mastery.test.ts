import { describe, expect, it } from "vitest";
import type { ItemAnswer, ItemEvidence } from "./item-evidence.ts";
import { afterSkillAnswer, NEW_SKILL_RECORD, type SkillRecord, skillStanding } from "./mastery.ts";

const SLIPS = ["page-left-right", "needle-is-aircraft"];
const item = (
  mode: ItemEvidence["mode"],
  optionCount: number,
  ...fired: readonly string[]
): ItemEvidence => ({
  mode,
  optionCount,
  slipOptions: Object.fromEntries(fired.map((slip) => [slip, 1])),
});
const FOUR = item("choose", 4, "page-left-right");
const answered = (
  record: SkillRecord,
  pick: ItemAnswer["pick"],
  { form = "side-call", day = "2026-03-01", of = FOUR, slips = SLIPS }: Partial<Given> = {},
) => afterSkillAnswer(record, slips, { form, item: of, answer: { pick, confidence: null }, day });
interface Given {
  readonly form: string;
  readonly day: string;
  readonly of: ItemEvidence;
  readonly slips: readonly string[];
}

describe("the traced knowledge", () => {
  it("follows Bayes' rule and learning by the item, worked by hand", () => {
    // .2 known; right with .9 if known, 1/4 if not: .18 / .38 = .4737; then a part .15 of the rest is learnt.
    expect(answered(NEW_SKILL_RECORD, 0).known).toBeCloseTo(0.18 / 0.38 + 0.15 * (0.2 / 0.38), 12);
    // Wrong with .1 if known, 3/4 if not: .02 / .62.
    expect(answered(NEW_SKILL_RECORD, 1).known).toBeCloseTo(0.02 / 0.62 + 0.15 * (0.6 / 0.62), 12);
    // Typed: .03 to guess.
    const told = { of: item("tell", 6, "page-left-right") };
    expect(answered(NEW_SKILL_RECORD, 0, told).known).toBeCloseTo(0.18 / 0.204 + 0.15 * (0.024 / 0.204), 12);
  });

  it("takes I don't know yet as a wrong answer, no worse", () =>
    expect(answered(NEW_SKILL_RECORD, "dont-know")).toEqual(answered(NEW_SKILL_RECORD, 1)));

  it("takes no account of an item on which no slip of the skill would be wrong", () => {
    const record = answered(NEW_SKILL_RECORD, 0);
    expect(answered(record, 0, { of: item("choose", 4, "degree-is-a-mile") })).toBe(record);
    expect(answered(record, 1, { of: item("choose", 4) })).toBe(record);
  });

  it("takes account of every item of a skill that has no slips", () =>
    expect(answered(NEW_SKILL_RECORD, 0, { of: item("choose", 4), slips: [] }).rights).toBe(1));
});

const NO_SLIP = [{ slip: "page-left-right", belief: 0.15 }];
const stands = (record: SkillRecord, slips = NO_SLIP, flown: boolean | null = null) => {
  const { standing, next } = skillStanding(record, slips, flown);
  return [standing, next.kind];
};
const days = (...given: readonly Partial<Given>[]) =>
  given.reduce<SkillRecord>((so, one) => answered(so, 0, one), NEW_SKILL_RECORD);
const CALL = { form: "side-call" };
const FORECAST = { form: "needle-forecast" };
const LATER = { day: "2026-03-04" };

describe("the standing in a skill", () => {
  it("is mastered by three rights in two forms on two days", () =>
    expect(stands(days(CALL, FORECAST, { ...CALL, ...LATER }))).toEqual(["mastered", "review-when-due"]));

  it("is secure today before the second day", () =>
    expect(stands(days(CALL, FORECAST, CALL))).toEqual(["secure-today", "come-back-another-day"]));

  it("asks for another form, however many rights there are in one", () =>
    expect(stands(days(CALL, CALL, CALL, CALL, { ...CALL, ...LATER }))).toEqual([
      "not-yet",
      "answer-in-another-form",
    ]));

  it("asks for another answer before three rights, or after a wrong one", () => {
    expect(stands(NEW_SKILL_RECORD)).toEqual(["not-yet", "answer-another"]);
    expect(stands(days(CALL, FORECAST))).toEqual(["not-yet", "answer-another"]);
    // Two typed rights are enough to be taken as knowing, and not enough to be called so.
    const told = { of: item("tell", 6, "page-left-right") };
    const twice = days({ ...CALL, ...told }, { ...FORECAST, ...told });
    expect(twice.known).toBeGreaterThan(0.95);
    expect(stands(twice)).toEqual(["not-yet", "answer-another"]);
    const wrong = answered(days(CALL, FORECAST, { ...CALL, ...LATER }), 1);
    expect(stands(wrong)).toEqual(["not-yet", "answer-another"]);
  });

  it("asks to clear up the likeliest slip left above .15", () => {
    const { standing, next } = skillStanding(
      days(CALL, FORECAST, { ...CALL, ...LATER }),
      [
        { slip: "page-left-right", belief: 0.16 },
        { slip: "needle-is-aircraft", belief: 0.4 },
      ],
      null,
    );
    expect([standing, next]).toEqual(["not-yet", { kind: "clear-up", slip: "needle-is-aircraft" }]);
  });

  it("asks for an exercise where the skill is flown", () => {
    const record = days(CALL, FORECAST, { ...CALL, ...LATER });
    expect(stands(record, NO_SLIP, false)).toEqual(["not-yet", "fly-an-exercise"]);
    expect(stands(record, NO_SLIP, true)).toEqual(["mastered", "review-when-due"]);
  });

  it("shows no number", () => {
    const shown = JSON.stringify(skillStanding(days(CALL, FORECAST, CALL), NO_SLIP, null));
    expect(shown).not.toMatch(/\d/);
  });
});
