/**
 * The world's land on a chart, checked by a second route: d3-geo says on the sphere whether a place lies on land, and the drawn path
 * says it on the paper. Natural Earth's outlines (public domain) through world-atlas; places from any atlas.
 */

import { readFileSync } from "node:fs";
import { geoContains } from "d3-geo";
import fc from "fast-check";
import type { FeatureCollection, MultiPolygon } from "geojson";
import { h } from "preact";
import { renderToString } from "preact-render-to-string";
import { feature } from "topojson-client";
import { describe, expect, it } from "vitest";
import topology from "world-atlas/land-50m.json";
import { worldLandFor } from "../src/cli/world-land.ts";
import {
  chartFrame,
  figureSvg,
  THEMES,
  WorldLand,
  worldLandIsWanted,
  worldOutlines,
} from "../src/draw/index.ts";
import { latLon } from "../src/earth/index.ts";
import type { Land } from "../src/radio/index.ts";
import { readLand, resolveScene } from "../src/scene/index.ts";
import { situationOf } from "./isles.ts";

const LAND = feature(topology, topology.objects.land) as FeatureCollection<MultiPolygon>;
const OUTLINES = worldOutlines(LAND.features.flatMap(({ geometry }) => geometry.coordinates.flat()));

type Place = readonly [latDeg: number, lonDeg: number];

const SIZE = { widthPx: 840, heightPx: 700 };
const frameAt = ([latDeg, lonDeg]: Place, widthNm: number) =>
  chartFrame({ view: { centre: { latDeg, lonDeg }, widthNm }, ...SIZE, theme: THEMES.light, idPrefix: "x" });

/** The land's own path out of the picture, as rings of points. */
function drawnRings(frame: ReturnType<typeof frameAt>): number[][][] {
  const picture = renderToString(h(WorldLand, { outlines: OUTLINES, frame }));
  const d = /<path d="([^"]+)" fill="#efe6cf"/.exec(picture)?.[1] ?? "";
  return d
    .split("Z")
    .filter((ring) => ring !== "")
    .map((ring) =>
      ring
        .slice(1)
        .split("L")
        .map((point) => point.split(" ").map(Number)),
    );
}

/** Whether a point is inside the rings, counting each crossing (even-odd). */
function isInside(rings: readonly number[][][], x: number, y: number): boolean {
  let inside = false;
  for (const ring of rings)
    for (const [index, [x1 = 0, y1 = 0]] of ring.entries()) {
      const [x0 = 0, y0 = 0] = ring.at(index - 1) ?? [];
      if (y0 > y !== y1 > y && x < x0 + ((y - y0) / (y1 - y0)) * (x1 - x0)) inside = !inside;
    }
  return inside;
}

const isDrawnAsLand = (place: Place): boolean => {
  const frame = frameAt(place, 60);
  const at = frame.projection.toPaper({ latDeg: place[0], lonDeg: place[1] });
  return isInside(drawnRings(frame), at.x, at.y);
};

