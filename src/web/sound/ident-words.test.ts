import { describe, expect, it } from "vitest";
import type { IdentHeard } from "../../panel/index.ts";
import { identCaption, identSentence, toldOf } from "./ident-words.ts";
import type { Moment } from "./on-channel.ts";

describe("what may be told", () => {
  it.each([
    [[], "everything"],
    [["NAV1.needle", "NAV1.dme", "NAV2", "NAV2.ident", "chart", "aircraft", "reasons"], "everything"],
    [["NAV1.frequency"], "no-letters"],
    [["NAV1.ident"], "nothing"],
    [["NAV1"], "nothing"],
    [["panel"], "nothing"],
    [["NAV1.frequency", "NAV1.ident"], "nothing"],
  ] as const)("under the covers %j is %s", (covers, told) => {
    expect(toldOf("NAV1", covers)).toBe(told);
  });
});

const KINDS: readonly IdentHeard[] = [
  { kind: "ident", text: "TXJ" },
  { kind: "test" },
  { kind: "test-signal" },
  { kind: "none" },
  { kind: "dme-only", text: "BJQ" },
  { kind: "mixed", texts: ["SRX", "TXJ"] },
];
const moment = (toneHz: number, text = "TXJ"): Moment => ({
  call: { startS: 0, text, toneHz },
  sinceS: 2,
  nextInS: 8,
});

describe("the words", () => {
  it("spell what is heard", () => {
    expect(KINDS.map((ident) => identSentence("NAV2", ident, "everything"))).toEqual([
      "Identify NAV2: T, X, J.",
      "Identify NAV2: T, E, S, T. The station is on test, do not use it.",
      "Identify NAV2: a row of dots, the test signal.",
      "Identify NAV2: silence, no ident.",
      "Identify NAV2: B, J, Q, on the higher tone of a DME, 1350 hertz, about once in 40 seconds, and no other ident.",
      "Identify NAV2: two idents at once, S, R, X and T, X, J.",
    ]);
  });

  it("name no letter and no meaning of the code that is to be read", () => {
    for (const ident of KINDS) {
      const words = [
        identSentence("NAV2", ident, "no-letters"),
        identCaption(ident, moment(1020), "no-letters"),
      ].join(" ");
      expect(words).not.toMatch(/TXJ|SRX|BJQ|TEST|\b[A-Z], [A-Z]\b|test/);
    }
    // A station on test and any other of four letters are told alike.
    const four: IdentHeard = { kind: "ident", text: "ABCD" };
    expect(identSentence("NAV2", { kind: "test" }, "no-letters")).toBe(
      identSentence("NAV2", four, "no-letters"),
    );
    expect(identCaption({ kind: "test" }, moment(1020), "no-letters")).toBe(
      identCaption(four, moment(1020), "no-letters"),
    );
  });

  it("say below the code whose turn it is and when the next comes", () => {
    const txj: IdentHeard = { kind: "ident", text: "TXJ" };
    expect(identCaption(txj, moment(1020), "everything")).toBe("1020 Hz, every 10 s");
    expect(identCaption(txj, moment(1350), "everything")).toBe("its DME's turn, 1350 Hz");
    const lone: IdentHeard = { kind: "dme-only", text: "BJQ" };
    expect(identCaption(lone, { ...moment(1350), nextInS: 30.2 }, "everything")).toBe(
      "DME alone, next in 31 s",
    );
    expect(identCaption({ kind: "none" }, null, "everything")).toBe("silence: no ident");
    expect(identCaption({ kind: "test" }, moment(1020), "everything")).toBe("on test: do not use");
  });
});
