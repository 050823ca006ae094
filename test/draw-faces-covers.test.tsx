import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { faceSentence, Panel, panelSentence, Reasons, ReceiverFace, THEMES } from "../src/draw/index.ts";
import { threeDigits } from "../src/earth/index.ts";
import type { Face } from "../src/panel/index.ts";
import { reasonsFor } from "../src/reason/index.ts";
import { resolveScene, type Situation } from "../src/scene/index.ts";
import { badNumbers, hasPart, idsOf, svgOf, wordsOf } from "./draw-faces-read.ts";
import { HJL, onRadial, situationOf, TXJ } from "./isles.ts";
import { sceneArbitrary } from "./scene-arbitraries.ts";

const theme = THEMES.light;

/** One receiver on the 246 radial of Tamsel at 18 NM: course 061 makes no number of the answer turn up by chance. */
const at = (face: Face, headingDeg = 87): Situation =>
  situationOf({ at: onRadial(TXJ, 246, 18.4), courseDeg: 61, headingDeg, face, windKt: 12 });

const panelOf = (situation: Situation, covers: readonly string[]) =>
  svgOf(
    <Panel situation={situation} widthPx={420} heightPx={420} theme={theme} idPrefix="p" covers={covers} />,
  );
const faceOf = (situation: Situation, covers: readonly string[]) =>
  svgOf(
    <ReceiverFace
      reading={situation.receivers[0]!}
      sizePx={240}
      theme={theme}
      idPrefix="f"
      covers={covers}
    />,
  );
const reasonsOf = (situation: Situation, covers: readonly string[]) =>
  svgOf(<Reasons reasons={reasonsFor(situation)} widthPx={500} theme={theme} idPrefix="r" covers={covers} />);
/** Panel, face, sentence and reasons together. */
const everything = (situation: Situation, covers: readonly string[]) =>
  [panelOf(situation, covers), faceOf(situation, covers), reasonsOf(situation, covers)].join("\n");

interface Answer {
  readonly said: readonly (string | RegExp)[];
  readonly drawn: readonly RegExp[];
}

/** What tells the answer, by cover: in words and figures, and as an element of the picture. */
const ANSWERS: Readonly<Record<string, (situation: Situation) => Answer>> = {
  "NAV1.needle": ({ receivers }) => ({
    said:
      receivers[0]!.settings.face === "rmi"
        ? [/\b246\b/, /\b066\b/]
        : [/\bdots?\b/, /\b(left|right)\b/i, /centred/],
    drawn: [/data-part="needle"/],
  }),
  "NAV1.flag": () => ({
    said: [/\b(TO|FROM)\b(?!\/)(?<!\/FROM)/],
    drawn: [/data-part="(flag|to-from)"/, /data-flag/],
  }),
  "NAV1.course": (situation) => ({
    said: [threeDigits(situation.receivers[0]!.settings.course)],
    drawn: [/data-part="(course-card|course|course-readout)"/],
  }),
  "NAV1.dme": (situation) => ({
    said: [situation.receivers[0]!.dme!.distanceNm.toFixed(1)],
    drawn: [/data-part="dme"/],
  }),
  "NAV1.ident": () => ({ said: [/TXJ/, /Tamsel/], drawn: [/data-part="code"/] }),
  "NAV1.frequency": () => ({ said: [/115\.60/], drawn: [/data-part="frequency"/] }),
  heading: (situation) => ({
    said: [threeDigits(situation.scene.aircraft.heading)],
    drawn: [/data-part="heading"/, new RegExp(`rotate\\(-?${situation.scene.aircraft.heading}\\)`)],
  }),
};

