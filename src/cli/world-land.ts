/** The outlines of the world's land, read when a figure shows a piece of the earth that its scene has no land for. */

import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { feature } from "topojson-client";
import type { GeometryCollection, Topology } from "topojson-specification";
import { type WorldOutlines, worldLandIsWanted, worldOutlines } from "../draw/index.ts";
import type { Scene } from "../scene/index.ts";

/** What a figure frames by itself reaches about so far from the aircraft, NM across. */
const AROUND_AIRCRAFT_NM = 200;

/** Read once: a sheet has many charts. */
let known: WorldOutlines | undefined;

/** Null where the scene's own land is all there is. */
export function worldLandFor({ land, aircraft }: Scene): WorldOutlines | null {
  const around = { centre: aircraft.position, widthNm: AROUND_AIRCRAFT_NM };
  if (!worldLandIsWanted(around, 1, land)) return null;
  known ??= readOutlines();
  return known;
}

function readOutlines(): WorldOutlines {
  const path = createRequire(import.meta.url).resolve("world-atlas/land-50m.json");
  const topology = JSON.parse(readFileSync(path, "utf8")) as Topology<{ land: GeometryCollection }>;
  const { features } = feature(topology, topology.objects.land);
  return worldOutlines(
    features.flatMap(({ geometry }) => (geometry.type === "MultiPolygon" ? geometry.coordinates.flat() : [])),
  );
}
