/** The outlines of the world's land, fetched when a chart first leaves the scene's own. */

import { signal } from "@preact/signals";
import { useEffect, useMemo } from "preact/hooks";
import { type ChartView, type WorldOutlines, worldLandIsWanted } from "../../draw/index.ts";
import type { Land } from "../../radio/index.ts";
import type { Scene } from "../../scene/index.ts";
import type { ChartSize } from "../chart/chart-window.ts";

const outlines = signal<WorldOutlines | null>(null);

/** The world's land for a view that wants it, once it has come; null otherwise. */
export function useWorldLand(view: ChartView, size: ChartSize, land: Land | null): WorldOutlines | null {
  const wanted = useMemo(
    () => worldLandIsWanted(view, size.heightPx / size.widthPx, land),
    [view, size, land],
  );
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
    import("./outline-maker.ts"),
  ]);
  const land = feature(topology, topology.objects.land);
  const rings = land.features.flatMap(({ geometry }) =>
    geometry.type === "MultiPolygon" ? geometry.coordinates.flat() : [],
  );
  outlines.value = worldOutlines(rings);
}

/** Without a chart in sight: what the aircraft has around it, NM across. */
const AROUND_AIRCRAFT_NM = 200;

/** The land that a picture of the scene shows, if it has been fetched; `view` null: the picture frames the scene by itself. */
export function worldLandIn({ land, aircraft }: Scene, view: ChartView | null): WorldOutlines | null {
  const seen = view ?? { centre: aircraft.position, widthNm: AROUND_AIRCRAFT_NM };
  return worldLandIsWanted(seen, 1, land) ? outlines.value : null;
}