describe("a cover", () => {
  for (const [cover, answers] of Object.entries(ANSWERS))
    for (const face of ["cdi", "hsi", "rmi"] as const) {
      // A magnetic indicator has no course and no flag to cover.
      if (face === "rmi" && (cover === "NAV1.course" || cover === "NAV1.flag")) continue;
      it(`over ${cover} of a ${face} leaves nothing of it in picture, words or argument`, () => {
        const situation = at(face);
        const { said, drawn } = answers(situation);
        const [open, shut] = [everything(situation, []), everything(situation, [cover])];
        // Were the answer not told in the open, this test could not fail.
        expect(said.some((answer) => wordsOf(open).match(answer))).toBe(true);
        expect(drawn.some((answer) => open.match(answer))).toBe(true);
        for (const answer of said) expect(wordsOf(shut)).not.toMatch(answer);
        for (const answer of drawn) expect(shut).not.toMatch(answer);
        expect(shut).toContain("covered");
      });
    }

  it("over a heading takes what turns by it along: no angle of the situation's instruments is left", () => {
    for (const face of ["hsi", "rmi"] as const) {
      const one = panelOf(at(face, 87), ["heading"]);
      const other = panelOf(at(face, 231), ["heading"]);
      const still = (svg: string) =>
        svg.replace(/<desc.*?<\/desc>/, "").replace(/data-part="dme".*?<\/g>/s, "");
      if (face === "hsi") expect(still(other)).toBe(still(one));
      else expect(wordsOf(other)).not.toContain("231");
    }
  });

  it("over a receiver leaves its place and its name", () => {
    const svg = panelOf(at("cdi"), ["NAV1"]);
    expect(wordsOf(svg)).toContain("covered: NAV1");
    for (const part of ["needle", "flag", "course-card", "dme", "frequency", "ident"])
      expect(hasPart(svg, part)).toBe(false);
    expect(svg).not.toMatch(/115\.60|TXJ|061/);
    expect(faceSentence(at("cdi").receivers[0]!, ["NAV1"])).toBe("NAV1, covered.");
  });

  it("over the panel leaves a strip", () => {
    const svg = panelOf(at("cdi"), ["panel"]);
    expect(wordsOf(svg).trim().split("\n")).toEqual(["Panel", "Panel covered.", "covered: panel"]);
    expect(panelSentence(at("cdi"), ["panel"])).toBe("Panel covered.");
  });

  it("leaves a strip in the chain where steps are withheld, and says neither which nor how many", () => {
    const words = wordsOf(reasonsOf(at("cdi"), ["NAV1.needle"]));
    const titles = reasonsFor(at("cdi")).map((step) => step.title);
    const spoken = titles.filter((title) => words.includes(`\n${title}\n`));
    expect(spoken.length).toBeGreaterThan(3);
    expect(spoken.length).toBeLessThan(titles.length);
    expect(words).toMatch(/covered: the rest/);
    const numbers = words.split("\n").filter((word) => /^\d+$/.test(word));
    expect(numbers).toEqual(spoken.map((_, index) => String(index + 1)));
  });

  it("of the aircraft or the chart hides where the argument says you are", () => {
    for (const cover of ["aircraft", "chart"]) {
      const words = wordsOf(reasonsOf(at("cdi"), [cover]));
      expect(words).not.toMatch(/\b246\b|18\.4/);
    }
  });

  it("never upsets a panel, whatever is covered in whatever scene", () => {
    fc.assert(
      fc.property(sceneArbitrary, fc.constantFrom([300, 700], [900, 300], [500, 400]), (scene, [w, h]) => {
        const situation = resolveScene(scene);
        const svg = svgOf(
          <Panel situation={situation} widthPx={w!} heightPx={h!} theme={theme} idPrefix="p" />,
        );
        expect(badNumbers(svg.replace(/>[^<]*</g, "><"))).toEqual([]);
        expect(new Set(idsOf(svg)).size).toBe(idsOf(svg).length);
      }),
      { numRuns: 150 },
    );
  });
});

describe("the sentence of a face", () => {
  it("says G1 in the grammar of the trade: ident, course, flag, needle, DME", () => {
    const reading = situationOf({
      at: { latDeg: -(10 + 29.7 / 60), lonDeg: 1 + 4.7 / 60 },
      tune: HJL.frequencyMhz,
      courseDeg: 256,
    }).receivers[0]!;
    expect(faceSentence(reading)).toBe(
      "NAV1, 113.90, ident HJL heard. Course 256. FROM. Needle centred. DME 24.0.",
    );
  });

  const on = (radial: number, courseDeg: number, face: Face = "cdi", tune?: number) =>
    faceSentence(
      situationOf({
        at: onRadial(TXJ, radial, 18),
        courseDeg,
        headingDeg: 90,
        face,
        ...(tune === undefined ? {} : { tune }),
      }).receivers[0]!,
    );

  it("counts dots and degrees to the nearest degree, and names the stop", () => {
    expect(on(246, 70)).toContain("TO. Needle 2 dots left, 4 degrees.");
    expect(on(253, 70)).toContain("TO. Needle 1.5 dots right, 3 degrees.");
    expect(on(72, 70)).toContain("FROM. Needle 1 dot left, 2 degrees.");
    expect(on(71, 70)).toContain("FROM. Needle 0.5 dots left, 1 degree.");
    expect(on(100, 70)).toContain("Needle full left, 10 degrees or more.");
    expect(on(70, 70)).toContain("Needle centred.");
  });

  it("says what is heard, and that a dead needle is parked", () => {
    expect(on(246, 70, "cdi", 112.45)).toBe(
      "NAV1, 112.45, no ident heard. Course 070. OFF. Needle parked, no signal. No DME.",
    );
  });

  it("reads the faces that turn with their heading, in three digits", () => {
    expect(on(246, 70, "hsi")).toContain("Heading 090. Course 070. TO. Needle 2 dots left");
    expect(on(246, 70, "rmi")).toContain("Heading 090. Pointer head 066, tail 246.");
    expect(on(246, 70, "rmi")).not.toContain("Course");
  });
});
