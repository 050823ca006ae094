/** The demo isles, ready for problems. */

import { readFileSync } from "node:fs";
import { practiceWorld } from "../src/practice/index.ts";
import { openNothing, readLand, readStations } from "../src/scene/index.ts";

const STATION_FILE = "demo/ostrelle.stations.yaml";
const LAND_FILE = "demo/ostrelle.land.yaml";
const DATE = "2026-07-01";

const stations = readStations(readFileSync(STATION_FILE, "utf8"), {
  path: STATION_FILE,
  open: openNothing,
  date: DATE,
});
const land = readLand(readFileSync(LAND_FILE, "utf8"), { path: LAND_FILE });
if (!stations.ok || !land.ok) throw new Error("the demo isles cannot be read");

export const PRACTICE_ISLES = practiceWorld({
  name: "The Ostrelle Isles",
  date: DATE,
  stations: stations.stations,
  land: land.land,
});
