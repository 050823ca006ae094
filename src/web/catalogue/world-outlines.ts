/** The outlines of the world's land, fetched when a chart first leaves the scene's own. */

import { signal } from "@preact/signals";
import { useEffect } from "preact/hooks";
import type { ChartView, WorldOutlines } from "../../draw/index.ts";
import { geodesicDistanceNm } from "../../earth/index.ts";
import type { Land } from "../../radio/index.ts";
import type { ChartSize } from "../chart/chart-window.ts";

const outlines = signal<WorldOutlines | null>(null);

/** The world's land for a view that wants it, once it has come; null otherwise. */
export function useWorldLand(view: ChartView, size: ChartSize, land: Land | null): WorldOutlines | null {
  const wanted = worldLandIsWanted(view, size.heightPx / size.widthPx, land);
  useEffect(() => {
    if (wanted) void loadWorldLand();
  }, [wanted]);
  return wanted ? outlines.value : null;
}

let asked: Promise<void> | null = null;

/** Loads them, once. Where they cannot be had the chart goes without, and the next call tries again. */
function loadWorldLand(): Promise<void> {
  asked ??= load().catch(() => {
    asked = null;
  });
  return asked;
}

async function load(): Promise<void> {
  const [{ default: topology }, { feature }, { worldOutlines }] = await Promise.all([
    import("world-atlas/land-50m.json"),
    import("topojson-client"),
    import("../../draw/index.ts"),
  ]);
  const land = feature(topology, topology.objects.land);
  const rings = land.features.flatMap(({ geometry }) =>
    geometry.type === "MultiPolygon" ? geometry.coordinates.flat() : [],
  );
  outlines.value = worldOutlines(rings);
}

/** A scene's own land stands for the world's this far around it, NM. The demo's isles lie 530 NM from any other land. */
const OWN_LAND_REACHES_NM = 500;

/** Whether a view shows a piece of the earth that the scene's own land says nothing of. */
export function worldLandIsWanted(view: ChartView, heightPerWidth: number, land: Land | null): boolean {
  const places = land?.islands.flatMap(({ coast }) => coast.slice(0, 1)) ?? [];
  if (places.length === 0) return true;
  const reachNm = (view.widthNm / 2) * Math.hypot(1, heightPerWidth);
  const awayNm = Math.min(...places.map((place) => geodesicDistanceNm(view.centre, place)));
  return awayNm + reachNm > OWN_LAND_REACHES_NM;
}
