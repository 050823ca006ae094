/**
 * Nothing of what is covered is anywhere in the page: no text, no label, no title, no value, no announcement. Each thing is covered in turn
 * on several scenes, and the whole page is searched for the answer; then scenes that differ only in what is covered must give the same page,
 * element for element.
 */

import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { needleWords } from "../../src/draw/index.ts";
import {
  direct,
  latLonText,
  magneticDeg,
  stationDeg,
  threeDigits,
  trueFromStation,
  turnBetween,
} from "../../src/earth/index.ts";
import type { Face, SignalConditions } from "../../src/panel/index.ts";
import { resolveScene, type Scene, sceneToLink } from "../../src/scene/index.ts";
import { linkWorld } from "../../src/web/link/demo-world.ts";
import { benchUnderTest } from "./bench-under-test.ts";
import { demoScene } from "./demo-in-node.ts";
import { domWhole, domWords, firstDifference } from "./dom-words.ts";

const DEMO = demoScene("01-which-way-to-the-course");
const WORLD = linkWorld(DEMO);

const bench = benchUnderTest();

const station = (ident: string) => DEMO.stations.find((each) => each.ident === ident)!;
const onRadial = (ident: string, radialDeg: number, distanceNm: number) => {
  const { position, declinationDeg } = station(ident);
  return direct(position, trueFromStation(stationDeg(radialDeg), declinationDeg), distanceNm);
};

interface Setup {
  readonly face: Face;
  readonly radialDeg: number;
  readonly distanceNm: number;
  readonly courseDeg: number;
  readonly headingDeg: number;
  readonly tune?: string;
  readonly signal?: SignalConditions;
}
/** Numbers chosen so that none of them turns up by chance. */
const BASE: Setup = { face: "cdi", radialDeg: 246, distanceNm: 18.4, courseDeg: 61, headingDeg: 87 };
const SECRET = "SECRET OF THE SCENE";

function sceneOf(change: Partial<Setup>, covers: readonly string[]): Scene {
  const { face, radialDeg, distanceNm, courseDeg, headingDeg, tune, signal } = { ...BASE, ...change };
  return {
    ...DEMO,
    title: "A question",
    about: SECRET,
    ask: "What do you make of it?",
    aircraft: {
      ...DEMO.aircraft,
      position: onRadial("TXJ", radialDeg, distanceNm),
      heading: magneticDeg(headingDeg),
    },
    receivers: [
      {
        name: "NAV1",
        frequencyMhz: station(tune ?? "TXJ").frequencyMhz,
        course: stationDeg(courseDeg),
        face,
        bearingErrorDeg: 0,
      },
      {
        name: "NAV2",
        frequencyMhz: station("OXK").frequencyMhz,
        course: stationDeg(300),
        face: "cdi",
        bearingErrorDeg: 0,
      },
    ],
    signal: signal ?? null,
    covers,
  };
}

/** A hangar whose echo leads the needle astray, so that the panel is not to be told from the chart. */
const ECHO: SignalConditions = {
  kind: "conventional",
  noiseDb: null,
  reflectors: [{ ident: "TXJ", position: onRadial("TXJ", 300, 2), amplitude: 0.1 }],
  propeller: null,
};
const QUIET: SignalConditions = { ...ECHO, reflectors: [] };

const onScene = (scene: Scene, use: (page: Page) => Promise<void>): Promise<void> =>
  bench.visit(use, { path: `#${sceneToLink(scene, { world: WORLD })}` });

/** Longer than the announcer waits before it speaks, ms. */
const SPOKEN_AFTER_MS = 1200;

/** Covers a thing by the list, as an instructor would, after everything has been shown, said and pointed at in the open. */
async function coverByList(page: Page, name: string): Promise<void> {
  await page.keyboard.press("c");
  await page.getByRole("checkbox", { name, exact: true }).check();
  await page.keyboard.press("Escape");
}

interface Case {
  /** As the list calls it. */
  readonly name: string;
  readonly faces: readonly Face[];
  /** Where the answer may stand of right: outside this part of the page. */
  readonly scope?: string;
  readonly answers: (scene: Scene) => readonly (string | RegExp)[];
}

