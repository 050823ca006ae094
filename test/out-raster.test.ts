/** Whatever lies far off the sheet, a figure can be drawn as pixels: the rasteriser must never be led to end the process. */

import { spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { heldOnSheet } from "../src/cli/held-on-sheet.ts";
import { pictureFonts } from "../src/cli/picture-fonts.ts";
import { figureSvg, THEMES } from "../src/draw/index.ts";
import type { LatLon } from "../src/earth/index.ts";
import { reasonsFor } from "../src/reason/index.ts";
import { resolveScene, type Scene, type View } from "../src/scene/index.ts";
import { onRadial, situationOf, TXJ } from "./isles.ts";
import { sceneArbitrary } from "./scene-arbitraries.ts";
import { spread } from "./spread.ts";

const PROGRAM = fileURLToPath(new URL("rasterise.mjs", import.meta.url));

/** The pictures' numbers and "done", as far as the rasteriser came. */
function rasterise(svgs: readonly string[]): string {
  const made = spawnSync(process.execPath, [PROGRAM, ...pictureFonts()], {
    input: JSON.stringify(svgs),
    encoding: "utf8",
    env: { ...process.env, RUST_BACKTRACE: "0" },
  });
  return made.stdout;
}
const all = (svgs: readonly string[]): string => [...svgs.keys(), "done"].join(" ");

function figureOf(scene: Scene, views: readonly View[]): string {
  const situation = resolveScene(scene);
  return figureSvg({
    situation,
    reasons: reasonsFor(situation),
    views,
    widthPx: 480,
    heightPx: 270,
    theme: THEMES.light,
    transparent: false,
    idPrefix: "f",
  });
}

/** Everything of a scene moved to within some degrees of its aircraft: near enough that some of it lies on the sheet and some not. */
const drawnTogether = fc
  .tuple(
    sceneArbitrary,
    fc.constantFrom(0.2, 1, 4, 12),
    fc.array(spread(-1, 1), { minLength: 97, maxLength: 97 }),
  )
  .map(([scene, reachDeg, chances]) => {
    let next = 0;
    const chance = () => chances[next++ % chances.length]! * reachDeg;
    const { latDeg, lonDeg } = scene.aircraft.position;
    const middle = {
      latDeg: Math.min(60, Math.max(-60, latDeg)),
      lonDeg: Math.min(150, Math.max(-150, lonDeg)),
    };
    const place = (): LatLon => ({ latDeg: middle.latDeg + chance(), lonDeg: middle.lonDeg + chance() });
    const moved = <T extends { readonly position: LatLon }>(things: readonly T[]): T[] =>
      things.map((thing) => ({ ...thing, position: place() }));
    const { land, signal } = scene;
    return {
      ...scene,
      covers: [],
      aircraft: { ...scene.aircraft, position: middle },
      stations: moved(scene.stations),
      receivers: scene.receivers.map((receiver, index) => ({
        ...receiver,
        frequencyMhz: scene.stations[index]?.frequencyMhz ?? receiver.frequencyMhz,
      })),
      signal: signal && { ...signal, reflectors: moved(signal.reflectors) },
      land: land && {
        ...land,
        islands: land.islands.map((island) => ({ ...island, coast: island.coast.map(place) })),
        relief: land.relief.map((area) => ({ ...area, ring: area.ring.map(place) })),
        peaks: moved(land.peaks),
        airfields: moved(land.airfields),
      },
    };
  });

const near = situationOf({ at: onRadial(TXJ, 246, 18), courseDeg: 70, stations: [TXJ] }).scene;
const FAR = onRadial(TXJ, 300, 250);
const reflectors = [{ ident: "TXJ", position: FAR, amplitude: 0.1 }];
const farSignal = { kind: "conventional", noiseDb: null, reflectors, propeller: null } as const;
const island = [
  onRadial(TXJ, 45, 900),
  onRadial(TXJ, 135, 900),
  onRadial(TXJ, 225, 900),
  onRadial(TXJ, 315, 900),
];
const bare = { name: "Far", relief: [], peaks: [], airfields: [] };

const CASES: Readonly<Record<string, Scene>> = {
  "a reflector, and nothing else of the signal": {
    ...near,
    stations: [{ ...TXJ, position: FAR }],
    signal: farSignal,
  },
  "the whole of an island that reaches many sheets beyond": {
    ...near,
    land: { ...bare, islands: [{ name: "Wide", coast: island }] },
  },
};

describe("far off the sheet", () => {
  it.each(Object.entries(CASES))("%s can be drawn", (_, scene) => {
    const svgs = [figureOf(scene, ["chart"]), figureOf(scene, ["chart", "panel"])].map(heldOnSheet);
    expect(rasterise(svgs)).toBe(all(svgs));
  });

  it("a reflector is not drawn at all", () => {
    const drawn = (scene: Scene) => figureOf(scene, ["chart"]).match(/data-reflector/g)?.length ?? 0;
    expect(drawn({ ...near, signal: farSignal })).toBe(0);
    const [far] = reflectors;
    const onSheet = { ...far!, position: onRadial(TXJ, 300, 2) };
    expect(drawn({ ...near, signal: { ...farSignal, reflectors: [far!, onSheet] } })).toBe(1);
  });

  it("any part of any scene can be drawn", () => {
    const scenes = fc.sample(fc.oneof(drawnTogether, sceneArbitrary), { numRuns: 120, seed: 20_260_701 });
    const plain = scenes.map((scene) => figureOf(scene, ["chart"]));
    const svgs = plain.map(heldOnSheet);
    expect(rasterise(svgs)).toBe(all(svgs));
    // The rasteriser still needs it: without it one of these ends the process.
    expect(rasterise(plain)).not.toContain("done");
  }, 60_000);
});

it("nothing is seen of what holds a picture on its sheet", () => {
  const svg = figureOf(near, ["chart", "panel"]);
  const held = heldOnSheet(svg);
  expect(held.match(/ fill-opacity="0"\/>/g)?.length).toBe(4);
  expect(held.match(/overflow="visible"/g)?.length).toBe(1);
  const without = held
    .replaceAll(/<rect [^>]*? fill="#000" fill-opacity="0"\/>/g, "")
    .replace(' overflow="visible"', "");
  expect(without.replaceAll(/\s+/g, "")).toBe(svg.replaceAll(/\s+/g, ""));
});