describe("the world's land", () => {
  it.each<[string, Place, boolean]>([
    ["Paris", [48.86, 2.35], true],
    ["the middle of the English Channel", [50.2, -1.5], false],
    ["Vanua Levu, by the antimeridian", [-16.6, 179.2], true],
    ["Taveuni, west of the antimeridian", [-16.85, -179.97], true],
    ["the sea between them and Samoa", [-15, -176], false],
    ["Chukotka, on the antimeridian itself", [67.5, 180], true],
    ["the Antarctic ice at the far end of the frame", [-79.5, 60], true],
    ["the Antarctic plateau, near the pole", [-86.5, 0], true],
    ["the Antarctic plateau, farther round", [-86.5, 120], true],
    ["the Weddell Sea", [-70, -40], false],
    ["the Caspian Sea, a hole in the land", [41.5, 51], false],
    ["the gulf off Accra, on the equator and the prime meridian", [0, 0], false],
    ["the middle of Africa, on the equator", [0, 25], true],
    ["where the invented isles lie", [-10.3, 1.9], false],
  ])("%s", (_, place, land) => {
    expect(isDrawnAsLand(place)).toBe(land);
  });

  it("is where the sphere has it, in any view below 80 degrees", () => {
    let compared = 0;
    fc.assert(
      fc.property(
        fc.double({ min: -78, max: 78, noNaN: true }),
        fc.double({ min: -180, max: 180, noNaN: true }),
        fc.double({ min: 20, max: 600, noNaN: true }),
        fc.array(fc.tuple(fc.integer({ min: 5, max: 95 }), fc.integer({ min: 5, max: 95 })), {
          minLength: 3,
          maxLength: 5,
        }),
        (latDeg, lonDeg, widthNm, spots) => {
          const frame = frameAt([latDeg, lonDeg], widthNm);
          const rings = drawnRings(frame);
          for (const [across, down] of spots) {
            const x = (across / 100) * SIZE.widthPx;
            const y = (down / 100) * SIZE.heightPx;
            const place = frame.projection.toWorld(x, y);
            const truth = landAllRound(place.latDeg, place.lonDeg);
            if (truth === null) continue;
            compared++;
            expect(isInside(rings, x, y)).toBe(truth);
          }
        },
      ),
      { numRuns: 60, seed: 20260701 },
    );
    expect(compared).toBeGreaterThan(150);
  });

  it("draws nothing over open sea", () => {
    expect(renderToString(h(WorldLand, { outlines: OUTLINES, frame: frameAt([-10.3, 1.9], 400) }))).toBe("");
  });

  it("lies under a figure of the command line, and is not read for the isles", () => {
    const isles = situationOf({ at: latLon(-10.3, 2), land: demoLand() }).scene;
    expect(worldLandFor(isles)).toBeNull();
    const channel = { ...isles, land: null, aircraft: { ...isles.aircraft, position: latLon(50, 1) } };
    const world = worldLandFor(channel);
    expect(world?.rings.length).toBe(OUTLINES.rings.length);
    const figure = figureSvg({
      situation: resolveScene(channel),
      reasons: [],
      views: ["chart"],
      widthPx: 640,
      heightPx: 480,
      theme: THEMES.light,
      idPrefix: "f",
      world,
    });
    expect(figure).toContain('data-land="world"');
  });

  it("is asked for only where the scene's own land ends", () => {
    const isles = demoLand();
    expect(isles?.islands.length).toBeGreaterThan(3);
    const view = (latDeg: number, lonDeg: number, widthNm: number) => ({
      centre: { latDeg, lonDeg },
      widthNm,
    });
    expect(worldLandIsWanted(view(-10.3, 1.9, 600), 0.8, isles)).toBe(false);
    expect(worldLandIsWanted(view(-6, 8, 100), 0.8, isles)).toBe(false);
    expect(worldLandIsWanted(view(-4, 10, 100), 0.8, isles)).toBe(true);
    expect(worldLandIsWanted(view(48.9, 2.3, 100), 0.8, isles)).toBe(true);
    expect(worldLandIsWanted(view(48.9, 2.3, 100), 0.8, null)).toBe(true);
  });
});

/** An arc between two points of the outlines bends away from the straight line of degrees by less than this, degrees. */
const NEAR_COAST_DEG = 0.12;

function demoLand(): Land | null {
  const path = "demo/ostrelle.land.yaml";
  const read = readLand(readFileSync(path, "utf8"), { path });
  return read.ok ? read.land : null;
}

/** Whether the sphere has land at a place; null where a coast is near, and the two routes may honestly differ. */
function landAllRound(latDeg: number, lonDeg: number): boolean | null {
  const truth = geoContains(LAND, [lonDeg, latDeg]);
  const widening = NEAR_COAST_DEG / Math.cos((latDeg * Math.PI) / 180);
  const around: [number, number][] = [
    [lonDeg, latDeg + NEAR_COAST_DEG],
    [lonDeg, latDeg - NEAR_COAST_DEG],
    [lonDeg + widening, latDeg],
    [lonDeg - widening, latDeg],
  ];
  return around.every((place) => geoContains(LAND, place) === truth) ? truth : null;
}
