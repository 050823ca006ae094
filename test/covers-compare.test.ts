/** A guess beside the truth: that the words say which way, by how much, and nothing that other covers still hide. */

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { direct, geodesicDistanceNm, type LatLon, trueDeg } from "../src/earth/index.ts";
import { resolveScene, type Situation } from "../src/scene/index.ts";
import { type Comparison, compareGuess } from "../src/web/covers/compare-guess.ts";
import { type Answer, answerKind } from "../src/web/covers/guess.ts";
import { HJL, OXK, onRadial, type Setup, situationOf, TXJ } from "./isles.ts";

/** 18 NM out on Tamsel's 246 radial, course 070: the flag says TO, the needle stands two dots left. */
const OFF_THE_LINE: Setup = { at: onRadial(TXJ, 246, 18), courseDeg: 70, headingDeg: 90 };
const said = (setup: Setup, cover: string, answer: Answer): string =>
  compareGuess(situationOf(setup), { cover, answer }).sentence;

describe("a guess at the needle", () => {
  const at = (dots: number | null, change: Partial<Setup> = {}) =>
    said({ ...OFF_THE_LINE, ...change }, "NAV1.needle", { kind: "needle", dots });

  it.each([
    [-2, "Right: 2 dots left."],
    [-3, "The right side, 1 dot too many."],
    [-1.5, "The right side, half a dot too few."],
    [-4.5, "The right side, 2½ dots too many."],
    [-5, "The right side, but not at the stop: 2 dots left."],
    [2, "The right distance on the wrong side: 2 dots left."],
    [3, "The wrong side: 2 dots left."],
    [0, "It is not centred: 2 dots left."],
    [null, "There is a signal: the needle stands 2 dots left."],
  ])("%s dots beside two dots left: %s", (dots, words) => {
    expect(at(dots)).toBe(words);
  });

  it("beside a centred needle, one at the stop, and one without a signal", () => {
    expect(at(0, { courseDeg: 66 })).toBe("Right: centred.");
    expect(at(1, { courseDeg: 66 })).toBe("It is centred; you were 1 dot off.");
    expect(at(-5, { courseDeg: 90 })).toBe("Right: full left.");
    expect(at(-4, { courseDeg: 90 })).toBe("The right side, but it stands at the stop: 10 degrees or more.");
    const dead = { stations: [{ ...TXJ, status: "silent" as const }] };
    expect(at(null, dead)).toBe("Right: there is no signal, and the needle rests in the middle.");
    expect(at(0, dead)).toMatch(/^There is no signal/);
    // The flag is still covered: what tells a dead needle from a centred one is not said.
    expect(at(0, { ...dead, covers: ["NAV1.flag"] })).toBe("Right: centred.");
  });

  it("counts as the words under the face do, whatever the radial", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 359.9, noNaN: true }),
        fc.integer({ min: -10, max: 10 }),
        (radial, halves) => {
          const situation = situationOf({ at: onRadial(TXJ, radial, 20), courseDeg: 70 });
          const { truth, guessed, sentence } = compareGuess(situation, {
            cover: "NAV1.needle",
            answer: { kind: "needle", dots: halves / 2 },
          });
          expect(sentence.startsWith("Right: ")).toBe(truth === guessed);
          expect(sentence).not.toMatch(/NaN|undefined|null|\b0 dots/);
        },
      ),
    );
  });
});