const NAV1 = ".receiver:has([data-receiver='NAV1'])";
const ALL_FACES: readonly Face[] = ["cdi", "hsi", "rmi"];
const needle = (scene: Scene): string => needleWords(resolveScene(scene).receivers[0]!);
const names = [/TXJ/, /Tamsel/];
const CASES: readonly Case[] = [
  {
    name: "NAV1 needle",
    faces: ["cdi", "hsi"],
    answers: (scene) => [needle(scene), /2\.5 dots right/, /needle 2/i],
  },
  // The signal's radial and the chart's are what the pointer is to be found from.
  {
    name: "NAV1 needle",
    faces: ["rmi"],
    scope: `${NAV1}, .reasons, .ask-card`,
    answers: () => [/\b066\b/, /\b246\b/],
  },
  {
    name: "NAV1 TO/FROM flag",
    faces: ["cdi", "hsi"],
    scope: `${NAV1}, .reasons, [role=status], .chart-ground, .signal`,
    answers: () => [/(?<![/A-Z])TO(?![/A-Z])/, /data-flag=TO/],
  },
  { name: "NAV1 course", faces: ["cdi", "hsi"], answers: () => [/\b061\b/, /\b241\b/] },
  { name: "NAV1 DME", faces: ALL_FACES, answers: () => [/18\.4/] },
  {
    name: "NAV1 ident",
    faces: ALL_FACES,
    scope: `${NAV1}, .reasons, .signal, .ask-card, [role=status]`,
    answers: () => names,
  },
  {
    name: "NAV1 frequency",
    faces: ALL_FACES,
    scope: `${NAV1}, .reasons, .signal, .ask-card, [role=status]`,
    answers: () => [...names, /115\.60/],
  },
  {
    name: "all of NAV1",
    faces: ALL_FACES,
    scope: `${NAV1}, .reasons, .signal, .ask-card, [role=status]`,
    answers: (scene) => [...names, /115\.60/, /\b061\b/, /18\.4/, /\b246\b/, needle(scene)],
  },
  { name: "all of NAV1", faces: ALL_FACES, answers: () => [/\b061\b|2½ dots/, /DME 18\.4|18\.4 NM/] },
  { name: "the heading", faces: ALL_FACES, answers: () => [/\b087\b/, /hand-nose/] },
  {
    name: "the aircraft's place",
    faces: ["cdi", "hsi"],
    answers: ({ aircraft }) => [/radial 246/i, /246 radial/, latLonText(aircraft.position), /hand-aircraft/],
  },
  {
    name: "the chart",
    faces: ["cdi", "hsi"],
    answers: ({ aircraft }) => [
      /radial 246/i,
      /246 radial/,
      latLonText(aircraft.position),
      /hand-/,
      /data-station/,
    ],
  },
  {
    name: "the panel",
    faces: ALL_FACES,
    answers: (scene) => [needle(scene), /dots? (left|right)/, /DME 18\.4/, /NAV1 frequency|NAV1 course down/],
  },
  { name: "the signal", faces: ["cdi"], answers: () => [/22\.8|milliseconds/, /variable: later/] },
  { name: "the reasons", faces: ["cdi"], answers: () => [/You are on the 246 radial/, /Tuned and proved/] },
];

const tells = (words: string, answer: string | RegExp): boolean =>
  typeof answer === "string" ? words.includes(answer) : answer.test(words);

/** The lines that give an answer away, short enough to be read. */
const linesThat = (words: string, answer: string | RegExp): string[] =>
  words.split("\n").flatMap((line) => (tells(line, answer) ? [`${answer}: ${line.slice(0, 160)}`] : []));

describe("a cover", () => {
  const leavesNothing = (scene: Scene, cases: readonly Case[]): Promise<void> =>
    onScene(scene, async (page) => {
      // Said aloud, and a step pointed at, before anything is covered.
      await page.locator(".chain button").nth(3).hover();
      await page.waitForTimeout(SPOKEN_AFTER_MS);
      const open = new Map<string | undefined, string>();
      for (const { scope } of cases) if (!open.has(scope)) open.set(scope, await domWords(page, scope));
      for (const { name, scope, answers } of cases) {
        const told = answers(scene).filter((answer) => tells(open.get(scope) ?? "", answer));
        expect(told.length, `${name}: nothing is told in the open`).toBeGreaterThan(0);
        await coverByList(page, name);
        // At once, and again when the page has settled.
        for (const waitMs of [0, SPOKEN_AFTER_MS]) {
          await page.waitForTimeout(waitMs);
          const shut = await domWords(page, scope);
          expect(
            told.flatMap((answer) => linesThat(shut, answer)),
            name,
          ).toEqual([]);
          expect(shut, name).toMatch(/covered/);
          expect(await domWords(page), name).not.toContain(SECRET);
        }
        await page.keyboard.press("Control+z");
      }
    });

  it.each(ALL_FACES)("over any part leaves its answer nowhere in the page (%s)", (face) =>
    leavesNothing(
      sceneOf({ face }, []),
      CASES.filter(({ faces }) => faces.includes(face)),
    ),
  );

  it("leaves nothing of a needle that an echo leads astray, and nothing of the echo", () => {
    // The place of the demo: there the echo pulls hardest.
    const scene = sceneOf({ signal: ECHO, distanceNm: 18 }, []);
    const [reading] = resolveScene(scene).receivers;
    const read = new RegExp(`\\b${threeDigits(reading!.radial!)}\\b`);
    expect(Math.abs(turnBetween(reading!.geometry!.trueRadial, reading!.radial!))).toBeGreaterThan(2);
    const astray = [needle(scene), read, /astray/, /needle alone/, /were the needle right/];
    return leavesNothing(scene, [
      {
        name: "NAV1 needle",
        faces: ["cdi"],
        scope: `${NAV1}, .reasons, .ask-card, [role=status]`,
        answers: () => astray,
      },
      { name: "NAV1 needle", faces: ["cdi"], answers: () => [needle(scene), /astray/] },
      { name: "the panel", faces: ["cdi"], answers: () => [needle(scene), /astray/, /needle alone/] },
      { name: "the signal", faces: ["cdi"], answers: () => [/\becho\b/i, /a reflector/, /data-reflector/] },
      {
        name: "all of NAV1",
        faces: ["cdi"],
        answers: () => [needle(scene), /astray/, /NAV1: the signal of/],
      },
    ]);
  });
});

