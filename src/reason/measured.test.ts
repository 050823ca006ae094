import { describe, expect, it } from "vitest";
import { onRadial, type Setup, situationOf, TXJ } from "../../test/isles.ts";
import type { SignalConditions } from "../panel/index.ts";
import type { Station } from "../radio/index.ts";
import { readingJson } from "./reading-json.ts";
import { REASON_RULES } from "./reason.ts";
import { reasonsFor } from "./reasons-for.ts";
import { underCovers } from "./under-covers.ts";

const CLEAN: SignalConditions = { kind: "conventional", noiseDb: null, reflectors: [], propeller: null };
const HANGAR = { ident: "TXJ", position: onRadial(TXJ, 300, 2), amplitude: 0.1 };
const AT = onRadial(TXJ, 246, 18);

function reasonOf(signal: SignalConditions, more: Partial<Setup> = {}) {
  const reason = reasonsFor(situationOf({ at: AT, courseDeg: 70, signal, ...more })).find(
    ({ rule }) => rule === "measured",
  );
  if (reason === undefined) throw new Error("there is no such reason");
  return reason;
}
const cautionsOf = (signal: SignalConditions | null, more: Partial<Setup> = {}) =>
  situationOf({ at: AT, courseDeg: 70, signal, ...more }).cautions.join(" ");

