/** A receiver that is misled: the argument goes by where the aircraft is, and tells the needle apart from it. */

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { onRadial, readingOf, type Setup, situationOf, TXJ } from "../../test/isles.ts";
import type { SignalConditions } from "../panel/index.ts";
import { ledAstray } from "./astray.ts";
import type { Reason, ReasonRule } from "./reason.ts";
import { reasonsFor } from "./reasons-for.ts";
import { underCovers } from "./under-covers.ts";

const CLEAN: SignalConditions = { kind: "conventional", noiseDb: null, reflectors: [], propeller: null };
const ECHO: SignalConditions = {
  ...CLEAN,
  reflectors: [{ ident: "TXJ", position: onRadial(TXJ, 300, 2), amplitude: 0.1 }],
};
const CHOPPED: SignalConditions = { ...CLEAN, propeller: { speedRpm: 1810, blades: 2 } };
const ON_THE_LINE: Setup = { at: onRadial(TXJ, 246, 18), courseDeg: 246, headingDeg: 244 };

const argue = (setup: Setup): Reason[] => reasonsFor(situationOf(setup));
const step = (setup: Setup, rule: ReasonRule): Reason | undefined =>
  argue(setup).find((reason) => reason.rule === rule);
const sentence = (setup: Setup, rule: ReasonRule): string => step(setup, rule)?.sentence ?? "";
const words = (setup: Setup): string =>
  argue(setup)
    .map((reason) => `${reason.title}. ${reason.sentence}`)
    .join("\n");

/** On the line in truth; read elsewhere by an echo, by a propeller's blades to either side, and by the receiver's own error. */
const BENT: readonly Setup[] = [
  { ...ON_THE_LINE, signal: ECHO },
  { ...ON_THE_LINE, signal: CHOPPED },
  { ...ON_THE_LINE, signal: CHOPPED, atS: 1.5 },
  { ...ON_THE_LINE, errorDeg: 5 },
  { ...ON_THE_LINE, errorDeg: -5 },
];

