import { describe, expect, it } from "vitest";
import type { Part, Reason, ReasonRule } from "../../reason/index.ts";
import { askedNote, isSameLit, litBy, stepsAsked } from "./asked.ts";

const step = (number: number, rule: ReasonRule, parts: readonly Part[], receiver = "NAV1"): Reason => ({
  receiver,
  number,
  rule,
  title: rule,
  sentence: rule,
  numbers: {},
  source: "common practice",
  parts,
});
const CHAIN = [
  step(1, "tuned", ["frequency", "ident"]),
  step(2, "to-from", ["flag", "to-side"]),
  step(3, "deviation", ["needle", "course"]),
  step(4, "fly", ["heading", "course", "needle"]),
];
const part = (name: Part, receiver = "NAV1") => ({ kind: "part", receiver, part: name }) as const;

describe("what the chain is asked for", () => {
  it("is every step that speaks of a part, in order, and the part itself is lit", () => {
    expect(stepsAsked(part("needle"), CHAIN).map(({ number }) => number)).toEqual([3, 4]);
    expect(litBy(part("needle"), CHAIN)).toEqual({ receiver: "NAV1", parts: ["needle"] });
    expect(askedNote(part("needle"), CHAIN)).toBe("The needle: 2 steps speak of it");
    expect(askedNote(part("flag"), CHAIN)).toBe("The flag: 1 step speaks of it");
  });

  it("is one step, and all that it speaks of is lit", () => {
    expect(litBy({ kind: "step", rule: "fly" }, CHAIN)?.parts).toEqual(["heading", "course", "needle"]);
    expect(askedNote({ kind: "step", rule: "fly" }, CHAIN)).toBe("Rule: common practice");
  });

  it("is nothing for a part that no step speaks of, or of another receiver", () => {
    for (const asked of [null, part("dme"), part("needle", "NAV2")]) {
      expect(stepsAsked(asked, CHAIN)).toEqual([]);
      expect(litBy(asked, CHAIN)).toBeNull();
      expect(askedNote(asked, CHAIN)).toBe("");
    }
  });

  it("lights the same while the numbers in the steps change, and another light for another part", () => {
    const later = CHAIN.map((each) => ({ ...each, sentence: `${each.sentence}, later` }));
    expect(isSameLit(litBy(part("needle"), CHAIN), litBy(part("needle"), later))).toBe(true);
    expect(isSameLit(litBy(part("needle"), CHAIN), litBy(part("flag"), CHAIN))).toBe(false);
    expect(isSameLit(litBy(part("needle"), CHAIN), null)).toBe(false);
  });
});
