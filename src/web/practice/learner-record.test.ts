import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { PRACTICE_ISLES } from "../../../test/practice-world.ts";
import { evidenceOf, type FormId, formOf, makeProblem } from "../../practice/index.ts";
import {
  type Answered,
  dayNumber,
  learntAfter,
  learntFrom,
  merged,
  NOTHING_LEARNT,
} from "./learner-record.ts";
import { readRecord, recordText } from "./record-file.ts";
import { pathOf } from "./sum-up.ts";
import { skillRows } from "./words.ts";

function answer(form: FormId, seed: number, day: string, parts: Partial<Answered> = {}): Answered {
  const made = makeProblem(PRACTICE_ISLES, form, formOf(form).modes.at(-1)!, seed);
  if (made.kind === "none") throw new Error(made.says);
  return {
    kind: "answer",
    at: `${day}T10:00:${String(seed).padStart(2, "0")}.000Z`,
    day,
    code: made.problem.code,
    form,
    item: evidenceOf(made.problem, null).item,
    pick: 0,
    confidence: "think-so",
    timeS: 20,
    followUp: null,
    ...parts,
  };
}

const placeOf = (events: readonly Answered[], skill: string) =>
  skillRows(learntFrom(events), pathOf({ learnt: learntFrom(events) })).find((row) => row.skill.id === skill)
    ?.place;

describe("a skill", () => {
  const first = [0, 1, 2].map((seed) => answer("read-radial", seed, "2026-07-01"));
  const other = [3, 4, 5].map((seed) => answer("centre-course", seed, "2026-07-01"));
  it("is secure today after rights in two forms, and mastered on another day", () => {
    expect(placeOf(first, "centre-and-read")).toBe("not-yet");
    expect(placeOf([...first, ...other], "centre-and-read")).toBe("secure-today");
    const later = answer("read-radial", 7, "2026-07-03");
    expect(placeOf([...first, ...other, later], "centre-and-read")).toBe("mastered");
  });
  it("is locked until those it builds on are secure, and opened by having been begun", () => {
    expect(placeOf([], "to-from-halves")).toBe("locked");
    expect(placeOf([...first, ...other], "to-from-halves")).toBe("not-yet");
    expect(placeOf([answer("flag-forecast", 1, "2026-07-01")], "to-from-halves")).toBe("not-yet");
  });
  it("does not grow by a second prediction that is right", () => {
    const followed = first.map((event) => ({ ...event, followUp: "radial-is-heading" as const }));
    expect(learntFrom(followed).skills).toEqual({});
    expect(learntFrom(followed).events).toHaveLength(3);
  });
});

describe("reviews", () => {
  const day = "2026-07-01";
  it("come after some days where the answer was right, and next day where it was wrong", () => {
    const [right] = learntAfter(NOTHING_LEARNT, answer("side-call", 1, day)).cards;
    const [wrong] = learntAfter(NOTHING_LEARNT, answer("side-call", 1, day, { pick: 1 })).cards;
    expect(right?.id).toBe("side-of-line/side-call");
    expect(right!.dueDay - dayNumber(day)).toBeGreaterThan(1);
    expect(wrong!.dueDay - dayNumber(day)).toBe(1);
  });
  it("are not moved by a right answer before their day, and are by a wrong one", () => {
    const begun = learntAfter(NOTHING_LEARNT, answer("side-call", 1, day));
    const early = learntAfter(begun, answer("side-call", 2, "2026-07-02"));
    expect(early.cards).toEqual(begun.cards);
    const lapsed = learntAfter(begun, answer("side-call", 2, "2026-07-02", { pick: 1 }));
    expect(lapsed.cards[0]?.dueDay).toBe(dayNumber("2026-07-03"));
  });
  it("watch an idea that was cleared, once", () => {
    const cleared = { kind: "cleared", at: `${day}T10:00:00.000Z`, day, slip: "page-left-right" } as const;
    const learnt = learntFrom([cleared, cleared]);
    expect(learnt.cards.map(({ kind, id }) => [kind, id])).toEqual([["slip", "page-left-right"]]);
  });
});

describe("the record as a file", () => {
  const events = [
    answer("read-radial", 0, "2026-07-01"),
    answer("side-call", 1, "2026-07-02", { pick: "dont-know", confidence: null }),
    { kind: "cleared", at: "2026-07-02T11:00:00.000Z", day: "2026-07-02", slip: "page-left-right" },
  ] as const;
  const text = recordText(events);

  it("comes back as it was", () => {
    expect(readRecord(text)).toEqual({ ok: true, events });
  });
  it("is added to another record without losing or doubling anything", () => {
    expect(merged(events, events)).toEqual(events);
    expect(merged(events.slice(1), events.slice(0, 1))).toEqual(events);
  });
  it.each([
    ["nothing", "", /no record of practice/],
    ["another file", JSON.stringify({ scene: 1 }), /no record of practice/],
    ["another version", text.replace('"version":1', '"version":9'), /version 9.*reads version 1/],
    ["half a file", text.slice(0, 200), /no record of practice/],
    ["a spoilt entry", text.replace("2026-07-02T11", "yesterday"), /^Entry 3 of this record is spoilt/],
    ["an idea outside its options", text.replace(/:1,|:1}/, ":77}"), /spoilt|no record/],
  ])("is refused when it holds %s", (_, spoilt, says) => {
    const read = readRecord(spoilt);
    expect(read.ok ? "taken" : read.says).toMatch(says);
  });
  it("never throws, whatever is cut out of it", () => {
    fc.assert(
      fc.property(fc.nat(text.length), fc.nat(40), fc.string(), (at, length, put) => {
        const read = readRecord(text.slice(0, at) + put + text.slice(at + length));
        if (read.ok) learntFrom(read.events);
        else expect(read.says).toMatch(/\.$/);
      }),
    );
  });
});