describe("a pilot on the line whose needle is led astray", () => {
  it.each(BENT)("is told that he is on it, and to hold it: %#", (setup) => {
    expect(Math.abs(ledAstray(readingOf(setup))?.astrayDeg ?? 0)).toBeGreaterThan(2);
    const side = readingOf(setup).needleSide;
    expect(sentence(setup, "radial")).toMatch(
      /^You are on the 246 radial of TXJ, .*; the receiver says 2[345]\d/,
    );
    expect(sentence(setup, "norths")).toMatch(/radial 246 lies 244 by the compass\.$/);
    expect(sentence(setup, "to-from")).toMatch(
      /^Radial 246 lies along course 246 itself: you are on the FROM/,
    );
    expect(sentence(setup, "deviation")).toMatch(
      new RegExp(`^The needle stands \\d° ${side}, .* astray: you are on the line of course 246\\.$`),
    );
    expect(step(setup, "distance")?.title).toBe("Not off the line");
    expect(step(setup, "distance")?.numbers.offCourseNm).toBeCloseTo(0, 1);
    expect(sentence(setup, "heading-agrees")).toMatch(/so the needle is not reversed\.$/);
    expect(sentence(setup, "fly")).toMatch(
      new RegExp(
        `^Fly heading 244 to hold the line: .*; by the needle alone you would turn ${side} to \\d{3}, so before you follow it check it against `,
      ),
    );
    expect(words(setup)).not.toMatch(/NM off\.|the line is on (your|the needle's)/);
  });

  it("is sent to what can tell him: a second receiver for a receiver's error, and not for a bent signal", () => {
    expect(sentence({ ...ON_THE_LINE, errorDeg: 5 }, "fly")).toMatch(/against a second receiver or a place/);
    expect(sentence({ ...ON_THE_LINE, errorDeg: 5 }, "radial")).toMatch(
      /the receiver says 251, for this receiver reads 5° high\.$/,
    );
    for (const signal of [ECHO, CHOPPED])
      expect(sentence({ ...ON_THE_LINE, signal }, "fly")).toMatch(
        /against another station or a place you know/,
      );
    expect(sentence({ ...ON_THE_LINE, signal: ECHO }, "measured")).toMatch(/in a second receiver too/);
  });

  it("is told so with a pointer, and homes by where the station is", () => {
    const setup: Setup = { ...ON_THE_LINE, face: "rmi", signal: ECHO };
    expect(sentence(setup, "radial")).toMatch(
      /^You are on the 246 radial .*; the pointer's tail says 24[23]\.$/,
    );
    expect(sentence(setup, "fly")).toMatch(
      /^TXJ lies 066 from you: turn to 064, .*; the pointer's head says 06[23], so before you follow it/,
    );
  });
});

describe("a pilot off the line whose needle is led astray", () => {
  it("is told how far he is, not how far the needle says", () => {
    // 242 - 246 = 4 degrees right of course at 18 NM: 1.2 NM; a receiver that reads 4 high is centred.
    const centred: Setup = { ...ON_THE_LINE, at: onRadial(TXJ, 242, 18), errorDeg: 4 };
    expect(readingOf(centred).needleSide).toBe("centre");
    expect(sentence(centred, "deviation")).toBe(
      "The needle is centred, but it is 4° astray: you are 4° from the line, and facing 246 it is on your right.",
    );
    expect(sentence(centred, "distance")).toBe(
      "A degree is a mile at 60, so your 4° at 18.0 NM are about 1.2 NM off the line, though the needle says you are on it.",
    );
    expect(sentence(centred, "fly")).toMatch(
      /^Turn right to 264, .* until you are on it, .*; by the needle alone you would hold 244/,
    );
    const mirrored: Setup = { ...ON_THE_LINE, at: onRadial(TXJ, 245, 18), errorDeg: 3 };
    expect(sentence(mirrored, "distance")).toMatch(
      /about 0\.30 NM off the line, though by the needle it would be 0\.60 NM to the left/,
    );
    expect(sentence(mirrored, "deviation")).toMatch(/stands 2° left, .* facing 246 it is on your right\.$/);
    const stopped: Setup = { ...ON_THE_LINE, at: onRadial(TXJ, 240, 18), errorDeg: -6 };
    expect(sentence(stopped, "deviation")).toMatch(
      /^The needle is at its right stop, .* you are 6° from the line/,
    );
    expect(sentence(stopped, "distance")).toMatch(
      /about 1\.8 NM off the line, though the needle is at its stop\.$/,
    );
  });

  it("is told when the flag is that of the other side", () => {
    const wrong: Setup = { ...ON_THE_LINE, at: onRadial(TXJ, 339, 18), errorDeg: -6 };
    expect(readingOf(wrong).flag).toBe("FROM");
    expect(step(wrong, "to-from")?.title).toBe("FROM, and wrong");
    expect(sentence(wrong, "to-from")).toBe(
      "The receiver's radial 333 lies 87° from course 246, so the flag says FROM; yours, 339, lies 93° from it, and you are on the TO side.",
    );
    const abeam: Setup = { ...wrong, at: onRadial(TXJ, 336, 18) };
    expect(sentence(abeam, "to-from")).toMatch(/abeam the station, where it should be blank\.$/);
    expect(sentence(abeam, "fly")).toMatch(
      /^You are abeam the station, whatever the flag says: hold your heading/,
    );
    const blank: Setup = { ...wrong, errorDeg: -3 };
    expect(step(blank, "to-from")?.title).toBe("Blank, and wrong");
    expect(sentence(blank, "to-from")).toMatch(/so the flag is blank; yours, 339, .* on the TO side\.$/);
  });

  it("keeps an HSI's bar from lying where the line is", () => {
    const hsi: Setup = { ...ON_THE_LINE, face: "hsi", headingDeg: 64 };
    expect(sentence({ ...hsi, at: onRadial(TXJ, 242, 18) }, "heading-agrees")).toMatch(
      /the bar still lies where/,
    );
    expect(sentence({ ...hsi, signal: ECHO }, "heading-agrees")).toMatch(/the bar is not reversed/);
  });
});

it("what to fly, where the line is and how far is the same as with a receiver that is not misled", () => {
  const degrees = fc.integer({ min: 0, max: 359 });
  let told = 0;
  fc.assert(
    fc.property(
      fc.record({
        radial: degrees,
        course: degrees,
        heading: degrees,
        errorDeg: fc.integer({ min: -9, max: 9 }),
      }),
      fc.constantFrom("cdi" as const, "hsi" as const, "rmi" as const),
      ({ radial, course, heading, errorDeg }, face) => {
        const plain: Setup = {
          at: onRadial(TXJ, radial, 18),
          courseDeg: course,
          headingDeg: heading,
          face,
          windKt: 20,
        };
        const misled: Setup = { ...plain, errorDeg };
        const [asIs, asRead] = [readingOf(plain), readingOf(misled)];
        const place = ledAstray(asRead);
        expect(place === null).toBe(errorDeg === 0);
        if (place === null) return;
        expect(place.radial).toBe(asIs.radial);
        expect(place.deviationDeg).toBe(asIs.deviationDeg);
        const numbers = (setup: Setup, rule: ReasonRule, key: string) => step(setup, rule)?.numbers[key];
        expect(numbers(misled, "norths", "radialByCompassDeg")).toBe(
          numbers(plain, "norths", "radialByCompassDeg"),
        );
        if (asRead.flag === "OFF" || asIs.flag === "OFF") return;
        told++;
        for (const key of ["cutDeg", "interceptHeadingDeg", "headingDeg"])
          expect(numbers(misled, "fly", key)).toBe(numbers(plain, "fly", key));
        if (step(plain, "distance") !== undefined && face !== "rmi")
          expect(numbers(misled, "distance", "offCourseNm")).toBe(numbers(plain, "distance", "offCourseNm"));
        for (const { title, sentence: said } of argue(misled)) {
          expect(said).toMatch(/^[A-Z0-9].*\.$/);
          expect(`${title} ${said}`).not.toMatch(/\. [A-Z]|NaN|undefined|null/);
        }
      },
    ),
    { numRuns: 400 },
  );
  expect(told).toBeGreaterThan(200);
});

it("a pilot who is sent the same way by needle and place is told only what is worth it", () => {
  const off: Setup = { ...ON_THE_LINE, at: onRadial(TXJ, 232, 18) };
  // Less than a centred needle is wide, and nothing else to do: not a word more.
  expect(sentence({ ...off, errorDeg: 0.4 }, "fly")).toMatch(/^Turn right to 274, .* then 244 to hold it\.$/);
  expect(sentence({ ...off, errorDeg: 1 }, "fly")).toMatch(
    /then 244 to hold it; by the needle alone you would do the same, but check it against a second receiver/,
  );
});

it("a needle's width is nothing to speak of", () => {
  const off = (errorDeg: number) => ledAstray(readingOf({ ...ON_THE_LINE, errorDeg }));
  expect(off(0.19)).toBeNull();
  expect(off(0.21)?.astrayDeg).toBeCloseTo(0.21, 9);
  expect(off(-0.21)?.astrayDeg).toBeCloseTo(-0.21, 9);
});

it("a test signal leads nobody astray: what is read of it is no place", () => {
  const vot = { ...TXJ, kind: "VOT", vorClass: null, dmeChannel: null } as const;
  expect(ledAstray(readingOf({ at: onRadial(TXJ, 246, 1), stations: [vot], errorDeg: 5 }))).toBeNull();
});

describe("what a misled receiver reads", () => {
  it.each(["NAV1.needle", "panel"])("is not told in the steps that speak while %s is covered", (cover) => {
    for (const setup of BENT) {
      const read = String(Math.round(readingOf(setup).radial ?? 0));
      expect(words(setup)).toContain(read);
      const spoken = underCovers(argue(setup), [cover]).flatMap((each) =>
        each.kind === "spoken" ? [each.reason.sentence] : [],
      );
      expect(spoken.length).toBeGreaterThan(1);
      expect(spoken.join("\n")).not.toMatch(new RegExp(`${read}|astray|needle alone`));
    }
  });

  it("is told without its cause while the signal is covered", () => {
    const spoken = underCovers(argue({ ...ON_THE_LINE, signal: ECHO }), ["signal"]).flatMap((each) =>
      each.kind === "spoken" ? [each.reason.sentence] : [],
    );
    expect(spoken.join("\n")).toMatch(/astray/);
    expect(spoken.join("\n")).not.toMatch(/echo|reflector|bent|noise|propeller/i);
  });
});
