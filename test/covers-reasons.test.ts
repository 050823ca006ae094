/** A cover takes out of the argument whatever says what lies under it: each cover in turn, over every scene of the demo. */

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  type Direction,
  magneticFromTrue,
  threeDigits,
  trueFromStation,
  turned,
} from "../src/earth/index.ts";
import type { ReceiverReading } from "../src/panel/index.ts";
import { frequencyText } from "../src/radio/index.ts";
import {
  cautionsUnderCovers,
  type Reason,
  reasonsFor,
  underCovers,
  withheldBy,
} from "../src/reason/index.ts";
import { resolveScene, type Situation } from "../src/scene/index.ts";
import { demoSituations } from "./draw-chart-read.ts";
import { coversArbitrary, sceneArbitrary } from "./scene-arbitraries.ts";

const SITUATIONS = demoSituations().map(({ situation }) => situation);

/** What would give the answer away; nothing where the scene has none, or says the same number of something that is not covered. */
type Answers = (situation: Situation, reading: ReceiverReading) => readonly (string | RegExp)[];

/** Directions of a situation that may be told by their own names while another is covered. */
function otherDirections(
  { variationDeg }: Situation,
  { settings, station, radial, heading, geometry }: ReceiverReading,
  except: "course" | "heading",
): string[] {
  // Where the receiver is misled, the argument counts from the true radial, and tells the one read beside it.
  const trueRadial = radial === null ? null : (geometry?.trueRadial ?? null);
  const byCompass = [radial, trueRadial].map((each) =>
    each === null || station === null
      ? null
      : magneticFromTrue(trueFromStation(each, station.declinationDeg), variationDeg),
  );
  const all: (Direction | null)[] = [
    radial,
    trueRadial,
    ...byCompass,
    except === "course" ? heading : settings.course,
  ];
  return all.flatMap((deg) => (deg === null ? [] : [threeDigits(deg), threeDigits(turned(deg, 180))]));
}
/** A test signal's rule names 360 and 180 whatever is set. */
const unlessElsewhere = (
  shown: string,
  situation: Situation,
  reading: ReceiverReading,
  except: "course" | "heading",
): string[] =>
  reading.station?.kind === "VOT" || otherDirections(situation, reading, except).includes(shown)
    ? []
    : [shown];

const stationNames: Answers = (_, { station }) => (station === null ? [] : [station.ident, station.name]);
const place: Answers = (_, { radial, geometry }) => [
  ...(radial === null ? [] : [`${threeDigits(radial)} radial`, `Radial ${threeDigits(radial)}`]),
  ...(geometry === null ? [] : [`${geometry.distanceNm.toFixed(1)} NM`]),
];

const ANSWERS: Readonly<Record<string, Answers>> = {
  chart: place,
  aircraft: place,
  needle: () => [
    /(?<!row of )\bdots?\b/,
    /needle is centred/,
    /drives the needle/,
    /rests in the middle/,
    /your (left|right)\b/,
  ],
  flag: () => [/\bTO\b/, /\bFROM\b/, /flag (OFF|goes|may|wander)/],
  course: (situation, reading) =>
    unlessElsewhere(threeDigits(reading.settings.course), situation, reading, "course"),
  heading: (situation, reading) =>
    unlessElsewhere(threeDigits(reading.heading), situation, reading, "heading"),
  dme: (_, { dme }) => (dme === null ? [] : [`${dme.distanceNm.toFixed(1)} NM`]),
  ident: stationNames,
  frequency: (situation, reading) => [
    ...stationNames(situation, reading),
    frequencyText(reading.settings.frequencyMhz),
  ],
  panel: (_, reading) => [
    /(?<!row of )\bdots?\b/,
    /needle is centred/,
    /\bFROM side/,
    /\bTO side/,
    /is heard/,
    /DME reads/,
    ...(reading.dme === null ? [] : [`${reading.dme.distanceNm.toFixed(1)} NM because`]),
  ],
};
const SHARED = ["chart", "aircraft", "heading", "panel"];

const words = (reasons: readonly Reason[]): string =>
  reasons.map(({ title, sentence, source }) => `${title}. ${sentence} ${source}`).join("\n");
const spokenUnder = (reasons: readonly Reason[], cover: string): Reason[] =>
  underCovers(reasons, [cover]).flatMap((step) => (step.kind === "spoken" ? [step.reason] : []));
const tells = (text: string, answer: string | RegExp): boolean =>
  typeof answer === "string" ? text.includes(answer) : answer.test(text);

describe("under a cover of", () => {
  for (const [key, answersOf] of Object.entries(ANSWERS))
    it(`${key} no step tells it, and without the cover some do`, () => {
      let told = 0;
      for (const situation of SITUATIONS)
        for (const reading of situation.receivers) {
          const name = reading.settings.name;
          const reasons = reasonsFor(situation).filter(({ receiver }) => receiver === name);
          const spoken = words(spokenUnder(reasons, SHARED.includes(key) ? key : `${name}.${key}`));
          for (const answer of answersOf(situation, reading)) {
            if (tells(words(reasons), answer)) told++;
            const where = `${situation.scene.title}, ${name}: ${String(answer)}`;
            expect(tells(spoken, answer) ? `${where} in ${spoken}` : "").toBe("");
          }
        }
      expect(told).toBeGreaterThan(4);
    });

  it("a receiver, or the reasons, nothing is said of it", () => {
    for (const situation of SITUATIONS) {
      const reasons = reasonsFor(situation);
      expect(spokenUnder(reasons, "reasons")).toEqual([]);
      expect(spokenUnder(reasons, "NAV1").some(({ receiver }) => receiver === "NAV1")).toBe(false);
    }
  });

  it("anything, steps spoken and withheld are all the steps, each in its place", () => {
    const cases = sceneArbitrary.chain((scene) =>
      coversArbitrary(scene.receivers.map(({ name }) => name)).map((covers) => ({ scene, covers })),
    );
    fc.assert(
      fc.property(cases, ({ scene, covers }) => {
        const reasons = reasonsFor(resolveScene(scene));
        const steps = underCovers(reasons, covers);
        const places = steps.map((step) => (step.kind === "spoken" ? step.reason : step));
        expect(places.map(({ receiver, number }) => [receiver, number])).toEqual(
          reasons.map(({ receiver, number }) => [receiver, number]),
        );
        const withheld = withheldBy(reasons, covers);
        expect(withheld.length).toBe(steps.filter(({ kind }) => kind === "withheld").length);
        // A further cover never brings a step back.
        const fewer = covers.slice(1);
        for (const reason of withheldBy(reasons, fewer)) expect(withheld).toContain(reason);
      }),
      { numRuns: 150 },
    );
  });
});

it("cautions wait until nothing is covered that they could give away", () => {
  const cautions = ["NAV1: OXK is received beyond its published service volume."];
  expect(cautionsUnderCovers(cautions, [])).toEqual(cautions);
  expect(cautionsUnderCovers(cautions, ["heading", "signal"])).toEqual(cautions);
  for (const cover of ["NAV1.flag", "NAV1.ident", "aircraft", "chart", "panel", "NAV2"])
    expect(cautionsUnderCovers(cautions, ["heading", cover])).toEqual([]);
});