describe("the pictures of the signal", () => {
  /** What they tell in the open, and may not under each cover. */
  const TOLD: readonly (readonly [string, readonly RegExp[]])[] = [
    // A whole word: the places of lines on the paper have such figures too.
    ["NAV1 course", [/\b061\b/, /\b241 TO\b|and 241\b/, /2½ dots right/]],
    ["NAV1 needle", [/dots/, / (late|early), \d/, /data-part=needle/]],
    ["NAV1 TO/FROM flag", [/(?<![/A-Z])TO(?![/A-Z])/, /FROM/]],
    ["NAV1 ident", [/TXJ/, /9° west/]],
    ["NAV1 frequency", [/TXJ/, /9° west/]],
    ["all of NAV1", [/\b246\b/, /\b061\b/, /data-angle/, /data-beam/]],
    ["the signal", [/\b246\b/, /22\.8/, /data-angle/, /data-beam/, /spectrum/]],
  ];

  it("all at once tell nothing of what is covered", () =>
    onScene(sceneOf({}, []), async (page) => {
      await page.getByRole("button", { name: "Enlarge the signal" }).click();
      await page.locator('[data-picture="spectrum"]').waitFor();
      const open = await domWords(page, ".signal");
      for (const [name, answers] of TOLD) {
        expect(
          answers.filter((answer) => !tells(open, answer)),
          `${name}: told in the open`,
        ).toEqual([]);
        await coverByList(page, name);
        await page.waitForTimeout(200);
        const shut = await domWords(page, ".signal");
        expect(
          answers.flatMap((answer) => linesThat(shut, answer)),
          name,
        ).toEqual([]);
        await page.keyboard.press("Control+z");
      }
    }));
});

/** What is covered, and the scenes that must then look alike: with everything covered that would tell the same by itself. */
const ALIKE: readonly {
  readonly what: string;
  readonly covers: readonly string[];
  readonly scenes: readonly Partial<Setup>[];
}[] = [
  {
    what: "the aircraft",
    covers: ["aircraft", "NAV1", "NAV2", "signal"],
    scenes: [{}, { radialDeg: 31, distanceNm: 44 }, { radialDeg: 200, distanceNm: 7 }],
  },
  {
    what: "the heading",
    covers: ["heading", "NAV1.dme"],
    scenes: [{ face: "hsi" }, { face: "hsi", headingDeg: 231 }, { face: "hsi", headingDeg: 4 }],
  },
  {
    what: "a receiver",
    covers: ["NAV1"],
    scenes: [{}, { courseDeg: 200 }, { tune: "HJL" }, { tune: "LJY", courseDeg: 5 }],
  },
  {
    what: "a course",
    covers: ["NAV1.course", "NAV1.needle", "NAV1.flag"],
    scenes: [{}, { courseDeg: 200 }, { courseDeg: 355 }],
  },
  {
    what: "a frequency",
    covers: ["NAV1.frequency", "NAV1.ident", "NAV1.needle", "NAV1.flag", "NAV1.dme", "signal", "reasons"],
    scenes: [{}, { tune: "HJL" }],
  },
  {
    what: "the signal and where it leads the needle",
    covers: ["signal", "NAV1", "reasons"],
    scenes: [{ signal: ECHO, distanceNm: 18 }, { signal: QUIET, distanceNm: 18 }, { distanceNm: 18 }],
  },
  {
    what: "everything",
    covers: ["chart", "panel", "signal", "reasons"],
    scenes: [{}, { radialDeg: 31, distanceNm: 44, courseDeg: 200, headingDeg: 4, tune: "HJL" }],
  },
];

describe("scenes that differ in nothing but", () => {
  for (const { what, covers, scenes } of ALIKE)
    it(`${what}, which is covered, give the same page`, async () => {
      const settled = async (change: Partial<Setup>, under: readonly string[]): Promise<string> => {
        let whole = "";
        await onScene(sceneOf(change, under), async (page) => {
          await page.waitForTimeout(SPOKEN_AFTER_MS);
          whole = await domWhole(page);
        });
        return whole;
      };
      const [first = {}, ...others] = scenes;
      const page = await settled(first, covers);
      for (const other of others) expect(firstDifference(await settled(other, covers), page)).toBe("none");
      // Without the covers they are told apart.
      expect(firstDifference(await settled(first, []), await settled(others[0]!, []))).not.toBe("none");
    });
});

it("the answer's digits are the scene's own", () => {
  const reading = resolveScene(sceneOf({}, [])).receivers[0]!;
  expect(threeDigits(reading.radial!)).toBe("246");
  expect(needleWords(reading)).toBe("2½ dots right");
  expect(reading.dme?.distanceNm.toFixed(1)).toBe("18.4");
  expect(reading.flag).toBe("TO");
});
