/**
 * Random sequences of hands on the bench: after every one the views' data, the link, the saved file and undo must agree with the
 * engine. What the views draw is a pure function of the situation, so agreement of the situation is agreement of the views; the
 * chart is read back all the same.
 */

import fc from "fast-check";
import { renderToString } from "preact-render-to-string";
import { expect, test } from "vitest";
import { Chart, faceSentence, fitView, THEMES } from "../src/draw/index.ts";
import { direct, magneticDeg, stationDeg, trueDeg } from "../src/earth/index.ts";
import { FACES } from "../src/panel/index.ts";
import type { Station } from "../src/radio/index.ts";
import { reasonsFor } from "../src/reason/index.ts";
import { resolveScene, type Scene, sceneFromLink, sceneToLink, writeScene } from "../src/scene/index.ts";
import { savedText } from "../src/web/files/saved-text.ts";
import type { SceneAction } from "../src/web/state/actions.ts";
import { createBench } from "../src/web/state/bench.ts";
import { TXJ } from "./isles.ts";
import { SCENE_TEXT, STATIONS_TEXT, sceneFrom } from "./scene-files.ts";
import { spread } from "./spread.ts";

const receiver = fc.constantFrom("NAV1", "NAV2", "NAV3", "NAV4");
const whole = fc.integer({ min: 0, max: 359 });
const HALDREY = { latDeg: -10.333333, lonDeg: 1.45 };

/** One of one's own beside the two of the scene's file. */
const OWN: Station = {
  ...TXJ,
  ident: "OWN",
  name: "My own",
  kind: "VOR",
  dmeChannel: null,
  vorClass: null,
  frequencyMhz: 112.45,
  position: { latDeg: -10.5, lonDeg: 1.7 },
};
const ident = fc.constantFrom("HJL", "TXJ", "OWN");
const cover = fc.oneof(
  fc.constantFrom("chart", "panel", "signal", "reasons", "aircraft", "heading"),
  fc
    .tuple(receiver, fc.constantFrom("needle", "flag", "course", "frequency", "ident", "dme"))
    .map(([name, part]) => `${name}.${part}`),
);

const action: fc.Arbitrary<SceneAction> = fc.oneof(
  fc
    .tuple(spread(0, 359), spread(0, 120))
    .map(([azimuth, nm]) => ({ kind: "move-aircraft", to: direct(HALDREY, trueDeg(azimuth), nm) }) as const),
  whole.map((deg) => ({ kind: "set-heading", heading: magneticDeg(deg) }) as const),
  fc.integer({ min: -30, max: 30 }).map((byDeg) => ({ kind: "turn-heading", byDeg }) as const),
  fc.integer({ min: 0, max: 45_000 }).map((altitudeFt) => ({ kind: "set-altitude", altitudeFt }) as const),
  fc
    .tuple(receiver, whole)
    .map(([name, deg]) => ({ kind: "set-course", receiver: name, course: stationDeg(deg) }) as const),
  fc
    .tuple(receiver, fc.integer({ min: -20, max: 20 }))
    .map(([name, byDeg]) => ({ kind: "turn-course", receiver: name, byDeg }) as const),
  fc
    .tuple(receiver, fc.constantFrom(113.9, 115.6, 112.45, 108.2))
    .map(([name, frequencyMhz]) => ({ kind: "tune-receiver", receiver: name, frequencyMhz }) as const),
  fc.constant({ kind: "lift-covers" } as const),
  cover.map((put) => ({ kind: "put-cover", cover: put }) as const),
  cover.map((lifted) => ({ kind: "lift-cover", cover: lifted }) as const),
  fc.constantFrom("", "Where are you?").map((ask) => ({ kind: "set-ask", ask }) as const),
  fc
    .tuple(receiver, fc.constantFrom(...FACES))
    .map(([name, face]) => ({ kind: "set-face", receiver: name, face }) as const),
  fc
    .tuple(receiver, fc.integer({ min: -60, max: 60 }))
    .map(([name, tenths]) => ({ kind: "set-bearing-error", receiver: name, errorDeg: tenths / 10 }) as const),
  fc.constant({ kind: "add-receiver" } as const),
  receiver.map((name) => ({ kind: "remove-receiver", receiver: name }) as const),
  fc
    .tuple(ident, spread(0, 359), spread(1, 90))
    .map(
      ([moved, azimuth, nm]) =>
        ({ kind: "move-station", ident: moved, to: direct(HALDREY, trueDeg(azimuth), nm) }) as const,
    ),
  fc.constant({ kind: "add-station", station: OWN } as const),
  ident.map((gone) => ({ kind: "remove-station", ident: gone }) as const),
);