describe("a guess at a place", () => {
  const guessed = (position: LatLon, change: Partial<Setup> = {}): string =>
    said({ ...OFF_THE_LINE, ...change }, "aircraft", { kind: "place", position });

  it("on the right radial, too far out, and on the other side of the station", () => {
    expect(guessed(onRadial(TXJ, 246, 24))).toBe(
      "6.0 NM off: the aircraft is to the north-east of your guess. On the right radial of TXJ, 6.0 NM too far out.",
    );
    expect(guessed(onRadial(TXJ, 247, 12))).toMatch(/On the right radial of TXJ, 6\.0 NM too near\.$/);
    expect(guessed(onRadial(TXJ, 66, 18))).toMatch(
      /^36\.0 NM off: the aircraft is to the south-west of your guess\. On the opposite side of TXJ: the 246 radial of TXJ leads the other way\.$/,
    );
  });

  it("off the radial at the right distance, and off in both", () => {
    expect(guessed(onRadial(TXJ, 266, 18.4))).toMatch(
      /20° off the 246 radial of TXJ, at the right distance\.$/,
    );
    expect(guessed(onRadial(TXJ, 220, 40))).toMatch(/26° off the 246 radial of TXJ\.$/);
  });

  it("within a pencil's point is right there", () => {
    expect(guessed(direct(OFF_THE_LINE.at, trueDeg(10), 0.4))).toMatch(/^Right there: 0\.40 NM off/);
    expect(guessed(OFF_THE_LINE.at)).toMatch(/^Right there: 0\.00 NM off/);
  });

  it("names no station whose frequency or ident is still covered", () => {
    for (const cover of ["NAV1.frequency", "NAV1.ident", "NAV1"]) {
      const situation = situationOf({ ...OFF_THE_LINE, covers: [cover] });
      const compared = compareGuess(situation, {
        cover: "aircraft",
        answer: { kind: "place", position: onRadial(TXJ, 266, 30) },
      });
      expect(Object.values(compared).join(" ")).not.toMatch(/TXJ|246/);
      expect(compared.sentence).toMatch(/^\d+\.\d NM off: the aircraft is to the [a-z-]+ of your guess\.$/);
    }
  });

  it("tells the distance and the wind of the line between the two, all round", () => {
    const around = ["north", "north-east", "east", "south-east", "south", "south-west", "west", "north-west"];
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 359 }),
        fc.double({ min: 1.1, max: 90, noNaN: true }),
        (azimuth, nm) => {
          const from = direct(OFF_THE_LINE.at, trueDeg(azimuth), nm);
          const words = guessed(from);
          const [, miles = "", wind = ""] =
            /^(\d+\.\d) NM off: the aircraft is to the ([a-z-]+) of/.exec(words) ?? [];
          expect(Number(miles)).toBeCloseTo(geodesicDistanceNm(from, OFF_THE_LINE.at), 1);
          // Near the equator and this near, the way back is the reciprocal to a small fraction of an eighth.
          const eighth = (((azimuth + 180) % 360) / 45 + 0.5) % 8;
          const nearEdge = Math.abs(eighth - Math.round(eighth)) < 0.02;
          if (!nearEdge) expect(wind).toBe(around[Math.floor(eighth)]);
        },
      ),
    );
  });
});