describe("the reason of what is measured", () => {
  it("is there only where the scene has a signal of its own and a bearing comes of it", () => {
    const rulesOf = (setup: Setup) => reasonsFor(situationOf(setup)).map(({ rule }) => rule);
    expect(rulesOf({ at: AT })).not.toContain("measured");
    expect(rulesOf({ at: AT, signal: { ...CLEAN, noiseDb: 79 } })).not.toContain("measured");
    expect(rulesOf({ at: AT, signal: CLEAN })).toContain("measured");
  });

  it("says of a clean signal that nothing disturbs it", () => {
    expect(reasonOf(CLEAN).sentence).toBe(
      "The signal reads 246.0 where you are on 246.0: its two 30 Hz tones differ in phase by your radial, and nothing disturbs them here.",
    );
  });

  it("says of an echo where it comes from and by how much it pulls", () => {
    // Among places a wavelength apart there is one where the pull is strong.
    const pulls = Array.from({ length: 12 }, (_, index) =>
      reasonOf({ ...CLEAN, reflectors: [HANGAR] }, { at: onRadial(TXJ, 246 + index * 0.01, 18) }),
    );
    const strongest = pulls.reduce((best, next) =>
      Math.abs(Number(next.numbers.offDeg)) > Math.abs(Number(best.numbers.offDeg)) ? next : best,
    );
    expect(strongest.title).toBe("An echo pulls it");
    expect(strongest.sentence).toMatch(
      /^The signal reads \d{3}\.\d where you are on 246\.\d: an echo from a reflector on the 300 radial at 2\.0 NM pulls it by [3-5]/,
    );
    expect(Number(strongest.numbers.bendDeg)).toBeCloseTo(Number(strongest.numbers.offDeg), 0);
  });

  it("says of a Doppler station that it is hardly bent", () => {
    const reason = reasonOf({ ...CLEAN, kind: "doppler", reflectors: [HANGAR] });
    expect(reason.sentence).toMatch(/a Doppler station's wide ring of antennas makes little of it\.$/);
    expect(Math.abs(Number(reason.numbers.offDeg))).toBeLessThan(0.2);
  });

  it("says of a propeller near twice 30 Hz that it swings the needle, and of another speed nothing", () => {
    const bladed = (speedRpm: number) =>
      reasonOf({ ...CLEAN, propeller: { speedRpm, blades: 2 } }, { atS: 1 });
    expect(bladed(1810).sentence).toMatch(/60\.3 blades pass in a second, .* 6° to either side/);
    expect(bladed(1810).source).toMatch(/1-1-3/);
    expect(bladed(905).sentence).toMatch(/near the signal's 30 Hz that the needle swings far/);
    expect(bladed(2400).title).toBe("As the signal has it");
    expect(Math.abs(Number(bladed(2400).numbers.offDeg))).toBeLessThan(0.2);
  });

  it("says of noise that it moves the needle", () => {
    const reasons = Array.from({ length: 10 }, (_, atS) => reasonOf({ ...CLEAN, noiseDb: 65 }, { atS }));
    const moved = reasons.filter(({ title }) => title === "Noise moves it");
    expect(moved.length).toBeGreaterThan(2);
    for (const { numbers } of moved) expect(Math.abs(Number(numbers.offDeg))).toBeGreaterThanOrEqual(0.2);
  });

  it("counts the radial as the receiver's, not as the place's", () => {
    const reasons = reasonsFor(situationOf({ at: AT, signal: CLEAN }));
    expect(reasons.find(({ rule }) => rule === "radial")?.sentence).toMatch(
      /^The receiver puts you on the 246/,
    );
  });
});

describe("the reason of what is measured, under covers", () => {
  const reasons = reasonsFor(
    situationOf({ at: AT, courseDeg: 70, signal: { ...CLEAN, reflectors: [HANGAR] } }),
  );
  const spoken = (cover: string) =>
    underCovers(reasons, [cover]).flatMap((each) => (each.kind === "spoken" ? [each.reason.rule] : []));

  it.each([
    "chart",
    "aircraft",
    "panel",
    "signal",
    "NAV1",
    "NAV1.needle",
    "NAV1.flag",
    "NAV1.ident",
    "NAV1.frequency",
  ])("is withheld while %s is covered", (cover) => {
    expect(spoken(cover)).not.toContain("measured");
  });

  it("is withheld wherever the radial is, and stays where neither is given away", () => {
    expect(spoken("heading")).toContain("measured");
    expect(REASON_RULES.indexOf("measured")).toBe(REASON_RULES.indexOf("radial") + 1);
  });
});

describe("the caution of a bent or rough signal", () => {
  it("stands where it may be off by three degrees within a wavelength, and beside a propeller that swings the needle", () => {
    const caution = /the signal of TXJ is bent or rough here; do not use it/;
    expect(cautionsOf({ ...CLEAN, reflectors: [HANGAR] })).toMatch(caution);
    expect(cautionsOf({ ...CLEAN, propeller: { speedRpm: 1810, blades: 2 } })).toMatch(caution);
    for (const signal of [
      null,
      CLEAN,
      { ...CLEAN, noiseDb: 25 },
      { ...CLEAN, kind: "doppler", reflectors: [HANGAR] } as const,
      { ...CLEAN, reflectors: [{ ...HANGAR, amplitude: 0.02 }] },
      { ...CLEAN, propeller: { speedRpm: 2400, blades: 2 } },
    ])
      expect(cautionsOf(signal)).not.toMatch(/bent/);
  });
});

describe("what is printed as JSON", () => {
  const jsonOf = (signal: SignalConditions | null) => {
    const situation = situationOf({ at: AT, signal });
    return readingJson(situation, []).receivers[0]?.measured;
  };

  it("has what was measured, with null for what is not a number", () => {
    expect(jsonOf(null)).toBeNull();
    const clean = jsonOf(CLEAN);
    expect(clean?.radialDeg).toBeCloseTo(246, 1);
    expect(clean?.toneDepth).toBeCloseTo(0.3, 2);
    expect(clean?.subcarrierDepth).toBeCloseTo(0.3, 2);
    expect(clean?.deviationRatio).toBeCloseTo(16, 1);
    expect(clean?.flagCause).toBeNull();
    expect(jsonOf({ ...CLEAN, noiseDb: 79 })?.flagCause).toBe("noisy");
    const noisy = jsonOf({ ...CLEAN, noiseDb: 40 });
    expect(noisy?.carrierToNoiseDbHz).toBeGreaterThan(50);
    expect(JSON.parse(JSON.stringify(noisy))).toEqual(noisy);
  });
});

describe("the reason of what is measured, of several reflectors", () => {
  const RIDGE = { ident: "TXJ", position: onRadial(TXJ, 120, 4), amplitude: 0.02 };
  const OTHERS = { ident: "HJL", position: onRadial(TXJ, 10, 7), amplitude: 0.9 };

  it.each([
    ["first", [HANGAR, RIDGE]],
    ["last", [RIDGE, HANGAR]],
    ["last, after one of another station", [OTHERS, RIDGE, HANGAR]],
  ])("names the one that bends most, where it is told %s", (_, reflectors) => {
    const reason = reasonOf({ ...CLEAN, reflectors });
    expect(reason.sentence).toMatch(
      /: the strongest of 2 echoes, from a reflector on the 300 radial at 2\.0 NM, by itself pulls it by 3\.6°/,
    );
    expect(Number(reason.numbers.bendDeg)).toBeCloseTo(-3.6, 1);
  });

  it("says of echoes that only together pull it, and never of noise where there is none", () => {
    const titles = Array.from({ length: 40 }, (_, index) => {
      // Four walls of one hangar.
      const reflectors = Array.from({ length: 4 }, () => ({ ...HANGAR, amplitude: 0.003 }));
      return reasonOf({ ...CLEAN, reflectors }, { at: onRadial(TXJ, 246 + index * 0.01, 18) });
    });
    const together = titles.filter(({ title }) => title === "Echoes pull it");
    expect(together.length).toBeGreaterThan(0);
    for (const { sentence } of together)
      expect(sentence).toMatch(
        /: 4 echoes together pull it by 0\.[2-9]°, though none does much by itself\.$/,
      );
    expect(titles.map(({ title }) => title)).not.toContain("Noise moves it");
  });

  it("says of blades some hertz off the 30 Hz that they move it, in noise as well, and of blades far off that noise does", () => {
    const bladed = (speedRpm: number, noiseDb: number | null) =>
      Array.from({ length: 10 }, (_, atS) =>
        reasonOf({ ...CLEAN, noiseDb, propeller: { speedRpm, blades: 2 } }, { atS: atS / 2 }),
      ).filter(({ numbers }) => Math.abs(Number(numbers.offDeg)) >= 0.2);
    for (const noiseDb of [null, 40]) {
      expect(bladed(810, noiseDb).length).toBeGreaterThan(4);
      for (const { title, sentence } of bladed(810, noiseDb)) {
        expect(title).toBe("The propeller chops it");
        expect(sentence).toMatch(
          /27\.0 blades pass in a second, not far from .* and move it by \d+(\.\d)?° just now/,
        );
      }
    }
    expect(bladed(2400, 65).map(({ title }) => title)).toContain("Noise moves it");
  });

  it("knows of a test signal only what is sent to every side", () => {
    const vot: Station = { ...TXJ, kind: "VOT", vorClass: null, dmeChannel: null };
    const reason = reasonOf(
      { ...CLEAN, reflectors: [HANGAR] },
      { stations: [vot], at: onRadial(TXJ, 246, 1) },
    );
    expect(reason.title).toBe("As the signal has it");
    const doppler = { ...CLEAN, kind: "doppler", reflectors: [HANGAR] } as const;
    expect(reasonOf(doppler, { stations: [vot], at: onRadial(TXJ, 246, 1) }).title).toBe(
      "As the signal has it",
    );
    expect(reason.sentence).toBe(
      "The signal reads 360.0 where it is sent as 360.0: its two 30 Hz tones are in phase to every side, and nothing disturbs them here.",
    );
    // What its needle stands at is a receiver's error, and no place.
    const rules = reasonsFor(
      situationOf({ stations: [vot], at: onRadial(TXJ, 246, 1), courseDeg: 0, errorDeg: 5 }),
    ).map(({ rule }) => rule);
    expect(rules).toEqual(["tuned", "received", "radial"]);
  });
});

describe("the caution at the edge", () => {
  const bent = /bent or rough/;
  it("counts blades within a hertz and a half of the 30 Hz or its double, and none some hertz off", () => {
    const blades = (passHz: number) =>
      cautionsOf({ ...CLEAN, propeller: { speedRpm: (passHz * 60) / 2, blades: 2 } });
    for (const passHz of [28.6, 31.4, 58.6, 61.4]) expect(blades(passHz)).toMatch(bent);
    for (const passHz of [66, 70, 74]) expect(blades(passHz)).not.toMatch(bent);
  });

  it("stands where the echo pulls nothing just now and by three degrees half a wavelength on", () => {
    const offs = Array.from({ length: 24 }, (_, index) => {
      const setup = { at: onRadial(TXJ, 246 + index * 0.002, 18) };
      const signal = { ...CLEAN, reflectors: [HANGAR] };
      return {
        off: Math.abs(Number(reasonOf(signal, setup).numbers.offDeg)),
        caution: cautionsOf(signal, setup),
      };
    });
    expect(Math.min(...offs.map(({ off }) => off))).toBeLessThan(1);
    for (const { caution } of offs) expect(caution).toMatch(bent);
  });

  it("stands where blades some hertz off scatter the radial by three degrees, though it happens to be right", () => {
    const propeller = { speedRpm: 750, blades: 2 };
    const [reading] = situationOf({ at: AT, signal: { ...CLEAN, propeller } }).receivers;
    expect(Math.abs((reading?.radial ?? 0) - 246)).toBeLessThan(1);
    expect(reading?.measured?.measurement.radialDeviationDeg).toBeGreaterThan(3);
    expect(cautionsOf({ ...CLEAN, propeller })).toMatch(bent);
  });
});