/** Undo and redo are hands too. */
const hand = fc.oneof(
  { weight: 6, arbitrary: action },
  { weight: 1, arbitrary: fc.constant("undo" as const) },
  { weight: 1, arbitrary: fc.constant("redo" as const) },
);

/** Equal within what a file keeps: half a tenth of a degree or foot, about a metre. */
function expectSame(got: Scene, wanted: Scene): void {
  expect(got.aircraft.position.latDeg).toBeCloseTo(wanted.aircraft.position.latDeg, 4);
  expect(got.aircraft.position.lonDeg).toBeCloseTo(wanted.aircraft.position.lonDeg, 4);
  expect(got.stations).toHaveLength(wanted.stations.length);
  got.stations.forEach(({ position }, index) => {
    expect(position.latDeg).toBeCloseTo(wanted.stations[index]!.position.latDeg, 4);
    expect(position.lonDeg).toBeCloseTo(wanted.stations[index]!.position.lonDeg, 4);
  });
  const settled = (scene: Scene) => ({
    ...scene,
    aircraft: { ...scene.aircraft, position: null },
    stations: scene.stations.map((station) => ({ ...station, position: null })),
  });
  expect(settled(got)).toEqual(settled(wanted));
}

test("views, link, file and undo agree with the engine after any sequence of hands", () => {
  const first = sceneFrom(SCENE_TEXT);
  const world = { name: "isles", stations: first.stations, land: first.land };
  const source = {
    path: "scene.yaml",
    text: SCENE_TEXT,
    scene: first,
    files: new Map([["isles.yaml", STATIONS_TEXT]]),
    handle: null,
  };
  fc.assert(
    fc.property(fc.array(hand, { minLength: 1, maxLength: 25 }), (hands) => {
      const bench = createBench({ name: "scene.yaml", origin: "file" }, first);
      const states: Scene[] = [first];
      let at = 0;
      for (const each of hands) {
        if (each === "undo") {
          bench.undo();
          at = Math.max(0, at - 1);
        } else if (each === "redo") {
          bench.redo();
          at = Math.min(states.length - 1, at + 1);
        } else {
          const before = bench.scene.value;
          // The panel has knobs only for the receivers there are.
          if ("receiver" in each && !before.receivers.some(({ name }) => name === each.receiver)) continue;
          bench.act(each);
          if (bench.scene.value !== before) {
            states.splice(at + 1, states.length, bench.scene.value);
            at++;
          }
        }
        expect(bench.scene.value).toEqual(states[at]);
      }
      const scene = bench.scene.value;

      // The views' data is the engine's, worked out afresh.
      const fresh = resolveScene(scene);
      expect(bench.situation.value).toEqual(fresh);
      const attended = bench.attended.value;
      expect(bench.reasons.value).toEqual(reasonsFor(fresh).filter((reason) => reason.receiver === attended));
      const view = fitView(fresh, 800, 600);
      const picture = (situation: typeof fresh) =>
        renderToString(
          Chart({ situation, view, widthPx: 800, heightPx: 600, theme: THEMES.light, idPrefix: "c" }),
        );
      expect(picture(bench.situation.value) === picture(fresh)).toBe(true);
      for (const reading of fresh.receivers) expect(faceSentence(reading)).not.toMatch(/NaN|undefined/);

      // The link gives the very same scene.
      const linked = sceneFromLink(sceneToLink(scene, { world }), { world });
      if (!linked.ok) throw new Error(linked.faults.join("; "));
      expect(linked.scene).toEqual(scene);

      // The file, edited in place, gives it to the file's rounding, and keeps its comments.
      const saved = savedText(scene, source, new Map());
      if (!saved.ok) throw new Error(saved.lines.join("; "));
      expect(saved.text).toContain("# A scene for tests.");
      expectSame(sceneFrom(saved.text), scene);
      expectSame(sceneFrom(writeScene(scene)), scene);

      // Everything can be taken back to the beginning, and brought again.
      while (bench.canUndo.value) bench.undo();
      expect(bench.scene.value).toEqual(first);
      while (bench.canRedo.value) bench.redo();
      expect(bench.scene.value).toEqual(states.at(-1));
    }),
    { seed: 33, numRuns: 60 },
  );
});