describe("other guesses", () => {
  it("at the flag", () => {
    const flag = (guess: "TO" | "FROM" | "OFF", change: Partial<Setup> = {}) =>
      said({ ...OFF_THE_LINE, ...change }, "NAV1.flag", { kind: "flag", flag: guess });
    expect(flag("TO")).toBe("Right: TO.");
    expect(flag("FROM")).toBe("It says TO; you said FROM.");
    expect(flag("TO", { altitudeFt: 0, at: onRadial(TXJ, 246, 120) })).toBe("It says OFF; you said TO.");
  });

  it("at a course, a heading or a pointer: turns through north, and the other end of the line", () => {
    const course = (deg: number, courseDeg = 70) =>
      said({ ...OFF_THE_LINE, courseDeg }, "NAV1.course", { kind: "direction", deg });
    expect(course(70)).toBe("Right: 070.");
    expect(course(78)).toBe("8 degrees too far right: it is 070.");
    expect(course(69)).toBe("1 degree too far left: it is 070.");
    expect(course(250)).toBe("The reciprocal: it is 070, the other end of the same line.");
    expect(course(247)).toMatch(/^Near the reciprocal: it is 070, and you were 3 degrees off/);
    expect(course(360, 0)).toBe("Right: 360.");
    expect(course(355, 3)).toBe("8 degrees too far left: it is 003.");
    expect(said(OFF_THE_LINE, "heading", { kind: "direction", deg: 95 })).toBe(
      "5 degrees too far right: it is 090.",
    );
    // The pointer's head on the card: magnetic heading plus the angle from the nose, 066 as the receiver measures it.
    expect(said({ ...OFF_THE_LINE, face: "rmi" }, "NAV1.needle", { kind: "direction", deg: 66 })).toBe(
      "Right: 066.",
    );
    const far = { ...OFF_THE_LINE, face: "rmi" as const, at: onRadial(TXJ, 246, 250) };
    expect(said(far, "NAV1.needle", { kind: "direction", deg: 66 })).toMatch(/no pointer/);
  });

  it("at a distance, a frequency or an ident in words", () => {
    const words = (cover: string, text: string, change: Partial<Setup> = {}) =>
      said({ ...OFF_THE_LINE, ...change }, cover, { kind: "words", text });
    expect(words("NAV1.dme", "18 miles")).toBe("Right: 18.0 NM.");
    expect(words("NAV1.dme", "about 20,5")).toBe("2.5 NM too far: it shows 18.0 NM.");
    expect(words("NAV1.dme", "far")).toBe("It shows 18.0 NM.");
    expect(words("NAV1.dme", "12", { tune: OXK.frequencyMhz })).toBe("It shows no distance.");
    expect(words("NAV1.frequency", "115.6")).toBe("Right: 115.60.");
    expect(words("NAV1.frequency", "116.50")).toBe("It is 115.60; you said 116.50.");
    expect(words("NAV1.ident", "that is txj")).toBe("Right: TXJ.");
    expect(words("NAV1.ident", "TX")).toBe("It is TXJ.");
    expect(words("NAV1", "off course")).toMatch(/^Look/);
    expect(words("chart", "south of it")).toMatch(/^Look/);
  });

  it("not yet known, for every kind of cover", () => {
    for (const cover of [
      "aircraft",
      "heading",
      "chart",
      "panel",
      "signal",
      "NAV1",
      "NAV1.needle",
      "NAV1.dme",
    ])
      expect(said(OFF_THE_LINE, cover, { kind: "not-yet" })).toMatch(/left it open/);
  });
});

describe("what is compared", () => {
  const all = (situation: Situation, cover: string): Comparison =>
    compareGuess(situation, { cover, answer: { kind: "not-yet" } });

  it("keeps what other covers hide", () => {
    const scene = { ...situationOf(OFF_THE_LINE).scene, covers: ["aircraft"] };
    expect(all(resolveScene(scene), "chart").truth).toBe("");
    expect(all(resolveScene({ ...scene, covers: ["NAV1.needle"] }), "NAV1").truth).toMatch(/Needle covered/);
    expect(all(resolveScene({ ...scene, covers: ["NAV1.needle"] }), "panel").truth).toMatch(/Needle covered/);
  });

  it("asks for an answer that fits the thing: a magnetic indicator's needle is a direction", () => {
    const receivers = situationOf(OFF_THE_LINE).scene.receivers;
    const kinds = (face: "cdi" | "rmi") =>
      ["aircraft", "heading", "NAV1.needle", "NAV1.flag", "NAV1.course", "NAV1.dme", "NAV1", "chart"].map(
        (cover) => answerKind({ receivers: receivers.map((each) => ({ ...each, face })) }, cover),
      );
    expect(kinds("cdi")).toEqual([
      "place",
      "direction",
      "needle",
      "flag",
      "direction",
      "words",
      "words",
      "words",
    ]);
    expect(kinds("rmi")[2]).toBe("direction");
  });

  it("refuses a cover that the scene cannot have", () => {
    expect(() => all(situationOf(OFF_THE_LINE), "NAV9.needle")).toThrow(/NAV9/);
    expect(() => all(situationOf(OFF_THE_LINE), "needle ")).toThrow(/nothing that can be covered/);
  });

  it("places are told from each station once", () => {
    const base = situationOf(OFF_THE_LINE).scene;
    const [first] = base.receivers;
    const receivers = [
      first!,
      { ...first!, name: "NAV2" },
      { ...first!, name: "NAV3", frequencyMhz: HJL.frequencyMhz },
    ];
    const { sentence } = compareGuess(resolveScene({ ...base, receivers }), {
      cover: "aircraft",
      answer: { kind: "place", position: onRadial(TXJ, 246, 24) },
    });
    expect(sentence.match(/TXJ/g)?.length).toBe(1);
    expect(sentence).toMatch(/HJL/);
  });
});
