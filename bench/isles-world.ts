/** The demo isles, ready for problems. */

import { readFileSync } from "node:fs";
import { practiceWorld, type World } from "../src/practice/index.ts";
import { openNothing, readLand, readStations } from "../src/scene/index.ts";

const DATE = "2026-07-01";
const STATIONS = "demo/ostrelle.stations.yaml";
const LAND = "demo/ostrelle.land.yaml";

export function islesWorld(): World {
  const stations = readStations(readFileSync(STATIONS, "utf8"), {
    path: STATIONS,
    open: openNothing,
    date: DATE,
  });
  const land = readLand(readFileSync(LAND, "utf8"), { path: LAND });
  if (!stations.ok || !land.ok) throw new Error("the demo isles cannot be read");
  return practiceWorld({
    name: "The Ostrelle Isles",
    date: DATE,
    stations: stations.stations,
    land: land.land,
  });
}
